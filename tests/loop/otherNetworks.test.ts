import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../src/loop/createNetwork';
import type { CellSpec, VesselSpec } from '../../src/loop/networkTypes';
import { refrigerant } from '../../src/refrigerant/fluids';

/**
 * High side and low side are two vessels of data. A loop with two evaporators and a recovery tank on its liquid line is
 * said in the same words, with nothing added to src/.
 */
const AMBIENT_K = 303.15;
const AIR_K = 298.15;
const STEPS = 12_000;

function pipe(id: string, volumeM3: number, more: Partial<CellSpec> = {}): CellSpec {
  return {
    id,
    kind: 'pipe',
    volumeM3,
    wallHeatCapacityJPerK: 400,
    insideWPerK: [260, 30, 40],
    outsideWPerK: 40,
    ...more,
  };
}

const rows = (name: string, count: number, volumeM3: number, last: Partial<CellSpec>): CellSpec[] =>
  Array.from({ length: count }, (_, i) =>
    pipe(`${name}-${i + 1}`, volumeM3 / count, i === count - 1 ? last : {}),
  );

/** Front and rear evaporator are two branches of one tree that drains to the suction line. */
const LOW: VesselSpec = {
  id: 'low',
  cells: [
    ...rows('front', 3, 0.0004, { drainsTo: 'suction' }),
    ...rows('rear', 3, 0.0003, { drainsTo: 'suction' }),
    pipe('suction', 0.0003, { outsideWPerK: 1 }),
  ],
};
const HIGH: VesselSpec = { id: 'high', cells: rows('condenser', 4, 0.0008, {}) };
const TANK: VesselSpec = {
  id: 'tank',
  cells: [
    pipe('body', 0.012, {
      kind: 'pot',
      wallHeatCapacityJPerK: 6000,
      outsideWPerK: 4,
      outletHeight: 1,
      aspect: 0.6,
    }),
  ],
};

function build() {
  const network = createNetwork(refrigerant('R-134a'));
  network.setRoom(101_325, AMBIENT_K);
  const high = network.addVessel(HIGH, { temperatureK: AMBIENT_K, refrigerantKg: 0.45 });
  const low = network.addVessel(LOW, { temperatureK: AMBIENT_K, refrigerantKg: 0.25, oilKg: 0.1 });
  const tank = network.addVessel(TANK, { temperatureK: AMBIENT_K, refrigerantKg: 0.2 });
  const at = (vessel: number, cell: number) => ({ vessel, cell, height: 'bulk' }) as const;
  const outlet = at(high, network.cellCount(high) - 1);
  const orifice = { kind: 'orificeTube', lengthM: 0.0381, opening: 1, from: outlet } as const;
  network.addLink({
    ...orifice,
    id: 'front orifice',
    boreM: 0.0012,
    to: at(low, network.cellNamed(low, 'front-1')),
  });
  network.addLink({
    ...orifice,
    id: 'rear orifice',
    boreM: 0.001,
    to: at(low, network.cellNamed(low, 'rear-1')),
  });
  const compressor = network.addLink({
    kind: 'compressor',
    id: 'compressor',
    from: at(low, network.cellNamed(low, 'suction')),
    to: at(high, 0),
    displacementM3: 120e-6,
    clearance: 0.055,
    volumetricEfficiency: 0.8,
    isentropicEfficiency: 0.7,
    reedLeakKgPerSPa: 0,
    opening: 1,
  });
  for (let cell = 0; cell < network.cellCount(low); cell++) network.setSurroundings(low, cell, AIR_K, 40);
  return { network, high, low, tank, outlet, compressor };
}

describe('a loop with two evaporators', () => {
  it('feeds and cools both branches, and its books balance', () => {
    const { network, high, low, compressor } = build();
    network.setSpeed(compressor, 25);
    for (let i = 0; i < STEPS; i++) network.step(0.02);
    expect(network.pressurePa(high)).toBeGreaterThan(2 * network.pressurePa(low));
    for (const row of ['front-1', 'rear-1']) {
      expect(network.wallTemperatureK(low, network.cellNamed(low, row))).toBeLessThan(AIR_K - 8);
    }
    const front = network.massFlowKgPerS(network.linkNamed('front orifice'));
    const rear = network.massFlowKgPerS(network.linkNamed('rear orifice'));
    expect(front).toBeGreaterThan(rear);
    expect(rear).toBeGreaterThan(0.003);
    const { massErrorRelative, energyErrorRelative } = network.books();
    expect(massErrorRelative).toBeLessThan(1e-12);
    expect(energyErrorRelative).toBeLessThan(1e-10);
  });

  it('gives liquid to a tank that is joined to its liquid line, and to nobody else', () => {
    const { network, tank, outlet, compressor } = build();
    network.setSpeed(compressor, 25);
    for (let i = 0; i < STEPS / 4; i++) network.step(0.02);
    const before = network.massKg(tank, 'refrigerant');
    const all = network.books().heldKg.refrigerant;
    const to = { vessel: tank, cell: 0, height: 'top' } as const;
    network.addLink({ kind: 'check', id: 'to tank', from: outlet, to, areaM2: 1e-6, opening: 1 });
    for (let i = 0; i < STEPS / 4; i++) network.step(0.02);
    expect(network.massKg(tank, 'refrigerant')).toBeGreaterThan(before + 0.05);
    expect(network.books().heldKg.refrigerant).toBeCloseTo(all, 12);
    expect(network.books().massErrorRelative).toBeLessThan(1e-12);
  });
});
