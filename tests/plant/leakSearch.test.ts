/**
 * The search for a leak: pace, wind, side and place of the detector's probe, soap, dye; all from the gas that comes out.
 * Classes of detectors: SAE J2791. Probe under 5 mm off at 25 to 50 mm/s: SAE J1628, by tool manuals.
 */
import { describe, expect, it } from 'vitest';
import { assemblePlant, type PlantParts } from '../../src/plant/assemblePlant';
import { buildPlant, type HiddenFault, type PlantOptions } from '../../src/plant/buildPlant';
import type { Command, PlantEvent } from '../../src/plant/commandSpecs';
import { makeExecutive } from '../../src/plant/executive';
import { gasFlowM3PerS } from '../../src/plant/gasFlow';
import { leakFlowKgPerS } from '../../src/plant/leakFlow';
import type { Plant } from '../../src/plant/plantPort';
import { SEARCH } from '../../src/plant/tally';

const SEDAN: PlantOptions = {
  vehicleId: 'sedan',
  refrigerant: 'R-134a',
  chargeKg: 0.72,
  start: 'equalised',
  weather: { temperatureK: 298.15, relativeHumidity: 0.5, pressurePa: 101_325 },
  faults: [],
  bench: { hoses: ['gauge-set'], cans: [], tools: ['detector', 'soap', 'uv-lamp', 'dye'] },
  seed: 5,
};
const YEAR_S = 31_557_600;

const withFault = (id: string, severity: number, site?: string): Plant =>
  buildPlant({
    ...SEDAN,
    faults: [{ id, severity, onsetStep: 0, ...(site ? { site } : {}) } as HiddenFault],
  });

function run(plant: Plant, seconds: number): PlantEvent[] {
  const events: PlantEvent[] = [];
  for (let i = 0; i < seconds * 50; i++) events.push(...plant.advance());
  return events;
}

function give(plant: Plant, ...commands: Command[]): PlantEvent[] {
  return commands.flatMap((command) => {
    const outcome = plant.apply(command);
    if (!outcome.ok) throw new Error(`${command.do}: ${outcome.reason}`);
    return outcome.events;
  });
}

const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));

/** Ticks when the probe has been round. */
function sniffed(
  plant: Plant,
  at: string,
  sweep: Partial<Record<'paceMmPerS' | 'gapMm' | 'from', number | string>> = {},
): number {
  give(plant, { do: 'sniff', at, from: 'below', paceMmPerS: 25, gapMm: 5, ...sweep });
  run(plant, 500 / Number(sweep.paceMmPerS ?? 25) + 1);
  return value(plant, 'detector.ticks');
}

describe('a shaft seal', () => {
  it('weeps by severity what it should in a year, 80 g at a fifth, and the books balance', () => {
    const plant = withFault('leak-seal', 0.2);
    run(plant, 60);
    const perYear = (value(plant, 'vented.leakKg') / 60) * YEAR_S;
    expect(perYear).toBeGreaterThan(0.06);
    expect(perYear).toBeLessThan(0.12);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
  });
});

describe('the electronic detector', () => {
  it('misses a small leak when it is moved fast and hears it when it is moved slowly', () => {
    const plant = withFault('leak-joint', 0.06);
    expect(sniffed(plant, 'discharge-condenser', { paceMmPerS: 150 })).toBe(0);
    expect(sniffed(plant, 'discharge-condenser', { paceMmPerS: 25 })).toBeGreaterThan(0);
  });

  it('hears nothing of it from above, from afar, in the wind of the door, or at another place', () => {
    const plant = withFault('leak-joint', 0.035);
    expect(sniffed(plant, 'discharge-condenser')).toBeGreaterThan(0);
    expect(sniffed(plant, 'discharge-condenser', { from: 'above' })).toBe(0);
    expect(sniffed(plant, 'discharge-condenser', { gapMm: 25 })).toBe(0);
    expect(sniffed(plant, 'suction-compressor')).toBe(0);
    give(plant, { do: 'door', to: 'open' });
    expect(sniffed(plant, 'discharge-condenser')).toBe(0);
  });

  it('finds a hole in the coil at the drain with the blower off, after the gas has gathered', () => {
    const plant = withFault('leak-evaporator', 0.15);
    give(plant, { do: 'blower', speed: 4 });
    run(plant, 60);
    expect(sniffed(plant, 'evaporator-drain')).toBe(0);
    give(plant, { do: 'blower', speed: 0 });
    run(plant, 600);
    expect(sniffed(plant, 'evaporator-drain')).toBeGreaterThan(0);
    const refusal = plant.apply({ do: 'sniff', at: 'evaporator', from: 'below', paceMmPerS: 25, gapMm: 5 });
    expect(refusal).toMatchObject({ ok: false, reason: 'refusal.placeHidden' });
  });

  it('ticks anywhere after gas was let out, until the air is changed', () => {
    const plant = buildPlant(SEDAN);
    give(
      plant,
      { do: 'cap', port: 'port-a', to: 'off' },
      { do: 'couple', hose: 'gauge-low', port: 'port-a', route: '' },
    );
    give(
      plant,
      { do: 'coupler', hose: 'gauge-low', to: 'open' },
      { do: 'purge', hose: 'gauge-low', to: 'open' },
    );
    run(plant, 20);
    give(plant, { do: 'purge', hose: 'gauge-low', to: 'shut' });
    const heard = [1, 2, 3].map(() => sniffed(plant, 'suction-compressor'));
    expect(Math.max(...heard)).toBeGreaterThan(0);
    give(plant, { do: 'door', to: 'open' });
    run(plant, 400);
    expect(sniffed(plant, 'suction-compressor')).toBe(0);
  });
});

