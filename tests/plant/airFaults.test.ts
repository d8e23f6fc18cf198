import { describe, expect, it } from 'vitest';
import { buildPlant } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

const RUNNING: readonly Command[] = [
  { do: 'windows', to: 'open' },
  { do: 'ac', to: 'on' },
  { do: 'blower', speed: 4 },
  { do: 'engine', rpm: 1500 },
];

function running(vehicleId: string, id?: string, severity = 1): Plant {
  const plant = buildPlant({
    vehicleId,
    refrigerant: 'R-134a',
    chargeKg: vehicleId === 'sedan' ? 0.72 : 0.48,
    start: 'equalised',
    weather: { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: id === undefined ? [] : [{ id, severity, onsetStep: 0 }],
    bench: { hoses: ['gauge-set'], cans: [] },
    seed: 3,
  });
  for (const command of RUNNING) expect(plant.apply(command).ok).toBe(true);
  return plant;
}

function run(plant: Plant, seconds: number): Plant {
  for (let i = 0; i < seconds * 50; i++) plant.advance();
  return plant;
}

const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));

/** What the air thermometer shows half a minute after it was put somewhere. */
function airAt(plant: Plant, at: string): number {
  expect(plant.apply({ do: 'probe-air', at }).ok).toBe(true);
  return value(run(plant, 30), 'airThermometer.temperatureK');
}

describe('a temperature door that leaks heat', () => {
  it('is told by a thermometer: cold right behind the coil, warm at the vent, and well with a new door', () => {
    const plant = run(running('sedan', 'door-leaking-heat', 0.6), 240);
    expect(airAt(plant, 'centre-vent')).toBeGreaterThan(airAt(plant, 'coil-outlet') + 6);
    plant.apply({ do: 'engine', rpm: 0 });
    expect(plant.apply({ do: 'replace', part: 'blend-door' }).ok).toBe(true);
    plant.apply({ do: 'engine', rpm: 1500 });
    run(plant, 60);
    expect(airAt(plant, 'centre-vent')).toBeLessThan(airAt(plant, 'coil-outlet') + 3);
  });
});

describe('little air at the vents', () => {
  it('a dead blower does not hum, a filter is dirty to look at, dirt on the coil too', () => {
    const heard = (fault: string) => {
      const plant = run(running('hatchback', fault), 5);
      expect(value(plant, 'vent.airflowRatio')).toBeLessThan(0.3);
      return ['blower.turning', 'dirt.cabin-filter', 'dirt.evaporator'].map((id) => value(plant, id));
    };
    expect(heard('blower-dead')).toEqual([0, 0, 0]);
    expect(heard('cabin-filter-blocked')).toEqual([1, 7 / 8, 0]);
    expect(heard('coil-air-low')).toEqual([1, 0, 7 / 8]);
  });

  it('comes back with the part that was at fault', () => {
    for (const [fault, part] of [
      ['blower-dead', 'blower'],
      ['cabin-filter-blocked', 'cabin-filter'],
    ]) {
      const plant = run(running('sedan', fault), 2);
      plant.apply({ do: 'engine', rpm: 0 });
      expect(plant.apply({ do: 'replace', part }).ok).toBe(true);
      expect(value(run(plant, 2), 'vent.airflowRatio')).toBe(1);
    }
  });
});

describe('the condenser fans', () => {
  it('slow ones turn, and an eye tells that they are slow', () => {
    const plant = run(running('hatchback', 'condenser-fan-slow'), 20);
    expect(value(plant, 'fan.fan.turning')).toBe(1);
    expect(value(plant, 'fan.fan.speedRatio')).toBe(1 / 8);
    expect(value(run(running('hatchback'), 20), 'fan.fan.speedRatio')).toBe(1);
  });

  it('late ones stand until a new relay', () => {
    const plant = run(running('sedan', 'condenser-fan-late'), 5);
    expect(value(plant, 'fan.fan.turning')).toBe(0);
    plant.apply({ do: 'engine', rpm: 0 });
    expect(plant.apply({ do: 'replace', part: 'fan-relay' }).ok).toBe(true);
    plant.apply({ do: 'engine', rpm: 1500 });
    expect(value(run(plant, 5), 'fan.fan.turning')).toBe(1);
  });
});

describe('a frost guard that lets go too late', () => {
  it('is the fin thermostat on one car and the cycling switch on the other, and can be changed', () => {
    for (const [vehicleId, part] of [
      ['hatchback', 'thermostat'],
      ['sedan', 'cycling-switch'],
    ]) {
      const plant = running(vehicleId, 'coil-iced');
      expect(plant.choices('replaceable')).toContain(part);
      expect(plant.choices('cause')).toContain('coil-iced');
    }
  });
});
