import { describe, expect, it } from 'vitest';
import study from '../../reference/loop/chargeStudy.json';
import { CARS, type CarId, psi, steady } from '../steady';

const [LOWER_FROM, LOWER_TO] = study.knees.lower_share_of_charge;
const [UPPER_FROM, UPPER_TO] = study.knees.upper_share_of_charge;

const charged = (car: CarId, chargeShare: number) => steady(car, { chargeShare });
const full = (car: CarId) => charged(car, 1);

/** A knee is where capacity has reached 97 % of that at full charge. */
const enough = (car: CarId, chargeShare: number): boolean =>
  charged(car, chargeShare).capacityW >= 0.97 * full(car).capacityW;

describe('charge', () => {
  for (const car of CARS) {
    it(`${car}: the lower knee lies at ${LOWER_FROM} to ${LOWER_TO} of the label (trade association study, 2021)`, () => {
      expect(enough(car, LOWER_FROM)).toBe(false);
      expect(enough(car, LOWER_TO)).toBe(true);
    });

    it(`${car}: between 85 and 105 % nothing on the gauges tells the charge`, () => {
      for (const share of [0.85, 1.05]) {
        expect(
          Math.abs(psi(charged(car, share).highSideGaugePa.mean - full(car).highSideGaugePa.mean)),
        ).toBeLessThan(5);
        expect(
          Math.abs(psi(charged(car, share).lowSideGaugePa.mean - full(car).lowSideGaugePa.mean)),
        ).toBeLessThan(2);
      }
    });

    it(`${car}: overcharge shows between ${UPPER_FROM} and ${UPPER_TO} of the label, and more at 1.4`, () => {
      const rise = (share: number): number =>
        charged(car, share).highSideGaugePa.mean / full(car).highSideGaugePa.mean;
      const shows = (share: number): boolean =>
        rise(share) >= 1.03 || charged(car, share).subcoolingK - full(car).subcoolingK >= 3;
      expect(shows(UPPER_FROM)).toBe(false);
      expect(shows(UPPER_TO)).toBe(true);
      expect(rise(1.4)).toBeGreaterThan(rise(UPPER_TO));
      expect(charged(car, 1.4).subcoolingK).toBeGreaterThan(charged(car, UPPER_TO).subcoolingK);
    });

    it(`${car}: at a quarter it cools badly, with superheat and no liquid before the metering device`, () => {
      const starved = charged(car, 0.25);
      expect(starved.capacityW).toBeLessThan(0.6 * full(car).capacityW);
      expect(starved.superheatK).toBeGreaterThan(15);
      expect(starved.subcoolingK).toBeLessThan(0.5);
    });
  }

  it('sedan at 75 %: both sides within 5 psi, vent within 1 K, suction superheated, gas hotter (trade association tests)', () => {
    const { within, suctionSuperheat_over_K } = study.orificeTubeAt75Percent;
    const short = charged('sedan', 0.75);
    const whole = full('sedan');
    expect(Math.abs(psi(short.highSideGaugePa.mean - whole.highSideGaugePa.mean))).toBeLessThan(
      within.pressure_psi,
    );
    expect(Math.abs(psi(short.lowSideGaugePa.mean - whole.lowSideGaugePa.mean))).toBeLessThan(
      within.pressure_psi,
    );
    expect(Math.abs(short.ventK - whole.ventK)).toBeLessThan(within.vent_K);
    expect(short.suctionSuperheatK).toBeGreaterThan(suctionSuperheat_over_K);
    expect(whole.suctionSuperheatK).toBeLessThan(0.5);
    expect(short.dischargeK - whole.dischargeK).toBeGreaterThan(5);
  });

  it('hatchback at 79 %: high side no more than 2 % off (trade association study)', () => {
    const change =
      charged('hatchback', 0.79).highSideGaugePa.mean / full('hatchback').highSideGaugePa.mean - 1;
    expect(Math.abs(change)).toBeLessThan(0.02);
  });

  it('hatchback with one more 340 g can trips on high pressure at idle (common practice)', () => {
    const { highSideGaugePa, cyclesPerMin } = steady('hatchback', { rpm: 800, chargeShare: 1 + 340 / 480 });
    expect(highSideGaugePa.max).toBeGreaterThan(2.8e6);
    expect(cyclesPerMin).toBeGreaterThan(0);
  });
});
