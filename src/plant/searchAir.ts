/**
 * Once a second: the air that a search is made in, dye on its way out, and what open joints trade with the room.
 *
 * Gas in the air round the car and in the evaporator's case: kg' = what came - kg Q / V. Round the car 4 m3, changed in
 * ten minutes, in forty seconds with the door open; the case 8 L, which with the blower standing changes in ten minutes
 * through drain and ducts, and with it turning by what is blown [guess].
 */

import { EXCHANGE_M3_PER_S, LEVEL_PA } from '../equipment/openJoint';
import { DYE_ROUND_S } from '../equipment/soapAndDye';
import type { LeakPlace } from '../faults/leakPlaces';
import type { PlantParts } from './assemblePlant';
import { AIR_J_PER_KG_K } from './benchVessels';
import { leakFlowKgPerS } from './leakFlow';
import { keepStains } from './oilStains';
import { STEP_S } from './stepTime';
import { SEARCH } from './tally';
import { hubTurning } from './turning';
import { ventedKg } from './ventedKg';

export const AIR_M3 = 4;
export const CASE_M3 = 0.008;
const SHUT_PER_S = 1 / 600;
const OPEN_PER_S = 1 / 40;
const STANDING_PER_S = 1 / 600;
const AIR_KG_PER_M3 = 1.2;

export function keepSearchAir(parts: PlantParts): void {
  keepGas(parts);
  keepStains(parts);
  if (parts.tally[SEARCH.dyeKg] > 0) keepDye(parts);
  for (const place of parts.places) {
    if (parts.desk.search.opened.includes(place.id)) tradeWithRoom(parts, place);
  }
}

function keepGas({ car, desk, tally, places }: PlantParts): void {
  let coil = 0;
  for (const place of places) if (place.isHidden) coil += Math.max(0, leakFlowKgPerS(car, place.id));
  const vented = ventedKg(car.network);
  const came = Math.max(0, vented - tally[SEARCH.ventedKg] - coil);
  tally[SEARCH.ventedKg] = vented;
  const blown = desk.blower > 0 ? car.number('coilFlow') / AIR_KG_PER_M3 / CASE_M3 : STANDING_PER_S;
  tally[SEARCH.inAirKg] = (tally[SEARCH.inAirKg] + came) / (1 + (desk.doorOpen ? OPEN_PER_S : SHUT_PER_S));
  tally[SEARCH.inCaseKg] = (tally[SEARCH.inCaseKg] + coil) / (1 + blown);
}

function keepDye({ car, tally, places }: PlantParts): void {
  const { network, loop } = car;
  if (hubTurning(car)) tally[SEARCH.dyeRound] += (1 - tally[SEARCH.dyeRound]) / DYE_ROUND_S;
  const oilKg = network.massKg(loop.low, 'oil') + network.massKg(loop.high, 'oil');
  if (oilKg <= 0) return;
  const inOil = (tally[SEARCH.dyeKg] / oilKg) * tally[SEARCH.dyeRound];
  places.forEach(({ id }, index) => {
    const link = network.linkNamed(`leak:${id}`);
    if (link < 0) return;
    const out = (network.oilVentedKg(link) / STEP_S) * inOil;
    tally[SEARCH.dyeOut + index] += out;
    tally[SEARCH.dyeKg] -= out;
  });
}

/** Water that no desiccant holds. */
function freeWaterKg({ network }: PlantParts['car'], vessel: number): number {
  return network.massKg(vessel, 'water') - network.adsorbedKg(vessel);
}

/**
 * Air goes in for the gas that falls out, and moisture until what is inside is as damp as the room; the joint itself lets
 * out what is over.
 */
function tradeWithRoom({ car, options }: PlantParts, { port: { vessel } }: LeakPlace): void {
  const { network } = car;
  const { pressurePa, temperatureK } = options.weather;
  const inside = network.pressurePa(vessel);
  if (Math.abs(inside - pressurePa) > LEVEL_PA) return;
  const gasShare = Math.max(0, Math.min(1, network.refrigerantPressurePa(vessel) / inside));
  const roomKg = (EXCHANGE_M3_PER_S * pressurePa) / (AIR_J_PER_KG_K * temperatureK);
  network.bringIn(vessel, 'air', roomKg * gasShare);
  const ratio = car.number('ambientHumidityRatio');
  const isDamp = freeWaterKg(car, vessel) > ratio * network.massKg(vessel, 'air');
  if (!isDamp) network.bringIn(vessel, 'water', roomKg * ratio);
}
