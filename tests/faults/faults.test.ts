import { describe, expect, it } from 'vitest';
import { editsWith, fillingWith, holesWith, settleFaults } from '../../src/faults/applyFaults';
import { bentSigns } from '../../src/faults/bentSigns';
import { type ActiveFault, type Channel, purely, type Sign } from '../../src/faults/fault';
import { clash, faultOf, faults, faultsFor } from '../../src/faults/registry';
import { EDITS, type EditName } from '../../src/loop/car/carNumbers';
import { createCar } from '../../src/loop/car/createCar';
import { vehicleIds, vehicleOf } from '../../src/loop/car/vehicles';
import type { SignRow } from '../../src/plant/signs/signTable';
import signTable from '../reference/signTable.json';

const SOUND = purely('R-134a', 0.48);

function carOf(id: string) {
  const vehicle = vehicleOf(id);
  return createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
}

describe('the registry', () => {
  it('says no to an id it has not, and names those it has', () => {
    expect(() => faultOf('gremlin')).toThrow('low-charge, overcharge, air-in-loop');
  });

  it('finds two faults that cannot be together', () => {
    expect(clash(['leak', 'low-charge', 'overcharge'])).toEqual(['low-charge', 'overcharge']);
    expect(clash(['leak', 'condenser-fan-dead'])).toBeUndefined();
  });

  it('only excludes faults that exist', () => {
    for (const { excludes } of faults) for (const id of excludes) expect(faultOf(id).id).toBe(id);
  });
});

describe('severity', () => {
  for (const fault of faults) {
    it(`${fault.id}: 0 is sound, and the quantity moves one way to 1`, () => {
      const none: ActiveFault = { id: fault.id, severity: 0 };
      for (const id of vehicleIds) {
        expect(fillingWith([none], vehicleOf(id), SOUND)).toEqual(SOUND);
        for (const [name, value] of Object.entries(editsWith([none], vehicleOf(id))))
          expect(value, name).toBe(EDITS[name as EditName].sound);
        expect(holesWith([none], carOf(id))).toEqual([]);
      }
      const { at } = fault.quantity;
      const steps = [0.25, 0.5, 0.75, 1].map((severity) => at(severity) - at(severity - 0.25));
      expect(steps.every((step) => step !== 0 && Math.sign(step) === Math.sign(steps[0]))).toBe(true);
    });
  }
});

describe('two faults', () => {
  for (const id of vehicleIds) {
    it(`act on the ${id} the same in either order, to the last bit`, () => {
      const vehicle = vehicleOf(id);
      const active = faultsFor(vehicle).map((fault, i) => ({ id: fault.id, severity: 0.3 + 0.05 * i }));
      let pairs = 0;
      for (const a of active) {
        for (const b of active) {
          if (a.id >= b.id || clash([a.id, b.id])) continue;
          pairs++;
          expect(fillingWith([a, b], vehicle, SOUND)).toEqual(fillingWith([b, a], vehicle, SOUND));
          expect(editsWith([a, b], vehicle)).toEqual(editsWith([b, a], vehicle));
          // what edits nothing but numbers has been compared; ways out have an order too
          if (!faultOf(a.id).links || !faultOf(b.id).links) continue;
          const one = carOf(id);
          const other = carOf(id);
          settleFaults(one, [a, b]);
          settleFaults(other, [b, a]);
          for (let i = 0; i < 50; i++) {
            one.step(0.02);
            other.step(0.02);
          }
          expect(one.network.stateHash()).toBe(other.network.stateHash());
        }
      }
      expect(pairs).toBeGreaterThan(20);
    });
  }
});

describe('a repair', () => {
  it('gives back what was worn and shuts the hole', () => {
    const car = carOf('sedan');
    settleFaults(car, [
      { id: 'weak-compressor', severity: 1 },
      { id: 'leak', severity: 0.5, site: 'liquid' },
    ]);
    expect(car.number('pumpingHealth')).toBeCloseTo(0.3, 9);
    expect(car.network.linkNamed('leak:liquid')).toBeGreaterThanOrEqual(0);
    settleFaults(car, []);
    expect(car.number('pumpingHealth')).toBe(1);
    expect(car.network.linkNamed('leak:liquid')).toBe(-1);
  });
});

describe('holes', () => {
  const area = (car: ReturnType<typeof carOf>, id: string): number => {
    const found = car.network.structure().links.find(({ spec }) => spec.id === id)?.spec;
    return found?.kind === 'valve' ? found.areaM2 : 0;
  };
  const at = (severity: number, site: string): ActiveFault => ({ id: 'leak', severity, site });

  it('two at one part leak together', () => {
    const car = carOf('sedan');
    settleFaults(car, [at(0.3, 'liquid')]);
    const one = area(car, 'leak:liquid');
    settleFaults(car, [at(0.3, 'liquid'), at(0.3, 'liquid'), at(0.3, 'suction')]);
    expect(area(car, 'leak:liquid')).toBeCloseTo(2 * one, 15);
    expect(area(car, 'leak:suction')).toBe(one);
  });

  it('grow and shrink with their severity', () => {
    const car = carOf('sedan');
    settleFaults(car, [at(0.2, 'condenser')]);
    const small = area(car, 'leak:condenser');
    settleFaults(car, [at(0.4, 'condenser')]);
    expect(area(car, 'leak:condenser') / small).toBeCloseTo(4, 9);
    settleFaults(car, [at(0.2, 'condenser')]);
    expect(area(car, 'leak:condenser')).toBe(small);
  });
});

describe('a leak', () => {
  /** kg gone in a minute at rest. */
  function lost(site: string, severity: number): number {
    const car = carOf('sedan');
    settleFaults(car, [{ id: 'leak', severity, site }]);
    for (let i = 0; i < 3000; i++) car.step(0.02);
    expect(car.network.books().massErrorRelative).toBeLessThan(1e-12);
    return car.network.books().ventedKg.refrigerant;
  }

  it('loses more through a larger hole, and more as liquid than as vapour', () => {
    expect(lost('liquid', 0.4)).toBeGreaterThan(2 * lost('liquid', 0.2));
    expect(lost('liquid', 0.4)).toBeGreaterThan(1.5 * lost('discharge', 0.4));
  });
});

describe('what a fault claims to show', () => {
  const rows = signTable.rows as unknown as readonly SignRow[];
  for (const kind of ['orifice-tube', 'expansion-valve'] as const) {
    for (const { id, signs } of faults) {
      const claims = Object.entries(signs[kind]).filter(([, sign]) => sign !== 'either') as [Channel, Sign][];
      if (claims.length === 0) continue;
      // the table itself is run on both cars in tests/reference
      it(`${kind}, ${id}: stands in the table of signs`, () => {
        for (const [channel, sign] of claims) {
          const printed = rows
            .filter(({ fault }) => fault === id)
            .map((row) => row.signs[kind]?.[channel] ?? '');
          expect(
            printed.some((answers) => answers.split('-or-').includes(sign)),
            `${channel} ${sign}`,
          ).toBe(true);
        }
      });
    }
  }

  it('is nothing that the model bends at 32 °C on the two cars that the table is run on', () => {
    for (const { vehicle, fault, channel, ambientsC, only } of bentSigns) {
      if (!['hatchback', 'sedan'].includes(vehicle) || only || !ambientsC.includes(32)) continue;
      const claimed = faultOf(fault).signs[vehicleOf(vehicle).metering.kind][channel as Channel] ?? 'either';
      expect(claimed, `${vehicle}, ${fault}: ${channel}`).toBe('either');
    }
  });
});
