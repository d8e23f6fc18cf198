import { describe, expect, it } from 'vitest';
import { partNamed } from '../../../src/loop/car/assembleLoop';
import { AT, FRONT_COIL, FROST, WATER } from '../../../src/loop/car/carNumbers';
import { stepCoilAir } from '../../../src/loop/car/coilAir';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';

const STEP_S = 0.08;

/** A coil at a wall temperature, with some water on each cell, in air of some humidity ratio. */
function coil(wallK: number, heldKg: number, ratio: number) {
  const vehicle = vehicleOf('sedan');
  const { network, loop } = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 283.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  const part = partNamed(loop.parts, 'evaporator');
  const r = network.reserve;
  r[AT.blowerStep] = 4;
  r[AT.coilInletRatio] = ratio;
  for (let i = 0; i < part.cells; i++) {
    network.setWall(part.vessel, part.firstCell + i, wallK);
    r[WATER + i] = heldKg;
  }
  const onCoil = (): number => {
    let sum = r[AT.drainedKg];
    for (let i = 0; i < part.cells; i++) sum += r[WATER + i] + r[FROST + i];
    return sum;
  };
  const coil = { part, air: vehicle.evaporatorAir, at: FRONT_COIL, caseWPerK: 0 };
  return { r, onCoil, step: () => stepCoilAir(network, coil, 1, 1, STEP_S) };
}

describe('water on the coil', () => {
  for (const [what, wallK, heldKg, ratio] of [
    ['drying and freezing at once', 268.15, 2e-6, 0],
    ['freezing in damp air', 268.15, 1e-3, 0.006],
    ['drying', 283.15, 1e-4, 0.002],
    ['running over', 278.15, 0.0124, 0.015],
  ] as const) {
    it(`is neither made nor lost: ${what}`, () => {
      const { r, onCoil, step } = coil(wallK, heldKg, ratio);
      for (let i = 0; i < 50; i++) {
        const before = onCoil();
        step();
        const fromAir = r[AT.coilFlow] * (ratio - r[AT.coilOutletRatio]) * STEP_S;
        expect(Math.abs(onCoil() - before - fromAir)).toBeLessThan(1e-12);
      }
    });
  }
});
