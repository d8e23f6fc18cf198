/** Random hands on both cars. */
import '../../src/refrigerant/allFluids';
import { type FuzzReport, fuzzPlant } from '../../src/plant/fuzzPlant';

/** Throws at the first finding; the seed makes it again. */
export function hatchback(steps: number, seed: number): FuzzReport {
  return run('hatchback', steps, seed);
}

export function sedan(steps: number, seed: number): FuzzReport {
  return run('sedan', steps, seed);
}

function run(vehicleId: string, steps: number, seed: number): FuzzReport {
  const report = fuzzPlant(
    {
      vehicleId,
      refrigerant: 'R-134a',
      chargeKg: 0.5,
      start: 'equalised',
      weather: { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 },
      faults: [],
      bench: {
        hoses: ['charging', 'gauge-set'],
        cans: [{ id: 'can-1', netKg: 0.283, printedTotalKg: 0.34, tareKg: 0.11 }],
      },
      seed,
    },
    steps,
    seed,
  );
  if (report.finding !== null) throw new Error(`${vehicleId}, seed ${seed}: ${report.finding}`);
  return report;
}
