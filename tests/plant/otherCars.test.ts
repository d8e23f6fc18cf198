/** What hands meet at the car without an engine and at the one with a second coil. */
import { describe, expect, it } from 'vitest';
import { vehicleOf } from '../../src/loop/car/vehicles';
import { buildPlant } from '../../src/plant/buildPlant';
import type { Command, Outcome } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

function plantOf(vehicleId: string): Plant {
  const { refrigerant, charge } = vehicleOf(vehicleId).label;
  return buildPlant({
    vehicleId,
    refrigerant,
    chargeKg: charge,
    start: 'equalised',
    weather: { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: { hoses: [], cans: [] },
    seed: 3,
  });
}

function give(plant: Plant, ...commands: Command[]): Outcome {
  const outcomes = commands.map((command) => plant.apply(command));
  return outcomes[outcomes.length - 1];
}

const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));

function run(plant: Plant, seconds: number): void {
  for (let i = 0; i < 50 * seconds; i++) plant.advance();
}

const FULL: readonly Command[] = [
  { do: 'blower', speed: 4 },
  { do: 'windows', to: 'open' },
  { do: 'air', to: 'recirculated' },
  { do: 'ac', to: 'on' },
];

describe('the electric car', () => {
  const plant = plantOf('electric');

  it('has no engine to start, and cools without one', () => {
    expect(give(plant, { do: 'engine', rpm: 1500 })).toMatchObject({ ok: false, reason: 'refusal.noEngine' });
    give(plant, ...FULL);
    run(plant, 60);
    expect(value(plant, 'car.ready')).toBe(1);
    expect(value(plant, 'clutch.turning')).toBe(1);
    expect(value(plant, 'vent.temperatureK')).toBeLessThan(305.15 - 8);
  });

  it('is not undone while its cooling is on', () => {
    const undo: Command = { do: 'open-loop', part: 'suction' };
    expect(give(plant, undo)).toMatchObject({ ok: false, reason: 'refusal.coolingOn' });
    expect(give(plant, { do: 'ac', to: 'off' }, undo).ok).toBe(true);
  });
});

describe('the van', () => {
  it('blows in the rear with the same knob, and a probe goes into that vent', () => {
    const plant = plantOf('van');
    give(plant, { do: 'engine', rpm: 1500 }, ...FULL);
    expect(give(plant, { do: 'probe-air', at: 'rear-vent' }).ok).toBe(true);
    run(plant, 90);
    expect(value(plant, 'airThermometer.temperatureK')).toBeLessThan(305.15 - 6);
    expect(plantOf('sedan').choices('air-place')).not.toContain('rear-vent');
  });
});