describe('soap', () => {
  it('bubbles at a hole in a line, not at a seep, and not where the engine blows it off', () => {
    const plant = withFault('leak', 0.05, 'liquid');
    give(plant, { do: 'soap', at: 'liquid' });
    expect(run(plant, 16).map(({ id }) => id)).toEqual(expect.arrayContaining(['soaped', 'bubbles-seen']));
    const seep = withFault('leak-joint', 0.2);
    give(seep, { do: 'soap', at: 'discharge-condenser' });
    expect(run(seep, 16).map(({ id }) => id)).not.toContain('bubbles-seen');
    give(plant, { do: 'engine', rpm: 900 });
    expect(plant.apply({ do: 'soap', at: 'liquid' })).toMatchObject({
      ok: false,
      reason: 'refusal.soapBlownOff',
    });
  });
});

/** A car with a leak, its parts at hand. */
function opened(over: Partial<PlantOptions>): { parts: PlantParts; plant: Plant } {
  const parts = assemblePlant({ ...SEDAN, ...over });
  return { parts, plant: makeExecutive(parts) };
}

describe('gas at a leak', () => {
  it.each([1.3, 1.8, 4])('of nitrogen at %d bar absolute is what the loop loses', (bar) => {
    const faults = [{ id: 'leak', severity: 0.05, onsetStep: 0, site: 'suction' }];
    const { parts, plant } = opened({ faults, start: 'evacuated', chargeKg: 0 });
    const { network, loop } = parts.car;
    for (const vessel of [loop.low, loop.high]) {
      const kgPerPa = 1 / (287 * 298.15);
      const volumeM3 = network
        .structure()
        .vessels.filter(({ slot }) => slot === vessel)
        .flatMap(({ spec }) => spec.cells)
        .reduce((sum, { volumeM3 }) => sum + volumeM3, 0);
      network.bringIn(vessel, 'air', bar * 1e5 * volumeM3 * kgPerPa);
    }
    run(plant, 2);
    const before = network.massKg(loop.low, 'air') + network.massKg(loop.high, 'air');
    const m3PerS = gasFlowM3PerS(parts, 'suction');
    run(plant, 2);
    const lostKg = before - network.massKg(loop.low, 'air') - network.massKg(loop.high, 'air');
    expect(lostKg).toBeGreaterThan(0);
    expect((m3PerS * 2 * 1.184) / lostKg).toBeCloseTo(1, 1);
  });

  it('has the moles of what is in the loop, not of what was ordered', () => {
    const leak = { id: 'leak', severity: 0.05, onsetStep: 0, site: 'suction' };
    const { parts, plant } = opened({
      faults: [leak, { id: 'wrong-refrigerant', severity: 1, onsetStep: 0 }],
    });
    run(plant, 1);
    // R-12, 120.9 g/mol; 8.314 J/(mol K) at 25 °C and 101,325 Pa is 0.02446 m3/mol
    expect(gasFlowM3PerS(parts, 'suction')).toBeCloseTo(
      (leakFlowKgPerS(parts.car, 'suction') / 0.1209) * 0.02446,
      8,
    );
    expect(parts.car.network.refrigerantId).toBe('R-12');
  });
});

