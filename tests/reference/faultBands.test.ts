/** Printed gauge pressures of sick cars: sources and conditions stand in faultBands.json. */
import { describe, expect, it } from 'vitest';
import { vehicleOf } from '../../src/loop/car/vehicles';
import { type LoopResult, runLoop } from '../../src/plant/runLoop';
import data from './faultBands.json';

interface Band {
  readonly name: string;
  readonly fault?: string;
  readonly lowGaugePa?: readonly number[];
  readonly highGaugePa?: readonly number[];
  readonly at: Readonly<Record<string, number>>;
  readonly engineRpm?: number;
  readonly ambientC?: number;
  readonly minutes?: number;
  readonly cabin?: string;
  readonly reads?: string;
}

function run(vehicle: string, band: Band, severity: number): LoopResult {
  const { fault, engineRpm = 1500, ambientC = 32, minutes = 5, cabin = 'open' } = band;
  return runLoop({
    vehicle,
    refrigerant: vehicleOf(vehicle).label.refrigerant,
    ambientK: ambientC + 273.15,
    relativeHumidity: 0.5,
    engineRevPerS: engineRpm / 60,
    durationS: minutes * 60,
    averageS: minutes > 5 ? minutes * 30 : 120,
    cabin: cabin === 'closed' ? 'closed' : 'open',
    chargeShare: 1,
    faults: fault === undefined ? [] : [{ id: fault, severity }],
    start: 'equalised',
  });
}

describe('printed gauge pressures of sick cars', () => {
  for (const band of data.bands as readonly Band[]) {
    for (const [vehicle, severity] of Object.entries(band.at)) {
      it(`${band.name}: ${vehicle} at ${severity}`, () => {
        const { running, lowSideGaugePa, highSideGaugePa } = run(vehicle, band, severity);
        const least = band.reads === 'least';
        const low = least ? lowSideGaugePa.min : running.lowSideGaugePa;
        const high = least ? highSideGaugePa.min : running.highSideGaugePa;
        within(low, band.lowGaugePa);
        within(high, band.highGaugePa);
      });
    }
  }
});

function within(value: number, band: readonly number[] | undefined): void {
  if (!band) return;
  expect(value).toBeGreaterThanOrEqual(band[0]);
  expect(value).toBeLessThanOrEqual(band[1]);
}
