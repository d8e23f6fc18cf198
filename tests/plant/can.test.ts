import { describe, expect, it } from 'vitest';
import { buildPlant } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

/**
 * The small can of the bench on the low side of a running car that is short of refrigerant. Common practice, no source:
 * a can that is held and shaken empties in 8 to 15 minutes, an inverted one within a minute with liquid in the
 * compressor; untouched it soon gives only what heat leaks in.
 */
const NET_KG = 0.34;
const LOW = 'port-b';

function carWithCan(chargeKg = 0.15): Plant {
  const plant = buildPlant({
    vehicleId: 'hatchback',
    refrigerant: 'R-134a',
    chargeKg,
    start: 'equalised',
    weather: { temperatureK: 300.15, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: { hoses: ['charging'], cans: [{ id: 'can-1', netKg: NET_KG, printedTotalKg: 0.37, tareKg: 0.1 }] },
    seed: 1,
  });
  give(
    plant,
    { do: 'windows', to: 'open' },
    { do: 'ac', to: 'on' },
    { do: 'blower', speed: 4 },
    { do: 'engine', rpm: 1500 },
    { do: 'cap', port: LOW, to: 'off' },
    { do: 'couple', hose: 'charging', port: LOW, route: '' },
    { do: 'coupler', hose: 'charging', to: 'open' },
    { do: 'tap', can: 'can-1', onto: 'charging' },
  );
  run(plant, 60);
  return plant;
}

function give(plant: Plant, ...commands: Command[]): void {
  for (const command of commands) expect(plant.apply(command)).toMatchObject({ ok: true });
}

function run(plant: Plant, seconds: number): void {
  for (let i = 0; i < seconds * 50; i++) plant.advance();
}

const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));
const left = (plant: Plant): number => value(plant, 'can.can-1.netKg');
const open: Command = { do: 'can-valve', can: 'can-1', turn: 16 };
const shut: Command = { do: 'can-valve', can: 'can-1', turn: 0 };

/** Seconds until only `share` of the net content is left; shaken eight seconds in every twelve where `shaken`. */
function secondsToShare(plant: Plant, share: number, shaken: boolean): number {
  for (let second = 0; second < 2400; second += 12) {
    if (left(plant) <= share * NET_KG) return second;
    if (shaken) give(plant, { do: 'shake', can: 'can-1' });
    run(plant, 12);
  }
  return Number.POSITIVE_INFINITY;
}

describe('a small can on the low side of a running car', () => {
  it('held and shaken empties in 8 to 15 minutes', () => {
    const plant = carWithCan();
    give(plant, { do: 'place', can: 'can-1', at: 'hand' }, open);
    const seconds = secondsToShare(plant, 0.05, true);
    expect(seconds).toBeGreaterThanOrEqual(8 * 60);
    expect(seconds).toBeLessThanOrEqual(15 * 60);
  });

  it('inverted is nine tenths empty within a minute, and liquid reaches the compressor', () => {
    const plant = carWithCan();
    give(plant, { do: 'place', can: 'can-1', at: 'hand' }, { do: 'tilt', can: 'can-1', degrees: 180 }, open);
    expect(secondsToShare(plant, 0.1, false)).toBeLessThanOrEqual(60);
    expect(value(plant, 'compressor.liquidKg')).toBeGreaterThan(0.02);
  });

  it('upright and untouched cools itself and is left with a few grams a minute', () => {
    const plant = carWithCan();
    give(plant, open);
    run(plant, 240);
    expect(value(plant, 'can.can-1.chilled')).toBe(1);
    const before = left(plant);
    run(plant, 300);
    const gramsPerMinute = (1000 * (before - left(plant))) / 5;
    expect(gramsPerMinute).toBeGreaterThan(1);
    expect(gramsPerMinute).toBeLessThan(6);
    expect(value(plant, 'compressor.liquidKg')).toBe(0);
  });

  it('makes the gauge read high while it is open: the number is not the car alone', () => {
    const plant = carWithCan(0.4);
    run(plant, 120);
    give(plant, open);
    run(plant, 8);
    const withCan = value(plant, 'chargingGauge.gaugePressurePa');
    give(plant, shut);
    run(plant, 8);
    expect(withCan).toBeGreaterThan(value(plant, 'chargingGauge.gaugePressurePa') + 4000);
  });

  it('cold is not empty: the scale tells what is left', () => {
    const plant = carWithCan();
    give(plant, { do: 'place', can: 'can-1', at: 'hand' }, open);
    secondsToShare(plant, 0.5, true);
    give(plant, shut, { do: 'place', can: 'can-1', at: 'scale' });
    run(plant, 3);
    expect(value(plant, 'can.can-1.chilled')).toBe(1);
    expect(Math.abs(value(plant, 'scale.massKg') - 0.1 - left(plant))).toBeLessThan(0.002);
    expect(value(plant, 'scale.massKg')).toBeGreaterThan(0.1 + 0.4 * NET_KG);
  });
});