describe('dye', () => {
  it('leaves with the oil and in its measure, gas or liquid', () => {
    for (const site of ['discharge', 'liquid']) {
      const { parts, plant } = opened({ faults: [{ id: 'leak-hose', severity: 1, onsetStep: 0, site }] });
      const { network, loop } = parts.car;
      give(plant, { do: 'engine', rpm: 1500 }, { do: 'ac', to: 'on' }, { do: 'blower', speed: 4 });
      run(plant, 60);
      const oilKg = network.massKg(loop.low, 'oil') + network.massKg(loop.high, 'oil');
      Object.assign(parts.tally, { [SEARCH.dyeKg]: 0.01, [SEARCH.dyeRound]: 1 });
      const before = network.books().ventedKg.oil;
      run(plant, 60);
      const oilOut = network.books().ventedKg.oil - before;
      expect(oilOut).toBeGreaterThan(1e-8);
      expect((0.01 - parts.tally[SEARCH.dyeKg]) / 0.01 / (oilOut / oilKg)).toBeCloseTo(1, 1);
    }
  });

  it('is at an end with its cartridge, also after going back', () => {
    const plant = buildPlant(SEDAN);
    give(plant, { do: 'cap', port: 'port-a', to: 'off' }, { do: 'inject-dye', mL: 30 });
    const kept = plant.snapshot();
    give(plant, { do: 'inject-dye', mL: 25 });
    expect(plant.apply({ do: 'inject-dye', mL: 10 })).toMatchObject({ reason: 'refusal.dyeShort' });
    give(plant, { do: 'inject-dye', mL: 5 });
    expect(plant.apply({ do: 'inject-dye', mL: 5 })).toMatchObject({ reason: 'refusal.dyeShort' });
    plant.restore(kept);
    give(plant, { do: 'inject-dye', mL: 30 });
  });

  it('glows where refrigerant leaves once it has gone round with the oil, and nowhere else', () => {
    const plant = withFault('leak-hose', 1, 'discharge');
    const glow = (at: string): boolean =>
      give(plant, { do: 'lamp', at }).some(({ id }) => id === 'glow-seen');
    give(plant, { do: 'cap', port: 'port-a', to: 'off' }, { do: 'inject-dye', mL: 10 });
    give(plant, { do: 'cap', port: 'port-a', to: 'on' });
    run(plant, 60);
    expect(glow('discharge')).toBe(false);
    give(plant, { do: 'engine', rpm: 1500 }, { do: 'ac', to: 'on' }, { do: 'blower', speed: 4 });
    run(plant, 300);
    expect(glow('discharge')).toBe(true);
    expect(glow('suction')).toBe(false);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
  });
});

describe('a core that does not seat', () => {
  it('is stopped by its cap and by a coupler', () => {
    const plant = withFault('leak-core', 0.3, 'port-a');
    const lost = (): number => value(plant, 'vented.leakKg');
    run(plant, 5);
    expect(lost()).toBe(0);
    give(plant, { do: 'cap', port: 'port-a', to: 'off' });
    run(plant, 5);
    const open = lost();
    expect(open).toBeGreaterThan(0);
    give(plant, { do: 'couple', hose: 'gauge-low', port: 'port-a', route: '' });
    run(plant, 5);
    expect(lost()).toBe(open);
  });
});

describe('the hood', () => {
  it('shut keeps hands and probes out of the bay', () => {
    const plant = buildPlant(SEDAN);
    give(plant, { do: 'hood', to: 'shut' });
    expect(plant.apply({ do: 'soap', at: 'liquid' })).toMatchObject({
      ok: false,
      reason: 'refusal.hoodShut',
    });
    expect(plant.apply({ do: 'cap', port: 'port-a', to: 'off' })).toMatchObject({ ok: false });
    give(plant, { do: 'hood', to: 'open' }, { do: 'cap', port: 'port-a', to: 'off' });
  });

  it('shut does not keep them from what sits in the cabin', () => {
    const plant = buildPlant(SEDAN);
    give(plant, { do: 'hood', to: 'shut' });
    for (const part of ['cabin-filter', 'blower', 'blend-door']) give(plant, { do: 'replace', part });
    expect(plant.apply({ do: 'replace', part: 'fan-relay' })).toMatchObject({ reason: 'refusal.hoodShut' });
  });
});
