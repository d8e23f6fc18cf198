/** Caps as they were found, covers over ports, and which fitting is in force: what hands meet at a port. */
import { describe, expect, it } from 'vitest';
import { fittings } from '../../src/equipment/fittings';
import { leakPlaces } from '../../src/faults/leakPlaces';
import { vehicleOf } from '../../src/loop/car/vehicles';
import { assemblePlant } from '../../src/plant/assemblePlant';
import { buildPlant, type FoundCar, type PlantOptions } from '../../src/plant/buildPlant';
import type { Command, Outcome } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

const LEAKING = { id: 'leak-core', severity: 0.9, onsetStep: 0 };

function optionsOf(vehicleId: string, found: FoundCar, more: Partial<PlantOptions> = {}): PlantOptions {
  const { refrigerant, charge } = vehicleOf(vehicleId).label;
  return {
    vehicleId,
    refrigerant,
    chargeKg: charge,
    start: 'equalised',
    weather: { temperatureK: 297.15, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: { hoses: ['gauge-set'], cans: [] },
    found,
    seed: 1,
    ...more,
  };
}

const carOf = (...args: Parameters<typeof optionsOf>): Plant => buildPlant(optionsOf(...args));
const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));
const reasonOf = (outcome: Outcome): string => (outcome.ok ? 'done' : outcome.reason);
const tried = (plant: Plant, command: Command): string => reasonOf(plant.apply(command));

function lostKg(plant: Plant, seconds: number): number {
  for (let i = 0; i < seconds * 50; i++) plant.advance();
  return plant.books().ventedKg;
}

describe('a cap', () => {
  it('that is missing lets a leaking core leak from the start, and a new one stops it', () => {
    const bare = carOf('hatchback', { caps: [{ port: 'port-a', is: 'missing' }] }, { faults: [LEAKING] });
    const capped = carOf('hatchback', {}, { faults: [LEAKING] });
    expect(value(bare, 'cap.port-a.on')).toBe(0);
    expect(lostKg(bare, 20)).toBeGreaterThan(1e-5);
    expect(lostKg(capped, 20)).toBe(0);
    expect(tried(bare, { do: 'cap', port: 'port-a', to: 'on' })).toBe('done');
    const sofarKg = bare.books().ventedKg;
    expect(lostKg(bare, 5)).toBe(sofarKg);
  });

  it('shows a letter only where the scenario says so, and one that misleads shows the other side’s', () => {
    const plain = carOf('hatchback', {});
    const lettered = carOf('hatchback', {
      caps: [
        { port: 'port-a', is: 'misleading' },
        { port: 'port-b', is: 'own' },
      ],
    });
    const letters = (plant: Plant) => ['port-a', 'port-b'].map((id) => value(plant, `cap.${id}.letter`));
    expect(letters(plain)).toEqual([0, 0]);
    // port-a is the high side there: 1 is L
    expect(letters(lettered)).toEqual([1, 1]);
    lettered.apply({ do: 'cap', port: 'port-a', to: 'off' });
    expect(letters(lettered)).toEqual([0, 1]);
  });

  it('of a port the car has not is said so', () => {
    expect(() => carOf('hatchback', { caps: [{ port: 'port-z', is: 'own' }] })).toThrow(/no port "port-z"/);
  });
});

describe('a cover', () => {
  it('keeps hands and eyes from the port until it is lifted, and cannot go on over a coupler', () => {
    const van = carOf('van', {});
    const cap: Command = { do: 'cap', port: 'port-a', to: 'off' };
    expect(van.choices('covered-port')).toEqual(['port-a']);
    expect(tried(van, cap)).toBe('refusal.underCover');
    expect(tried(van, { do: 'trace', port: 'port-a' })).toBe('refusal.underCover');
    expect(tried(van, { do: 'cap', port: 'port-b', to: 'off' })).toBe('done');
    expect(tried(van, { do: 'cover', port: 'port-a', to: 'off' })).toBe('done');
    expect(tried(van, { do: 'trace', port: 'port-a' })).toBe('done');
    expect(tried(van, cap)).toBe('done');
    expect(tried(van, { do: 'couple', hose: 'gauge-low', port: 'port-a' })).toBe('done');
    expect(tried(van, { do: 'cover', port: 'port-a', to: 'on' })).toBe('refusal.couplerUnderCover');
  });

  it('may be found off, and lies over no other port', () => {
    const van = carOf('van', { covers: [{ port: 'port-a', is: 'off' }] });
    expect(value(van, 'cover.port-a.on')).toBe(0);
    expect(tried(van, { do: 'cap', port: 'port-a', to: 'off' })).toBe('done');
    expect(() => carOf('sedan', { covers: [{ port: 'port-a', is: 'off' }] })).toThrow(/lies under no cover/);
    expect(tried(carOf('sedan', {}), { do: 'cover', port: 'port-a', to: 'off' })).toBe(
      'refusal.unknownArgument',
    );
  });

  it('stands as it was after going back', () => {
    const van = carOf('van', {});
    const before = van.snapshot();
    van.apply({ do: 'cover', port: 'port-a', to: 'off' });
    expect(value(van, 'cover.port-a.on')).toBe(0);
    van.restore(before);
    expect(value(van, 'cover.port-a.on')).toBe(1);
  });
});

describe('a fitting', () => {
  const widthsMm = (plant: Plant): number[] =>
    ['port-a', 'port-b'].map((id) => Math.round(10_000 * value(plant, `port.${id}.diameterM`)) / 10);

  it('is the refrigerant’s and the side’s; a converted pickup wears those of R-134a', () => {
    expect(widthsMm(carOf('pickup', {}))).toEqual([11.1, 9.5]);
    expect(widthsMm(carOf('pickup', { converted: true }))).toEqual([13, 16]);
    expect(widthsMm(carOf('compact', {}))).toEqual([14, 17]);
    expect(widthsMm(carOf('hatchback', {}))).toEqual([16, 13]);
  });

  it('takes only the hose made for it: a set for R-134a goes on the pickup after its conversion', () => {
    const onto = (found: FoundCar): string => {
      const bench = { hoses: ['gauge-set'], cans: [], refrigerant: 'R-134a' } as const;
      const plant = carOf('pickup', found, { bench });
      plant.apply({ do: 'cap', port: 'port-a', to: 'off' });
      return tried(plant, { do: 'couple', hose: 'gauge-low', port: 'port-a' });
    };
    expect(onto({})).toBe('refusal.fit.other-kind');
    expect(onto({ converted: true })).toBe('done');
  });

  it('has a coupler on the hose by what the bench holds', () => {
    expect(value(carOf('compact', {}), 'hose.gauge-high.couplerM')).toBe(fittings['r1234yf-17'].diameterM);
    expect(value(carOf('pickup', {}), 'hose.gauge-low.couplerM')).toBe(
      fittings['r12-seven-sixteenths'].diameterM,
    );
  });
});

describe('a second unit', () => {
  it('hangs on the high side up to its own device: lines to it leak what the liquid line holds', () => {
    const { car } = assemblePlant(optionsOf('van', {}));
    const vesselAt = (id: string) => leakPlaces(car).find((place) => place.id === id)?.port.vessel;
    for (const id of ['liquid-front', 'rear-liquid', 'rear-liquid-tee', 'rear-liquid-rear-evaporator'])
      expect([id, vesselAt(id)]).toEqual([id, car.loop.high]);
    for (const id of ['liquid-front-evaporator', 'rear-suction', 'rear-suction-accumulator'])
      expect([id, vesselAt(id)]).not.toEqual([id, car.loop.high]);
  });
});
