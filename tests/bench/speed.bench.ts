/**
 * What a property look-up, a step of the plant and a step of a whole session cost on one core, and their ratio. The plant
 * is the saloon on a warm day with the engine running; a step is 20 ms of simulated time.
 */
import '../../src/refrigerant/allFluids';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { buildPlant } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';
import { refrigerant } from '../../src/refrigerant/fluids';
import type { Isobar } from '../../src/refrigerant/refrigerant';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';

const STEP_S = 0.02;
const LOOK_UPS = 400_000;
const SETTLING_STEPS = 15_000;
const STEPS = 30_000;
const ROUNDS = 3;
const RUNNING: readonly Command[] = [
  { do: 'door', to: 'open' },
  { do: 'engine', rpm: 1500 },
  { do: 'ac', to: 'on' },
  { do: 'blower', speed: 4 },
];

export function speed(): Record<string, number> {
  const fullNs = perCallNs(LOOK_UPS, everyPressure());
  const sharedNs = perCallNs(LOOK_UPS, onePressure());
  const plantNs = perCallNs(STEPS, plantStep());
  const sessionNs = perCallNs(STEPS, sessionStep());
  return {
    'look-up, new pressure, ns': fullNs,
    'look-up, shared pressure, ns': sharedNs,
    'plant step, us': plantNs / 1000,
    'session step, us': sessionNs / 1000,
    'plant, times real time': STEP_S / (plantNs * 1e-9),
    'session, times real time': STEP_S / (sessionNs * 1e-9),
    'plant step : look-up': plantNs / fullNs,
    'session step : look-up': sessionNs / fullNs,
  };
}

/** The fastest of a few rounds: what is slower was something else on the machine. */
function perCallNs(calls: number, call: (index: number) => number): number {
  let best = Number.POSITIVE_INFINITY;
  let sum = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    for (let index = 0; index < calls; index++) sum += call(index);
    best = Math.min(best, ((performance.now() - start) * 1e6) / calls);
  }
  // asked for, so that nothing measured can be left out as unused
  if (Number.isNaN(sum)) throw new Error('a measured call gave no number');
  return best;
}

/** Temperature, volume and slope at a pressure and an enthalpy. */
function lookUp(isobar: Isobar, enthalpyJPerKg: number): number {
  const temperatureK = isobar.temperatureK(enthalpyJPerKg);
  return temperatureK + isobar.volumeM3PerKg(enthalpyJPerKg) + isobar.temperatureSlope(enthalpyJPerKg);
}

function everyPressure(): (index: number) => number {
  const isobar = refrigerant('R-134a').isobar('continue');
  const [pressures, enthalpies] = [draws('p', 1.5e5, 2.5e6), draws('h', 1.9e5, 4.6e5)];
  return (index) => {
    isobar.setPressurePa(pressures[index % pressures.length]);
    return lookUp(isobar, enthalpies[index % enthalpies.length]);
  };
}

function onePressure(): (index: number) => number {
  const isobar = refrigerant('R-134a').isobar('continue');
  isobar.setPressurePa(1.2e6);
  const enthalpies = draws('h', 1.9e5, 4.6e5);
  return (index) => lookUp(isobar, enthalpies[index % enthalpies.length]);
}

function draws(purpose: string, low: number, high: number): Float64Array {
  return Float64Array.from(
    { length: 4096 },
    (_, i) => low + (high - low) * keyedUniform(1, purpose, 'bench', i),
  );
}

function plantStep(): () => number {
  const plant = runningPlant();
  return () => plant.advance().length;
}

function runningPlant(): Plant {
  const plant = buildPlant({
    vehicleId: 'sedan',
    refrigerant: 'R-134a',
    chargeKg: 0.8,
    start: 'equalised',
    weather: { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: { hoses: ['charging'], cans: [{ id: 'can-1', netKg: 0.283, printedTotalKg: 0.34, tareKg: 0.11 }] },
    seed: 1,
  });
  for (const command of RUNNING) plant.apply(command);
  for (let step = 0; step < SETTLING_STEPS; step++) plant.advance();
  return plant;
}

function sessionStep(): () => number {
  const session = openSession(scenarioById('warm-at-the-lights'), { mode: 'practice', seed: 1 });
  for (const command of [{ do: 'begin' } as const, ...RUNNING]) session.send(command);
  session.advance(SETTLING_STEPS);
  return () => session.advance(1).stepsDone;
}
