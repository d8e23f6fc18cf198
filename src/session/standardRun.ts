/**
 * The standard run of 30 minutes whose state hashes are compared between engines: the saloon by its own commands, with a
 * cold start, a hose, a can, stops of the engine and a clutch that cycles. Any change of the model changes it.
 */
import { buildPlant } from '../plant/buildPlant';
import type { Plant } from '../plant/plantPort';
import { STEPS_PER_MINUTE } from './clock';
import { readWords } from './plan/planWords';

export interface StandardHash {
  readonly minute: number;
  readonly stateHash: string;
}

const MINUTES = [1, 10, 20, 30] as const;

/** What is done at the start of which minute. */
const DEEDS: Readonly<Record<number, readonly string[]>> = {
  0: [
    'door open',
    'windows open',
    'blower 4',
    'engine 1500',
    'ac on',
    'cap port-a off',
    'couple charging port-a side-middle,fender,mat',
  ],
  1: ['coupler charging open', 'tap can-1 charging'],
  4: ['can-valve can-1 4'],
  5: ['can-valve can-1 0', 'windows shut', 'air recirculated', 'blower 1'],
  12: ['engine 0'],
  15: ['engine 900', 'blower 4'],
  22: ['engine 2500'],
  27: ['ac off'],
};

export function standardRun(): StandardHash[] {
  const plant = buildPlant({
    vehicleId: 'sedan',
    refrigerant: 'R-134a',
    chargeKg: 0.8,
    start: 'soaked',
    weather: { temperatureK: 303.15, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: { hoses: ['charging'], cans: [{ id: 'can-1', netKg: 0.283, printedTotalKg: 0.34, tareKg: 0.11 }] },
    seed: 1,
  });
  const hashes: StandardHash[] = [];
  for (let minute = 0; minute < MINUTES[MINUTES.length - 1]; minute++) {
    for (const deed of DEEDS[minute] ?? []) perform(plant, deed);
    for (let step = 0; step < STEPS_PER_MINUTE; step++) plant.advance();
    if (MINUTES.some((wanted) => wanted === minute + 1)) {
      hashes.push({ minute: minute + 1, stateHash: plant.stateHash() });
    }
  }
  return hashes;
}

function perform(plant: Plant, deed: string): void {
  const reading = readWords(deed);
  const outcome =
    'act' in reading && reading.act.kind === 'command' ? plant.apply(reading.act.command) : null;
  if (!outcome?.ok) throw new Error(`the standard run cannot ${deed}`);
}
