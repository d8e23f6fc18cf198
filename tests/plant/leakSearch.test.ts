/**
 * The search for a leak: pace, wind, side and place of the detector's probe, soap, dye; all from the gas that comes out.
 * Classes of detectors: SAE J2791. Probe under 5 mm off at 25 to 50 mm/s: SAE J1628, by tool manuals.
 */
import { describe, expect, it } from 'vitest';
import { buildPlant, type HiddenFault, type PlantOptions } from '../../src/plant/buildPlant';
import type { Command, PlantEvent } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

const SEDAN: PlantOptions = {
  vehicleId: 'sedan',
  refrigerant: 'R-134a',
  chargeKg: 0.88,
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

describe('dye', () => {
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
});
