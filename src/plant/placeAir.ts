/**
 * The air of the place, once a second: carbon monoxide from the engine, and refrigerant vapour in the room, in the pit and in the
 * cloud round the open joint. Each is well mixed where it is:
 *
 *   d(gas)/dt = source - gas Q / V        Q and V: `equipment/place`
 *
 * so in a room that is shut tight half the volume makes twice the ppm. Vapour is heavier than air: over a pit most of what is
 * let out runs down into it. A heater burns the air it draws with what is in it.
 */
import { CO_KG_PER_M3, CO_LIMITS_PPM, exhaustCoKgPerS, OPEN_DOOR_SHARE } from '../equipment/exhaust';
import {
  CLOUD,
  DECOMPOSED_TOLD_KG,
  FUMES,
  HEATER_AIR_M3_PER_S,
  LEAST_OXYGEN_SHARE,
  M3_PER_MOL,
  OXYGEN_SHARE,
} from '../equipment/fumes';
import { airChangeM3PerS, PIT, type PlaceSpec, USUAL_PLACE } from '../equipment/place';
import type { ForeignId } from '../loop/foreign';
import { FOREIGN_KG_PER_MOL } from '../loop/foreignFluid';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { burningShare } from './flammable';
import { HAZARD } from './tally';
import { tellOnce } from './tellOnce';

const PPM = 1e6;

export const placeOf = ({ options }: Pick<PlantParts, 'options'>): PlaceSpec => options.place ?? USUAL_PLACE;

export const isOutdoors = (parts: Pick<PlantParts, 'options'>): boolean => placeOf(parts).kind === 'outdoors';

/** An engine that burns fuel in a place that is shut. */
export function isShutIn(parts: PlantParts): boolean {
  return !isOutdoors(parts) && !parts.desk.doorOpen;
}

export const burnsFuel = ({ car }: Pick<PlantParts, 'car'>): boolean =>
  car.vehicle.compressor.kind !== 'electric';

export const coPpm = (parts: PlantParts): number =>
  (PPM * parts.tally[HAZARD.coM3]) / placeOf(parts).volumeM3;
export const roomGasPpm = (parts: PlantParts): number =>
  (PPM * parts.tally[HAZARD.roomMol] * M3_PER_MOL) / placeOf(parts).volumeM3;
export const pitGasPpm = ({ tally }: Pick<PlantParts, 'tally'>): number =>
  (PPM * tally[HAZARD.pitMol] * M3_PER_MOL) / PIT.volumeM3;
/** Where the person stands. */
export const breathedPpm = (parts: PlantParts): number =>
  parts.desk.hazards.inPit ? pitGasPpm(parts) : roomGasPpm(parts);
export const oxygenShare = (parts: PlantParts): number =>
  OXYGEN_SHARE * Math.max(0, 1 - breathedPpm(parts) / PPM);

export function keepPlaceAir(parts: PlantParts, events: PlantEvent[]): void {
  keepCo(parts, events);
  keepVapour(parts);
  keepFlame(parts, events);
  tellBreathed(parts, events);
}

function keepCo(parts: PlantParts, events: PlantEvent[]): void {
  const { tally, desk, car } = parts;
  const place = placeOf(parts);
  const kgPerS = burnsFuel(parts) ? exhaustCoKgPerS(car.vehicle.year, desk.engineRpm) : 0;
  const stays = isShutIn(parts) ? 1 : OPEN_DOOR_SHARE;
  const perS = airChangeM3PerS(place, desk.doorOpen) / place.volumeM3;
  tally[HAZARD.coM3] = (tally[HAZARD.coM3] + (stays * kgPerS) / CO_KG_PER_M3) / (1 + perS);
  const ppm = coPpm(parts);
  for (const limit of CO_LIMITS_PPM)
    tellOnce(
      desk.hazards,
      ppm > limit,
      { id: 'co-over', subject: String(limit), quantity: ppm, unit: 'ppm' },
      events,
    );
}

