import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../../src/loop/createNetwork';
import type { CellSpec } from '../../../src/loop/networkTypes';
import { refrigerant } from '../../../src/refrigerant/fluids';
import { pot, run, WARM_K } from './vessels';

const cell = (id: string, drainsTo?: string): CellSpec => ({
  id,
  kind: 'pipe',
  volumeM3: 0.1e-3,
  wallHeatCapacityJPerK: 200,
  insideWPerK: [150, 20, 30],
  outsideWPerK: 40,
  slipAtRest: 40,
  ...(drainsTo === undefined ? {} : { drainsTo }),
});

/** Two evaporators that join before the compressor, each with its own tube, fed from one tank of liquid. */
function twoEvaporators() {
  const network = createNetwork(refrigerant('R-134a'));
  const tank = network.addVessel(pot('tank', 20, 50_000, 500), { temperatureK: 318.15, refrigerantKg: 15 });
  network.setSurroundings(tank, 0, 318.15, 500);
  const cells = [
    cell('front-1'),
    cell('front-2', 'join'),
    cell('rear-1'),
    cell('rear-2', 'join'),
    { ...cell('join'), outsideWPerK: 5 },
    {
      ...cell('body'),
      kind: 'pot' as const,
      volumeM3: 0.3e-3,
      outsideWPerK: 3,
      outletHeight: 0.18,
      outletBlend: 0.18,
    },
  ];
  const low = network.addVessel({ id: 'low', cells }, { temperatureK: WARM_K, refrigerantKg: 0.02 });
  for (let c = 0; c < cells.length; c++) network.setSurroundings(low, c, WARM_K, cells[c].outsideWPerK);
  const from = { vessel: tank, cell: 0, height: 'bottom' } as const;
  const tube = (id: string, to: number, boreM: number) =>
    network.addLink({
      kind: 'orificeTube',
      id,
      from,
      to: { vessel: low, cell: to, height: 'bulk' },
      boreM,
      lengthM: 0.0381,
      opening: 1,
    });
  const front = tube('front', 0, 1.0e-3);
  const rear = tube('rear', 2, 0.8e-3);
  const compressor = network.addLink({
    kind: 'compressor',
    id: 'compressor',
    from: { vessel: low, cell: 5, height: 0.18 },
    to: { vessel: tank, cell: 0, height: 'top' },
    displacementM3: 60e-6,
    clearance: 0.055,
    volumetricEfficiency: 0.8,
    isentropicEfficiency: 0.7,
    reedLeakKgPerSPa: 2e-10,
    opening: 1,
  });
  network.setSpeed(compressor, 30);
  return { network, low, front, rear, compressor };
}

describe('a tree of cells', () => {
  it('runs two evaporators and a tank as data, and balances', () => {
    const { network, low, front, rear, compressor } = twoEvaporators();
    run(network, 300);
    const flows = network.massFlowKgPerS(front) + network.massFlowKgPerS(rear);
    expect(network.massFlowKgPerS(compressor)).toBeCloseTo(flows, 3);
    expect(network.massFlowKgPerS(front)).toBeGreaterThan(network.massFlowKgPerS(rear));
    expect(network.pressurePa(low)).toBeLessThan(600_000);
    expect(network.wallTemperatureK(low, 0)).toBeLessThan(WARM_K - 3);
    expect(network.wallTemperatureK(low, 2)).toBeLessThan(WARM_K - 3);
    expect(network.books().massErrorRelative).toBeLessThan(1e-12);
    expect(network.books().energyErrorRelative).toBeLessThan(1e-10);
  });

  it('refuses a cell that drains backwards', () => {
    const network = createNetwork(refrigerant('R-134a'));
    const cells = [cell('a'), cell('b', 'a'), cell('c')];
    expect(() =>
      network.addVessel({ id: 'x', cells }, { temperatureK: WARM_K, refrigerantKg: 0.01 }),
    ).toThrow('cell b');
  });
});
