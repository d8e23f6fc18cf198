import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../../src/loop/createNetwork';
import { refrigerant } from '../../../src/refrigerant/fluids';
import { addHose, canSpec, pot, run, WARM_K } from './vessels';

/** A 5 mL hose full of liquid, between a can upside down and another vessel. */
function fullHose(otherKg: number, otherK: number) {
  const network = createNetwork(refrigerant('R-134a'));
  const can = network.addVessel(canSpec(), { temperatureK: WARM_K, refrigerantKg: 0.34 });
  network.setTilt(can, 180);
  const hose = addHose(network, 'hose', 0.00595);
  const other = network.addVessel(pot('other', 1.5, 5000, 50), {
    temperatureK: otherK,
    refrigerantKg: otherKg,
  });
  const bulk = { vessel: hose, cell: 0, height: 'bulk' } as const;
  const tap = network.addLink({
    kind: 'valve',
    id: 'tap',
    from: { vessel: can, cell: 0, height: 1 },
    to: bulk,
    areaM2: 3e-6,
    opening: 1,
  });
  const core = network.addLink({
    kind: 'valve',
    id: 'core',
    from: bulk,
    to: { vessel: other, cell: 0, height: 'top' },
    areaM2: 3e-6,
    opening: 0,
  });
  run(network, 10);
  return { network, can, hose, other, tap, core };
}

/** Largest change of the hose's pressure in a step over the last second, Pa. */
function restlessness({ network, hose }: ReturnType<typeof fullHose>): number {
  let worst = 0;
  for (let i = 0; i < 50; i++) {
    const before = network.pressurePa(hose);
    network.step(0.02);
    worst = Math.max(worst, Math.abs(network.pressurePa(hose) - before));
  }
  return worst;
}

describe('a hose full of liquid', () => {
  it('stands full at the pressure of the can', () => {
    const { network, can, hose } = fullHose(0.001, WARM_K);
    expect(network.liquidShare(hose, 0)).toBeGreaterThan(0.8);
    expect(Math.abs(network.pressurePa(hose) - network.pressurePa(can))).toBeLessThan(1000);
  });

  it('stays quiet when it is opened to a side at high pressure', () => {
    const system = fullHose(0.5, 333.15);
    system.network.setOpening(system.core, 1);
    run(system.network, 2);
    expect(restlessness(system)).toBeLessThan(2000);
    const { network, can, hose, other } = system;
    expect(network.pressurePa(hose)).toBeGreaterThanOrEqual(network.pressurePa(can) - 1);
    expect(network.pressurePa(hose)).toBeLessThanOrEqual(network.pressurePa(other) + 1);
  });

  it('stays quiet when it is opened to a vacuum', () => {
    const system = fullHose(1e-7, WARM_K);
    system.network.setOpening(system.core, 1);
    for (let i = 0; i < 500; i++) {
      system.network.step(0.02);
      const p = system.network.pressurePa(system.hose);
      expect(p).toBeGreaterThan(0);
      expect(p).toBeLessThanOrEqual(system.network.pressurePa(system.can) + 1);
    }
    expect(restlessness(system)).toBeLessThan(5000);
  });

  it('moves no more than brings both ends level, however large the opening', () => {
    const network = createNetwork(refrigerant('R-134a'));
    const a = network.addVessel(pot('a', 0.005), { temperatureK: WARM_K, refrigerantKg: 0.0001 });
    const b = network.addVessel(pot('b', 0.005), { temperatureK: WARM_K, refrigerantKg: 0.00001 });
    const port = (vessel: number) => ({ vessel, cell: 0, height: 'bulk' }) as const;
    network.addLink({ kind: 'valve', id: 'wide', from: port(a), to: port(b), areaM2: 1e-3, opening: 1 });
    for (let i = 0; i < 50; i++) {
      network.step(0.02);
      expect(network.pressurePa(a)).toBeGreaterThan(network.pressurePa(b) - 500);
    }
    expect(Math.abs(network.pressurePa(a) - network.pressurePa(b))).toBeLessThan(500);
  });
});
