/**
 * What a search shows: ticks when the probe has been round a place, bubbles when soap has had its time, a glow under the
 * lamp. All from the gas that comes out there now; nothing knows of a fault.
 */
import { FALSE_TICK_SHARE, heardKgPerM3, tickLevel } from '../equipment/leakDetector';
import { DYE_LEAST_KG, SOAP_LEAST_M3_PER_S, seenLevel } from '../equipment/soapAndDye';
import type { LeakPlace } from '../faults/leakPlaces';
import { keyedUniform } from '../numerics/keyedRandom';
import type { PlantParts } from './assemblePlant';
import { CASE_OPENINGS } from './caseOpenings';
import type { PlantEvent } from './commandSpecs';
import { gasFlowM3PerS } from './gasFlow';
import { heedCaps } from './heedCaps';
import { leakFlowKgPerS } from './leakFlow';
import { AIR_M3, CASE_M3, keepSearchAir } from './searchAir';
import type { Sweep } from './searchDesk';
import { SEARCH, TALLY } from './tally';

const STEPS_PER_SECOND = 50;
/** Air that moves at a place, m/s: fan before the condenser, its share in the bay, engine, door [guess]. */
const FAN_M_PER_S = 2;
const FAN_SHARE_IN_BAY = 0.4;
const ENGINE_M_PER_S = 0.3;
const DOOR_M_PER_S = 0.3;
const STILL_M_PER_S = 0.02;

/** After every step. */
export function keepSearch(parts: PlantParts, events: PlantEvent[]): void {
  const { desk, tally, vents } = parts;
  const { search } = desk;
  const step = tally[TALLY.step];
  vents.keep();
  if (step % STEPS_PER_SECOND === 0) {
    heedCaps(parts);
    keepSearchAir(parts);
  }
  if (search.sweep !== null && step >= search.sweep.untilStep) endSweep(parts, search.sweep, events);
  if (search.soap !== null && step >= search.soap.untilStep) endSoap(parts, search.soap.at, events);
}

function endSweep(parts: PlantParts, sweep: Sweep, events: PlantEvent[]): void {
  const { desk, tally, options } = parts;
  const step = tally[TALLY.step];
  const draw = (purpose: string): number => keyedUniform(options.seed, purpose, sweep.at, step);
  const background = tally[SEARCH.inAirKg] / AIR_M3;
  const level = tickLevel(heardOn(parts, sweep), background, draw('waft of gas'));
  desk.search.sweep = null;
  desk.search.shown.detector = true;
  desk.search.ticks = level === 0 && draw('tick for nothing') < FALSE_TICK_SHARE ? 1 : level;
  events.push({ id: 'sniffed', subject: sweep.at });
  if (desk.search.ticks > 0)
    events.push({ id: 'detector-ticked', subject: sweep.at, quantity: desk.search.ticks, unit: '1' });
}

/** All leaks at once, each by its distance from the place the probe goes round. */
function heardOn(parts: PlantParts, { at, from, paceMmPerS, gapMm }: Sweep): number {
  const { car, places, tally } = parts;
  const held = (CASE_OPENINGS[at] ?? 0) * (tally[SEARCH.inCaseKg] / CASE_M3);
  const here = places.find(({ id }) => id === at);
  if (!here) return held;
  const airMPerS = airAt(parts, here);
  return places.reduce((sum, place) => {
    const leakKgPerS = leakFlowKgPerS(car, place.id);
    if (leakKgPerS <= 0 || place.isHidden) return sum;
    const apartMm = apart(here, place);
    if (apartMm === null) return sum;
    const awayMm = Math.sqrt(gapMm * gapMm + apartMm * apartMm);
    return sum + heardKgPerM3({ leakKgPerS, awayMm, airMPerS, isBelow: from === 'below', paceMmPerS });
  }, held);
}

/** mm from one place to another; null where one of them is not drawn. */
function apart(here: LeakPlace, there: LeakPlace): number | null {
  if (here.id === there.id) return 0;
  if (!here.at || !there.at) return null;
  const [dx, dy] = [here.at[0] - there.at[0], here.at[1] - there.at[1]];
  return Math.sqrt(dx * dx + dy * dy);
}

function airAt({ car, desk }: PlantParts, { id }: LeakPlace): number {
  const fan = Math.max(car.number('fanSpeed0'), car.number('fanSpeed1'), car.number('fanSpeed2'));
  const isInFront = id.includes('condenser');
  return (
    STILL_M_PER_S +
    FAN_M_PER_S * fan * (isInFront ? 1 : FAN_SHARE_IN_BAY) +
    (desk.engineRpm > 0 ? ENGINE_M_PER_S : 0) +
    (desk.doorOpen ? DOOR_M_PER_S : 0)
  );
}

function endSoap(parts: PlantParts, at: string, events: PlantEvent[]): void {
  const { search } = parts.desk;
  search.soap = null;
  search.shown.soap = true;
  search.bubbles = seenLevel(gasFlowM3PerS(parts, at), SOAP_LEAST_M3_PER_S);
  events.push({ id: 'soaped', subject: at });
  if (search.bubbles > 0)
    events.push({ id: 'bubbles-seen', subject: at, quantity: search.bubbles, unit: '1' });
}

/** What glows at a place, 0 nothing .. 8; the coil's dye drips out of the drain. */
export function glowAt({ places, tally }: PlantParts, at: string): number {
  let kg = 0;
  places.forEach(({ id, isHidden }, index) => {
    if (id === at || (isHidden && at === 'evaporator-drain')) kg += tally[SEARCH.dyeOut + index];
  });
  return seenLevel(kg, DYE_LEAST_KG);
}
