import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../../src/loop/createNetwork';
import { ROOM } from '../../../src/loop/networkTypes';
import { refrigerant } from '../../../src/refrigerant/fluids';
import { addHose, canSpec, pot, run, WARM_K } from './vessels';

function canHoseTank() {
  const network = createNetwork(refrigerant('R-134a'));
  const can = network.addVessel(canSpec(), { temperatureK: WARM_K, refrigerantKg: 0.34 });
  const hose = addHose(network, 'hose');
  const tank = network.addVessel(pot('tank', 3), { temperatureK: WARM_K, refrigerantKg: 0.002 });
  const bulk = (vessel: number) => ({ vessel, cell: 0, height: 'bulk' }) as const;
  const link = (
    id: string,
    from: Parameters<typeof network.addLink>[0]['from'],
    to: typeof from,
    areaM2: number,
  ) => network.addLink({ kind: 'valve', id, from, to, areaM2, opening: 0 });
  return {
    network,
    can,
    hose,
    tank,
    tap: link('tap', { vessel: can, cell: 0, height: 1 }, bulk(hose), 0.9e-6),
    core: link('core', bulk(hose), { vessel: tank, cell: 0, height: 'top' }, 3e-6),
    open: link('open', bulk(hose), bulk(ROOM), 3e-6),
  };
}

describe('the books', () => {
  it('balance over a can let into a tank, upside down, and at last into the air', () => {
    const { network, can, tap, core, open } = canHoseTank();
    network.setOpening(tap, 1);
    network.setOpening(core, 1);
    run(network, 20);
    network.setTilt(can, 180);
    run(network, 20);
    network.setOpening(open, 1);
    run(network, 60);
    const books = network.books();
    expect(books.ventedKg.refrigerant).toBeGreaterThan(0.1);
    expect(books.massErrorRelative).toBeLessThan(1e-12);
    expect(books.turnedOverJ).toBeGreaterThan(10_000);
    expect(books.energyErrorRelative).toBeLessThan(1e-10);
    expect(books.massErrors.air).toBeLessThan(1e-12);
    expect(
      Math.abs(books.heldKg.air + books.ventedKg.air - (101_325 * 5e-6) / (287.05 * WARM_K)),
    ).toBeLessThan(1e-12);
  });

  it('of the air balance when eight empty pots draw on one vessel of air at once', () => {
    const network = createNetwork(refrigerant('R-134a'));
    const full = network.addVessel(pot('full', 0.02), {
      temperatureK: WARM_K,
      refrigerantKg: 0,
      airKg: 1e-4,
    });
    const bulk = (vessel: number) => ({ vessel, cell: 0, height: 'bulk' }) as const;
    for (let i = 0; i < 8; i++) {
      const empty = network.addVessel(pot(`pot-${i}`, 0.018), { temperatureK: WARM_K, refrigerantKg: 0 });
      network.addLink({
        kind: 'valve',
        id: `valve-${i}`,
        from: bulk(full),
        to: bulk(empty),
        areaM2: 3e-4,
        opening: 1,
      });
    }
    const brought = network.books().heldKg.air;
    for (let i = 0; i < 50; i++) {
      network.step(0.02);
      expect(Math.abs(network.books().heldKg.air / brought - 1)).toBeLessThan(1e-12);
      expect(network.books().massErrors.air).toBeLessThan(1e-12);
    }
  });

  it('balance in a network where nothing moves', () => {
    const network = createNetwork(refrigerant('R-134a'));
    network.addVessel(canSpec(), { temperatureK: WARM_K, refrigerantKg: 0.34 });
    network.addVessel(pot('empty', 3), { temperatureK: WARM_K, refrigerantKg: 0 });
    run(network, 60);
    const { energyErrorRelative, massErrors } = network.books();
    expect(energyErrorRelative).toBeLessThan(1e-10);
    expect(massErrors).toEqual({ refrigerant: 0, air: 0, foreign: 0, water: 0, oil: 0, sealant: 0 });
  });

  it('have no mass unaccounted for when a hose and a can have come and gone', () => {
    const network = createNetwork(refrigerant('R-134a'));
    for (let i = 0; i < 3; i++) {
      const hose = addHose(network, 'hose');
      const can = network.addVessel(canSpec(), { temperatureK: WARM_K, refrigerantKg: 0.34 });
      network.addLink({
        kind: 'valve',
        id: 'tap',
        from: { vessel: can, cell: 0, height: 1 },
        to: { vessel: hose, cell: 0, height: 'bulk' },
        areaM2: 1e-6,
        opening: 1,
      });
      run(network, 1);
      network.removeVessel(hose);
      network.removeVessel(can);
    }
    const { massErrors, massErrorRelative } = network.books();
    expect(massErrors.air).toBeLessThan(1e-12);
    expect(massErrorRelative).toBeLessThan(1e-12);
  });

  it('leave out a vessel that is taken away with what it holds', () => {
    const { network, can, tap } = canHoseTank();
    network.setOpening(tap, 1);
    run(network, 5);
    network.removeVessel(can);
    expect(network.linkNamed('tap')).toBe(-1);
    expect(network.vesselNamed('can')).toBe(-1);
    run(network, 5);
    expect(network.books().massErrorRelative).toBeLessThan(1e-12);
    expect(network.books().heldKg.refrigerant).toBeLessThan(0.05);
  });
});

describe('a snapshot', () => {
  it('goes on to the last digit as if nothing had been', () => {
    const { network, tap, core } = canHoseTank();
    network.setOpening(tap, 1);
    network.setOpening(core, 1);
    run(network, 3);
    const structure = JSON.parse(JSON.stringify(network.structure()));
    const state = network.state.slice();
    run(network, 7);
    const hash = network.stateHash();
    const other = createNetwork(refrigerant('R-134a'));
    other.restore(structure, state);
    run(other, 7);
    expect(other.stateHash()).toBe(hash);
  });

  it('brings back slots that were free', () => {
    const { network, can, hose } = canHoseTank();
    const structure = network.structure();
    const state = network.state.slice();
    network.removeVessel(can);
    expect(addHose(network, 'second')).toBe(can);
    network.restore(structure, state);
    expect(network.vesselNamed('can')).toBe(can);
    expect(network.vesselNamed('hose')).toBe(hose);
    expect(network.massKg(can, 'refrigerant')).toBeCloseTo(0.34, 9);
  });
});

describe('edits', () => {
  it('refuse a port on nothing', () => {
    const { network } = canHoseTank();
    const from = { vessel: 9, cell: 0, height: 'bulk' } as const;
    const wrong = { kind: 'valve', id: 'x', from, to: from, areaM2: 1e-6, opening: 1 } as const;
    expect(() => network.addLink(wrong)).toThrow('no cell 0 in vessel 9');
  });

  it('refuse a vessel too many and say how many there may be', () => {
    const network = createNetwork(refrigerant('R-134a'));
    const fill = () => {
      for (let i = 0; i < 40; i++) addHose(network, `h${i}`);
    };
    expect(fill).toThrow('at most 23 vessels');
  });
});