function keepVapour(parts: PlantParts): void {
  const { car, tally, desk, foreign } = parts;
  const { network } = car;
  const place = placeOf(parts);
  const came = (at: number, species: 'refrigerant' | 'foreign', fluid: ForeignId): number => {
    const kg = network.ventedKg(species);
    const mol = Math.max(0, kg - tally[at]) / FOREIGN_KG_PER_MOL[fluid];
    tally[at] = kg;
    if (FUMES[fluid].burnsFrom !== null) tally[HAZARD.cloudMol] += mol;
    return mol;
  };
  const mol =
    came(HAZARD.ownVentedKg, 'refrigerant', network.refrigerantId) +
    (foreign ? came(HAZARD.foreignVentedKg, 'foreign', foreign) : 0);
  const down = place.kind === 'garage-with-pit' ? PIT.share : 0;
  const perS = airChangeM3PerS(place, desk.doorOpen) / place.volumeM3;
  tally[HAZARD.roomMol] = (tally[HAZARD.roomMol] + (1 - down) * mol) / (1 + perS);
  tally[HAZARD.pitMol] =
    (tally[HAZARD.pitMol] + down * mol) / (1 + (desk.doorOpen ? PIT.openPerS : PIT.shutPerS));
  const isMoved = desk.doorOpen || desk.engineRpm > 0 || place.kind === 'outdoors';
  tally[HAZARD.cloudMol] /= 1 + (isMoved ? CLOUD.movedPerS : CLOUD.stillPerS);
}

/** What the heater draws of the room's vapour in a second goes through its flame. */
function keepFlame(parts: PlantParts, events: PlantEvent[]): void {
  const { tally, desk } = parts;
  const gas = mostLetOut(parts);
  if (desk.hazards.heaterOn) {
    const mol = (tally[HAZARD.roomMol] * HEATER_AIR_M3_PER_S) / placeOf(parts).volumeM3;
    tally[HAZARD.roomMol] -= mol;
    tally[HAZARD.decomposedKg] += mol * FOREIGN_KG_PER_MOL[gas];
  }
  const kg = tally[HAZARD.decomposedKg];
  tellOnce(
    desk.hazards,
    kg >= DECOMPOSED_TOLD_KG,
    { id: 'decomposed', subject: gas, quantity: kg, unit: 'kg' },
    events,
  );
  const share = burningShare(parts);
  const spark = sparkOf(parts);
  tellOnce(
    desk.hazards,
    share >= (FUMES[burningGas(parts)].burnsFrom ?? 1) && spark !== null,
    { id: 'ignited', subject: spark ?? 'heater', quantity: share, unit: '1' },
    events,
  );
}

/** Of two gases, the one of which more has got out. */
function mostLetOut({ tally, car, foreign }: PlantParts): ForeignId {
  const own = tally[HAZARD.ownVentedKg] >= tally[HAZARD.foreignVentedKg];
  return own || !foreign ? car.network.refrigerantId : foreign;
}

/** The one of the car's gases that burns; R-1234yf where none does. */
function burningGas({ car, foreign }: PlantParts): ForeignId {
  if (foreign && FUMES[foreign].burnsFrom !== null) return foreign;
  const own = car.network.refrigerantId;
  return FUMES[own].burnsFrom === null ? 'R-1234yf' : own;
}

/** A flame or a spark that reaches the cloud round the car now. */
function sparkOf({ desk, options }: PlantParts): string | null {
  if (desk.hazards.heaterOn) return 'heater';
  if (options.bench.rated === true) return null;
  const { devices } = desk.service;
  if (devices['recovery-machine']?.running) return 'recovery-machine';
  if (devices['vacuum-pump']?.running) return 'vacuum-pump';
  return desk.search.sweep === null ? null : 'detector';
}

function tellBreathed(parts: PlantParts, events: PlantEvent[]): void {
  const { desk } = parts;
  const ppm = breathedPpm(parts);
  const limit = FUMES[mostLetOut(parts)].guidelinePpm;
  const where = desk.hazards.inPit ? 'pit' : 'room';
  const isTooMuch = ppm > limit || oxygenShare(parts) < LEAST_OXYGEN_SHARE;
  for (const place of ['pit', 'room'])
    tellOnce(
      desk.hazards,
      place === where && isTooMuch,
      { id: 'gas-breathed', subject: place, quantity: ppm, unit: 'ppm' },
      events,
    );
}
