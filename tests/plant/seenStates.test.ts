/**
 * What an eye has of a loop's state: oil where it leaks, bubbles in the sight glass, frost on a hose. Figures: oil goes with
 * vapour at 30 g a kg [guess]; a glass clears as the charge comes up to its plateau (trade text).
 */
import { describe, expect, it } from 'vitest';
import { buildPlant, type PlantOptions } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

const HATCHBACK: PlantOptions = {
  vehicleId: 'hatchback',
  refrigerant: 'R-134a',
  chargeKg: 0.48,
  start: 'equalised',
  weather: { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 },
  faults: [],
  bench: { hoses: ['gauge-set'], cans: [] },
  seed: 5,
};

function give(plant: Plant, ...commands: Command[]): void {
  for (const command of commands) {
    const outcome = plant.apply(command);
    if (!outcome.ok) throw new Error(`${command.do}: ${outcome.reason}`);
  }
}

function run(plant: Plant, seconds: number): void {
  for (let i = 0; i < seconds * 50; i++) plant.advance();
}

const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));
const leaking = (id: string, severity: number, site: string, more: Partial<PlantOptions> = {}): Plant =>
  buildPlant({ ...HATCHBACK, ...more, faults: [{ id, severity, onsetStep: 0, site }] });

describe('oil where the loop leaks', () => {
  it('lies there when a short car comes, and nowhere else', () => {
    const plant = leaking('leak-joint', 0.4, 'discharge-condenser', { chargeKg: 0.36 });
    expect(value(plant, 'stain.discharge-condenser')).toBe(1);
    expect(value(plant, 'stain.suction-compressor')).toBe(0);
    expect(value(leaking('leak-joint', 0.4, 'discharge-condenser'), 'stain.discharge-condenser')).toBe(0);
  });

  it('grows with what comes out, and comes off with cleaning', () => {
    const plant = leaking('leak-condenser', 1, 'condenser');
    run(plant, 30);
    const early = value(plant, 'stain.condenser');
    run(plant, 90);
    expect(value(plant, 'stain.condenser')).toBeGreaterThan(early);
    give(plant, { do: 'clean', part: 'condenser' });
    expect(value(plant, 'stain.condenser')).toBe(0);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
  });

  it('lies under a leaking core, and is not seen where the coil hangs in its case', () => {
    const plant = leaking('leak-core', 0.4, 'port-b', { chargeKg: 0.3 });
    expect(value(plant, 'stain.port-b')).toBe(1);
    expect(plant.signals.filter(({ id }) => id.startsWith('stain.') && id.endsWith('evaporator'))).toEqual(
      [],
    );
  });
});

describe('the sight glass', () => {
  const runningAt = (chargeKg: number): Plant => {
    const plant = buildPlant({ ...HATCHBACK, chargeKg });
    give(plant, { do: 'blower', speed: 4 }, { do: 'engine', rpm: 1500 }, { do: 'ac', to: 'on' });
    run(plant, 60);
    return plant;
  };

  it('is clear on the plateau, full of bubbles at half charge, and streaked with next to nothing in it', () => {
    const glass = (chargeKg: number): readonly [number, number] => {
      const plant = runningAt(chargeKg);
      return [value(plant, 'sightGlass.bubblesRatio'), value(plant, 'sightGlass.streaked')];
    };
    expect(glass(0.48)).toEqual([0, 0]);
    const [half] = glass(0.25);
    expect(half).toBeGreaterThanOrEqual(0.5);
    expect(glass(0.35)[0]).toBeLessThan(half);
    expect(glass(0.1)).toEqual([0, 1]);
  });

  it('is in the one car that has one, and a standing loop shows nothing in it', () => {
    const standing = buildPlant({ ...HATCHBACK, chargeKg: 0.25 });
    expect(value(standing, 'sightGlass.bubblesRatio')).toBe(0);
    const sedan = buildPlant({ ...HATCHBACK, vehicleId: 'sedan', chargeKg: 0.72 });
    expect(sedan.signals.filter(({ id }) => id.startsWith('sightGlass'))).toEqual([]);
  });
});
