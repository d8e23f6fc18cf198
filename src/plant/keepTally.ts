/** After each step: sums, highest values, and the events the model brought about by itself. */
import type { HoseId } from '../equipment/hoses';
import { AT } from '../loop/car/carNumbers';
import { hasClutch } from '../loop/car/coolingAsked';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { noteCompressor } from './noteCompressor';
import { STEP_S } from './stepTime';
import { CLUTCH_RING, CLUTCH_RING_AT, TALLY } from './tally';

/** Liquid at the turning compressor, over the mist that does it no harm, is told each time so much more has come, kg. */
const SLUG_STEP_KG = 0.01;

export function startTally({ car, tally }: PlantParts): void {
  tally[TALLY.clutchIn] = car.number('clutchIn');
  tally[TALLY.highSwitch] = car.number('highSwitch');
  tally.fill(Number.NEGATIVE_INFINITY, TALLY.clutchRing, TALLY.clutchRing + CLUTCH_RING);
}

/** Links through the cores that hoses press, by hose: made once, as they are asked for in each step. */
const CORE_LINKS: Readonly<Record<HoseId, string>> = {
  charging: 'core:charging',
  'gauge-low': 'core:gauge-low',
  'gauge-high': 'core:gauge-high',
  utility: 'core:utility',
};

export function keepTally(parts: PlantParts, events: PlantEvent[]): void {
  const { car, tally, options } = parts;
  const { network, loop } = car;
  for (const id of parts.hoses.keys()) {
    if (!parts.desk.hoses[id]?.open) continue;
    const link = network.linkNamed(CORE_LINKS[id]);
    if (link >= 0) tally[TALLY.intoLoopKg] -= network.massFlowKgPerS(link) * STEP_S;
  }
  const gaugePa = network.pressurePa(loop.high) - options.weather.pressurePa;
  if (gaugePa > tally[TALLY.highestGaugePa]) tally[TALLY.highestGaugePa] = gaugePa;
  noteClutch(parts, events);
  noteTrip(parts, gaugePa, events);
  noteRelief(parts, gaugePa, events);
  noteSlug(parts, events);
  noteCompressor(parts, events);
}

/** Where there is a clutch to hear. */
function noteClutch({ car, tally }: PlantParts, events: PlantEvent[]): void {
  if (!hasClutch(car.vehicle)) return;
  const clutchIn = car.network.reserve[AT.clutchIn];
  if (clutchIn === tally[TALLY.clutchIn]) return;
  tally[TALLY.clutchIn] = clutchIn;
  events.push({ id: clutchIn > 0 ? 'clutch-in' : 'clutch-out' });
  if (clutchIn === 0) return;
  const at = tally[CLUTCH_RING_AT];
  tally[TALLY.clutchRing + at] = tally[TALLY.step];
  tally[CLUTCH_RING_AT] = (at + 1) % CLUTCH_RING;
}

function noteTrip({ car, tally }: PlantParts, gaugePa: number, events: PlantEvent[]): void {
  const highSwitch = car.network.reserve[AT.highSwitch];
  if (highSwitch < tally[TALLY.highSwitch]) {
    tally[TALLY.trips] += 1;
    events.push({ id: 'high-pressure-trip', quantity: gaugePa, unit: 'Pa' });
  }
  tally[TALLY.highSwitch] = highSwitch;
}

function noteRelief({ car, tally }: PlantParts, gaugePa: number, events: PlantEvent[]): void {
  const open = car.network.linkMemory(car.loop.relief, 0);
  if (open > tally[TALLY.reliefOpen]) events.push({ id: 'relief-opened', quantity: gaugePa, unit: 'Pa' });
  tally[TALLY.reliefOpen] = open;
}

function noteSlug({ car, tally }: PlantParts, events: PlantEvent[]): void {
  const liquidKg = car.network.reserve[AT.sluggedKg];
  if (liquidKg < tally[TALLY.sluggedToldKg] + SLUG_STEP_KG) return;
  tally[TALLY.sluggedToldKg] = liquidKg;
  events.push({ id: 'liquid-slug', quantity: liquidKg, unit: 'kg' });
}

/** Engagements in the last minute, of the last two minutes' mean. */
export function cyclesPerMinute(tally: Float64Array): number {
  const since = tally[TALLY.step] - 120 / STEP_S;
  let count = 0;
  for (let i = 0; i < CLUTCH_RING; i++) if (tally[TALLY.clutchRing + i] >= since) count++;
  return count / 2;
}
