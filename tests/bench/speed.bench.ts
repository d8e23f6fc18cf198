/**
 * What a step of 20 ms costs on one core: the loop alone by vehicle, the saloon's plant without and with a can feeding
 * through a hose, a whole session, a ghost car, and playing a log of a quarter of an hour again.
 */
import '../../src/layout/allLayouts';
import '../../src/loop/car/allVehicles';
import '../../src/refrigerant/allFluids';
import { createCar } from '../../src/loop/car/createCar';
import { vehicleOf } from '../../src/loop/car/vehicles';
import { buildPlant } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import { openSession } from '../../src/session/openSession';
import { readWords } from '../../src/session/plan/planWords';
import { scenarioById } from '../../src/session/scenario/library';
import { figures, type Timing, timed } from './timing';

const STEP_S = 0.02;
const STEP_NS = STEP_S * 1e9;
const SETTLING_STEPS = 6000;
const CALLS = 1000;
const ROUNDS = 40;
const REPLAYED_STEPS = 45_000;
/** A ghost car that is sixty times ahead of the clock catches up a minute in a second. */
const GHOST_LAPSE = 60;
const RUNNING = ['door open', 'engine 1500', 'ac on', 'blower 4'];
const FEEDING = [
  'cap port-a off',
  'couple charging port-a side-middle,fender,mat',
  'coupler charging open',
  'tap can-1 charging',
  'can-valve can-1 4',
];

export function speed(): Record<string, number> {
  const plant = plantStep([]);
  const session = sessionStep();
  return {
    ...stepFigures('loop, hatchback (expansion valve)', loopStep('hatchback', 25)),
    ...stepFigures('loop, sedan (orifice tube)', loopStep('sedan', 25)),
    ...stepFigures('loop, sedan standing', loopStep('sedan', 0)),
    ...stepFigures('plant, sedan', plant),
    ...stepFigures('plant, sedan, can feeding', plantStep(FEEDING)),
    ...stepFigures('session', session),
    'ghost cars a core at 60 x real time': STEP_NS / plant.bestNs / GHOST_LAPSE,
    ...figures('replay of 15 minutes', 's', replayOf15Minutes(), 1e9),
  };
}

function stepFigures(name: string, timing: Timing): Record<string, number> {
  return {
    ...figures(`${name}, step`, 'us', timing, 1000),
    [`${name}, x real time`]: STEP_NS / timing.bestNs,
    [`${name}, median, x real time`]: STEP_NS / timing.medianNs,
  };
}

function settled(step: () => number): Timing {
  for (let i = 0; i < SETTLING_STEPS; i++) step();
  return timed(CALLS, ROUNDS, step);
}

function loopStep(vehicleId: string, engineRevPerS: number): Timing {
  const vehicle = vehicleOf(vehicleId);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.set({ engineRevPerS, airConditioningOn: true, blowerStep: 4, windowsOpen: true, recirculated: true });
  return settled(() => {
    car.step(STEP_S);
    return car.number('cabinK');
  });
}

function plantStep(besides: readonly string[]): Timing {
  const plant = buildPlant({
    vehicleId: 'sedan',
    refrigerant: 'R-134a',
    chargeKg: 0.72,
    start: 'equalised',
    weather: { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: { hoses: ['charging'], cans: [{ id: 'can-1', netKg: 0.283, printedTotalKg: 0.34, tareKg: 0.11 }] },
    seed: 1,
  });
  for (const deed of [...RUNNING, ...besides]) {
    if (!plant.apply(commandOf(deed)).ok) throw new Error(`the bench cannot ${deed}`);
  }
  return settled(() => plant.advance().length);
}

function runningSession() {
  const session = openSession(scenarioById('warm-at-the-lights'), { mode: 'practice', seed: 1 });
  for (const deed of ['begin', ...RUNNING]) session.send(commandOf(deed));
  return session;
}

function sessionStep(): Timing {
  const session = runningSession();
  return settled(() => session.advance(1).stepsDone);
}

function replayOf15Minutes(): Timing {
  const session = runningSession();
  session.advance(REPLAYED_STEPS);
  const log = session.log();
  const scenario = scenarioById('warm-at-the-lights');
  return timed(1, 3, () => openSession(scenario, { mode: 'practice', seed: 1, log }).log().commands.length);
}

function commandOf(words: string): Command {
  const reading = readWords(words);
  if (!('act' in reading) || reading.act.kind !== 'command') throw new Error(`no command: ${words}`);
  return reading.act.command;
}
