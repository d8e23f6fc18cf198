import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../../src/loop/createNetwork';
import { refrigerant } from '../../../src/refrigerant/fluids';
import { canSpec, pot, run, WARM_K } from './vessels';

const NET_KG = 0.34;
const HAND_W = 25;

/** A 340 g can at 27 degC open to a side that is held at about 250 kPa gauge by being large and cool. */
function canOnSuctionPort() {
  const network = createNetwork(refrigerant('R-134a'));
  const can = network.addVessel(canSpec(), { temperatureK: WARM_K, refrigerantKg: NET_KG });
  const low = network.addVessel(pot('low', 200, 2e6, 2000), { temperatureK: 278.15, refrigerantKg: 3.6 });
  network.setSurroundings(low, 0, 278.15, 5000);
  network.addLink({
    kind: 'valve',
    id: 'tap',
    from: { vessel: can, cell: 0, height: 1 },
    to: { vessel: low, cell: 0, height: 'top' },
    areaM2: 0.9e-6,
    opening: 1,
  });
  return { network, can };
}

/** Seconds until `share` of the can is out. */
function emptied({ network, can }: ReturnType<typeof canOnSuctionPort>, share: number, most: number): number {
  let at = most;
  run(network, most, (second) => {
    if (at === most && network.massKg(can, 'refrigerant') < (1 - share) * NET_KG) at = second;
  });
  return at;
}

describe('a can on the low side', () => {
  it('upright gives vapour, cools itself and slows to what heat leaks in (2 to 5 g a minute, untouched)', () => {
    const system = canOnSuctionPort();
    const { network, can } = system;
    run(network, 60);
    expect(network.temperatureK(can, 0)).toBeLessThan(288);
    const early = NET_KG - network.massKg(can, 'refrigerant');
    run(network, 240);
    const before = network.massKg(can, 'refrigerant');
    run(network, 60);
    const gramsAMinute = 1000 * (before - network.massKg(can, 'refrigerant'));
    expect(early).toBeGreaterThan(0.03);
    expect(gramsAMinute).toBeGreaterThan(2);
    expect(gramsAMinute).toBeLessThan(5);
  });

  it('held in the hands and shaken empties in 8 to 15 minutes (common practice, no source)', () => {
    const system = canOnSuctionPort();
    system.network.setHeat(system.can, 0, HAND_W);
    system.network.setShaking(system.can, 0.85);
    const seconds = emptied(system, 0.95, 1200);
    expect(seconds).toBeGreaterThan(8 * 60);
    expect(seconds).toBeLessThan(15 * 60);
  });

  it('in water of 40 °C empties in 4 to 10 minutes', () => {
    const system = canOnSuctionPort();
    system.network.setSurroundings(system.can, 0, 313.15, 8);
    const seconds = emptied(system, 0.95, 900);
    expect(seconds).toBeGreaterThan(4 * 60);
    expect(seconds).toBeLessThan(10 * 60);
  });

  it('upside down gives liquid and is empty within a minute', () => {
    const system = canOnSuctionPort();
    system.network.setTilt(system.can, 180);
    run(system.network, 1);
    const tap = system.network.linkNamed('tap');
    expect(system.network.liquidFlowKgPerS(tap)).toBeGreaterThan(0.9 * system.network.massFlowKgPerS(tap));
    expect(emptied(system, 0.9, 120)).toBeLessThan(60);
  });

  it('lying on its side gives liquid while it is more than half full, vapour after', () => {
    const { network, can } = canOnSuctionPort();
    network.setTilt(can, 90);
    run(network, 1);
    const tap = network.linkNamed('tap');
    expect(network.liquidFlowKgPerS(tap)).toBeGreaterThan(0.5 * network.massFlowKgPerS(tap));
    run(network, 120);
    expect(network.liquidShare(can, 0)).toBeLessThan(0.6);
    expect(network.liquidFlowKgPerS(tap)).toBeLessThan(0.2 * network.massFlowKgPerS(tap));
  });
});
