/**
 * The executive. Order of a step: what hands hold, what has begun to fail, the car with its controls, air, links, vessels
 * and cabin; then sums and events; then the instruments. Watches and books are read by whoever asks, after it.
 */
import { HEATER_SHARE } from '../equipment/temperatureControl';
import { hashFloats, hashText } from '../numerics/hash';
import { afterDeed } from './afterDeed';
import type { PlantParts } from './assemblePlant';
import { booksOf } from './booksOf';
import { choicesOf } from './choices';
import { type Command, commandSpecs, type IdSet, type Outcome, type PlantEvent } from './commandSpecs';
import { handlers } from './handlers';
import { handsIn } from './handsIn';
import { heedCaps } from './heedCaps';
import { heedHazards } from './heedHazards';
import { heedTasks } from './heedTasks';
import { heedTools } from './heedTools';
import { shutHood } from './hood';
import { heedHoses } from './hoseDanger';
import { keepTally, startTally } from './keepTally';
import { keepSearch } from './leakSearch';
import { handsOff } from './licensedAtWork';
import { makeRig } from './makeRig';
import { followAll } from './panel';
import { readTruth } from './panelTruth';
import { isOutdoors } from './placeAir';
import type { Plant, PlantSnapshot } from './plantPort';
import { sidesReached } from './reach';
import { makeSignals } from './signals';
import { STEP_S } from './stepTime';
import { TALLY } from './tally';
import { noteTestConditions } from './testConditions';
import { underCover } from './underCover';
import { findFault } from './validate';

const QUIET: readonly PlantEvent[] = Object.freeze([]);
const SECONDS_PER_MINUTE = 60;
/** Of glass lying level that lets as much sun into a cabin as its windows do [guess]. */
const GLASS_M2 = 1;
/** Groups of commands after which a path may lead somewhere else. */
const LEADS: ReadonlySet<string> = new Set(['charge', 'connect', 'service']);

export function makeExecutive(parts: PlantParts): Plant {
  const { car, desk, panel, tally, faults } = parts;
  const rig = makeRig(parts);
  const signals = makeSignals(parts, rig);
  const specs = signals.map(({ spec }) => spec);
  const indexById = new Map(specs.map(({ id }, index) => [id, index]));
  const choices = (set: IdSet): readonly string[] => choicesOf(parts, set);
  const happened: PlantEvent[] = [];
  setCar();
  startTally(parts);
  showInstruments();

  function setCar(): void {
    car.set({
      engineRevPerS: desk.engineRpm / SECONDS_PER_MINUTE,
      airConditioningOn: desk.acOn && desk.hazards.isolatedAt === null,
      blowerStep: desk.blower,
      rearBlowerStep: desk.blower,
      windowsOpen: desk.windowsOpen,
      sunW: isOutdoors(parts) ? GLASS_M2 * (parts.options.weather.sunWPerM2 ?? 0) : 0,
      recirculated: desk.recirculated,
      heaterShare: HEATER_SHARE[desk.tasks.temperature],
      lowBridged: desk.hazards.bypass['low-switch'],
      highBridged: desk.hazards.bypass['high-switch'],
      highCutOut: car.vehicle.switches.high.fitted || desk.tasks.conversion.cutOut,
    });
    faults.settle(car, tally[TALLY.step]);
    heedCaps(parts);
  }

  function showInstruments(): void {
    followAll(panel, readTruth(parts));
  }

  function advance(): readonly PlantEvent[] {
    steadyHands(parts);
    if (faults.settle(car, tally[TALLY.step])) heedCaps(parts);
    car.step(STEP_S);
    tally[TALLY.step] += 1;
    if (happened.length > 0) happened.length = 0;
    keepTally(parts, happened);
    heedHoses(rig, parts, happened);
    heedTools(rig, parts, happened);
    keepSearch(parts, happened);
    heedTasks(rig, parts, happened);
    heedHazards(rig, parts, happened);
    showInstruments();
    return happened.length > 0 ? happened.slice() : QUIET;
  }

  function apply(command: Command): Outcome {
    const fault =
      findFault(command, choices) ??
      handsOff(desk, command) ??
      shutHood(desk, command) ??
      underCover(desk, command);
    if (fault) return fault;
    const handler = handlers[command.do];
    if (!handler) return { ok: true, events: QUIET };
    const reached = handsIn(parts, command);
    const outcome = afterDeed(parts, command, reached, handler(rig, command));
    if (!outcome.ok) return outcome;
    noteTestConditions(parts);
    setCar();
    return LEADS.has(commandSpecs[command.do].group)
      ? { ok: true, events: [...outcome.events, ...sidesReached(rig)] }
      : outcome;
  }

  return {
    get step() {
      return tally[TALLY.step];
    },
    signals: specs,
    signalIndex(id) {
      const index = indexById.get(id);
      if (index === undefined) throw new RangeError(`no signal "${id}" in this car`);
      return index;
    },
    value: (index) => signals[index].read(),
    advance,
    apply,
    choices,
    snapshot: () => snapshotOf(parts),
    restore: (snapshot) => restoreTo(parts, snapshot),
    stateHash: () => hashOf(parts),
    books: () => booksOf(parts),
  };
}

/** A shaken can comes to rest. */
function steadyHands({ car, desk, cans, tally }: PlantParts): void {
  for (const { spec, vessel } of cans.values()) {
    if (desk.cans[spec.id].shakenUntil === tally[TALLY.step] && tally[TALLY.step] > 0)
      car.network.setShaking(vessel, 0);
  }
}

function snapshotOf({ car, panel, tally, desk, faults }: PlantParts): PlantSnapshot {
  const { state } = car.network;
  const numbers = new Float64Array(state.length + panel.lagged.length + tally.length);
  numbers.set(state);
  numbers.set(panel.lagged, state.length);
  numbers.set(tally, state.length + panel.lagged.length);
  const structure = JSON.stringify({ desk, network: car.network.structure(), mended: faults.mended() });
  return { step: tally[TALLY.step], numbers, structure };
}

function restoreTo(
  { car, panel, tally, desk, faults }: PlantParts,
  { numbers, structure }: PlantSnapshot,
): void {
  const { state } = car.network;
  const kept = JSON.parse(structure);
  car.network.restore(kept.network, numbers.subarray(0, state.length));
  panel.lagged.set(numbers.subarray(state.length, state.length + panel.lagged.length));
  tally.set(numbers.subarray(state.length + panel.lagged.length));
  Object.assign(desk, kept.desk);
  faults.restore(kept.mended);
}

function hashOf({ car, panel, tally, desk }: PlantParts): string {
  const numbers = `${hashFloats(car.network.state)}${hashFloats(panel.lagged)}${hashFloats(tally)}`;
  return hashText(numbers + JSON.stringify(desk));
}
