/** The four cars that came later: where they run, what they hold, and what sets each apart. Lean: few short runs a car. */
import { describe, expect, it } from 'vitest';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import study from '../../reference/loop/chargeStudy.json';
import { afterConversion, altitude, r12Bands } from '../../reference/loop/conversion.json';
import bands from '../../reference/loop/pressureBands.json';
import { celsius, kPa, psi, steady } from '../steady';

const MINUTES = 6;
const settled = (car: string, chargeShare = 1) =>
  steady(car, { chargeShare, minutes: MINUTES, averageS: 60 });

describe('the pickup', () => {
  const { label, conversion } = vehicleOf('pickup');
  const share = (conversion?.charge ?? 0) / label.charge;

  it('reads the bands printed for a car with R-12', () => {
    for (const [ambientC, from, to] of r12Bands.rows) {
      const high = kPa(steady('pickup', { ambientC, minutes: MINUTES, averageS: 60 }).highSideGaugePa.mean);
      expect(high, `${ambientC} degC`).toBeGreaterThan(from);
      expect(high, `${ambientC} degC`).toBeLessThan(to);
    }
  });

  it('converted, with 85 % by mass of R-134a, has a higher head and hardly warmer vents (maker bulletin)', () => {
    expect(share).toBeCloseTo(0.85, 3);
    const asked = { ambientC: 38, minutes: MINUTES, averageS: 60 };
    const before = steady('pickup', asked);
    const after = steady('pickup', { ...asked, refrigerant: 'R-134a', chargeShare: share });
    const rise = kPa(after.highSideGaugePa.mean - before.highSideGaugePa.mean);
    expect(rise).toBeGreaterThan(50);
    expect(rise).toBeLessThan(afterConversion.high_up_to_kPa);
    expect(after.ventK - before.ventK).toBeGreaterThan(0);
    expect(after.ventK - before.ventK).toBeLessThan(afterConversion.vent_warmer_up_to_K);
    expect(Math.abs(psi(after.lowSideGaugePa.mean - before.lowSideGaugePa.mean))).toBeLessThan(2);
  });

  it('has no high-pressure cut-out until one is put in, and a fan on its belt that needs no clutch', () => {
    const car = createCar(vehicleOf('pickup'), {
      refrigerant: 'R-12',
      chargeKg: label.charge,
      ambientK: 305.15,
      relativeHumidity: 0.5,
      stood: 'equalised',
    });
    car.set({ engineRevPerS: 15 });
    for (let i = 0; i < 500; i++) car.step(0.02);
    expect(car.number('clutchIn')).toBe(0);
    expect(car.number('fanSpeed0')).toBeCloseTo(0.6, 2);
    expect(car.number('fanSpeed1')).toBe(0);
    expect(car.number('highCutOut')).toBe(0);
  });
});

describe.each(['pickup', 'van', 'compact', 'electric'])('%s', (id) => {
  const full = settled(id);

  it('stands in the printed bands at 32 °C, its vents cold, its books in balance', () => {
    expect(kPa(full.highSideGaugePa.mean)).toBeGreaterThan(1172);
    expect(kPa(full.highSideGaugePa.mean)).toBeLessThan(1717);
    expect(kPa(full.lowSideGaugePa.mean)).toBeGreaterThan(
      bands.stationary.low_floor_expansion_valve_kPa_gauge,
    );
    expect(kPa(full.lowSideGaugePa.mean)).toBeLessThan(bands.stationary.low_ceiling_kPa_gauge);
    expect(celsius(full.ventK)).toBeLessThan(18);
    expect(celsius(full.dischargeK)).toBeGreaterThan(65);
    expect(celsius(full.dischargeK)).toBeLessThan(110);
    expect(full.massErrorRelative).toBeLessThan(1e-12);
    expect(full.energyErrorRelative).toBeLessThan(1e-10);
  });

  it('holds its label in the middle of the plateau (trade association study)', () => {
    const [lowerFrom, lowerTo] = study.knees.lower_share_of_charge;
    expect(settled(id, lowerFrom).capacityW).toBeLessThan(0.97 * full.capacityW);
    expect(settled(id, lowerTo).capacityW).toBeGreaterThan(0.97 * full.capacityW);
    const high = (share: number): number => settled(id, share).highSideGaugePa.mean;
    expect(Math.abs(psi(high(1.05) - full.highSideGaugePa.mean))).toBeLessThan(5);
    expect(high(1.3)).toBeGreaterThan(1.03 * full.highSideGaugePa.mean);
  });
});

describe('the compact', () => {
  it('with one 340 g can too many trips on high pressure at idle (common practice)', () => {
    const { charge } = vehicleOf('compact').label;
    const over = steady('compact', { rpm: 800, minutes: MINUTES, chargeShare: 1 + 0.34 / charge });
    expect(over.highSideGaugePa.max).toBeGreaterThan(2.74e6);
    expect(over.cyclesPerMin).toBeGreaterThan(1);
  });

  it('holds its low side by its own stroke at half its charge: the needle tells nothing', () => {
    const half = settled('compact', 0.5);
    expect(
      Math.abs(psi(half.lowSideGaugePa.mean - settled('compact', 0.4).lowSideGaugePa.mean)),
    ).toBeLessThan(2);
    expect(half.superheatK).toBeGreaterThan(15);
  });
});

describe('sun and height', () => {
  it('800 W of sun through the glass warm a shut cabin and what comes out of its vents', () => {
    const asked = { ambientC: 32, cabin: 'closed', minutes: 10, averageS: 60 } as const;
    const shade = steady('compact', asked);
    const sun = steady('compact', { ...asked, sunW: 800 });
    expect(sun.ventK - shade.ventK).toBeGreaterThan(0.3);
    expect(sun.ventK - shade.ventK).toBeLessThan(6);
  });

  it('at 1,600 m a standing car reads 2.6 psi more (computed)', () => {
    const still = { rpm: 0, minutes: 0.2, averageS: 1 };
    const up = steady('electric', { ...still, atmospherePa: 1000 * altitude.atmosphere_kPa });
    const down = steady('electric', still);
    const shift = psi(up.lowSideGaugePa.last - down.lowSideGaugePa.last);
    expect(Math.abs(shift - altitude.shift_psi)).toBeLessThan(0.1);
  });
});
