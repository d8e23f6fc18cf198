import { describe, expect, it } from 'vitest';
import { expansionValveLift } from '../../../src/loop/expansionValve';
import { refrigerant } from '../../../src/refrigerant/fluids';

const EVAPORATOR_PA = 350_000;
const MAXIMUM_PA = 620_000;

/** Lift at a superheat, static 3.5 K, gradient 4.5 K. */
function lift(superheatK: number, evaporatorPa = EVAPORATOR_PA): number {
  const fluid = refrigerant('R-134a');
  const bulbPa = fluid.saturationPressurePa(fluid.saturationTemperatureK(evaporatorPa) + superheatK);
  return expansionValveLift(bulbPa, evaporatorPa, 3.5, 4.5, MAXIMUM_PA);
}

describe('expansion valve', () => {
  it('stays shut below its static superheat and is wide open a gradient above it', () => {
    expect(lift(3)).toBe(0);
    expect(lift(9)).toBe(1);
  });

  it('opens within the printed superheats of 3.3 to 4.5 K (a military cooling unit; two suppliers of one car)', () => {
    expect(lift(3.3)).toBeLessThan(0.05);
    expect(lift(4.5)).toBeGreaterThan(0.1);
  });

  it('closes again above its maximum operating pressure', () => {
    expect(lift(8, 600_000)).toBeLessThan(lift(8));
    expect(lift(12, 700_000)).toBe(0);
  });
});
