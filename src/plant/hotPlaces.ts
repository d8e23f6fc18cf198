/**
 * What is hot, once a second: the exhaust manifold, a hose that lies on it, and the coolant, which calls for the electric fan
 * after the engine has stopped, key or no key.
 *
 * The block is 16 K hotter than its coolant while it runs; once it stops the coolant sees that with a lag of a minute, and the
 * block loses it in eight. The fan comes on at 98 °C and goes off at 93 °C. All figures [guess].
 */
import type { HoseId } from '../equipment/hoses';
import { MANIFOLD } from '../equipment/hotExhaust';
import { ROOM } from '../loop/networkTypes';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { joinVessels } from './links';
import { burnsFuel } from './placeAir';
import { HAZARD } from './tally';
import { tellOnce } from './tellOnce';
import { fanTurning } from './turning';

const BLOCK_OVER_K = 16;
const BLOCK_WARMS_S = 120;
const BLOCK_COOLS_S = 480;
const SOAK_S = 60;
const STIRRED_S = 20;
const FAN_ON_K = 371.15;
const FAN_OFF_K = 366.15;
const WITH_COUPLER: readonly HoseId[] = ['charging', 'gauge-low', 'gauge-high'];

export function keepHotPlaces(parts: PlantParts, events: PlantEvent[]): void {
  if (!burnsFuel(parts)) return;
  keepManifold(parts);
  keepSoak(parts, events);
  for (let i = 0; i < WITH_COUPLER.length; i++) keepHose(parts, WITH_COUPLER[i], i, events);
}

function keepManifold({ tally, desk, options }: PlantParts): void {
  const airK = options.weather.temperatureK;
  const nowK = tally[HAZARD.manifoldK] === 0 ? airK : tally[HAZARD.manifoldK];
  const [toK, lagS] = desk.engineRpm > 0 ? [MANIFOLD.runningK, MANIFOLD.warmingS] : [airK, MANIFOLD.coolingS];
  tally[HAZARD.manifoldK] = nowK + (toK - nowK) / lagS;
}

function keepSoak({ car, desk, tally, layout }: PlantParts, events: PlantEvent[]): void {
  const runs = desk.engineRpm > 0;
  const engineK = car.number('engineK');
  const block = tally[HAZARD.blockOverK];
  tally[HAZARD.blockOverK] += runs ? (BLOCK_OVER_K - block) / BLOCK_WARMS_S : -block / BLOCK_COOLS_S;
  const soak = tally[HAZARD.soakK];
  tally[HAZARD.soakK] += runs ? -soak / STIRRED_S : (tally[HAZARD.blockOverK] - soak) / SOAK_S;
  const feltK = engineK + tally[HAZARD.soakK];
  const isCalled = car.number('fanCalled') > 0;
  const calls = feltK > (isCalled ? FAN_OFF_K : FAN_ON_K);
  if (calls !== isCalled) car.set({ fanCalled: calls });
  const fan = car.vehicle.condenserAir.fans.find(
    ({ part, runs: by }) => by !== 'engine' && fanTurning(car, part),
  );
  const isDrawn = layout.parts.some(({ id }) => id === fan?.part);
  const byItself = !runs && calls && fan !== undefined && isDrawn;
  tellOnce(desk.hazards, byItself, { id: 'fan-by-itself', quantity: feltK, unit: 'K' }, events);
}

/** A hose on the hot exhaust: time at heat makes a hole, through which it then leaks. */
function keepHose(parts: PlantParts, id: HoseId, index: number, events: PlantEvent[]): void {
  const { desk, hoses, layout, tally, car } = parts;
  const hose = hoses.get(id);
  const state = desk.hoses[id];
  if (!hose || !state) return;
  const lies = state.route.some((zone) => layout.zones.find((one) => one.id === zone)?.hazard === 'heat');
  const manifoldK = tally[HAZARD.manifoldK];
  const isHot = state.port !== null && lies && manifoldK > MANIFOLD.hotK;
  tellOnce(desk.hazards, isHot, { id: 'hose-on-hot', subject: id, quantity: manifoldK, unit: 'K' }, events);
  if (!isHot || desk.hazards.burned.includes(id)) return;
  tally[HAZARD.hoseHeatKS + index] += Math.max(0, manifoldK - MANIFOLD.rubberK);
  if (tally[HAZARD.hoseHeatKS + index] < MANIFOLD.burnsAtKS) return;
  desk.hazards.burned = [...desk.hazards.burned, id];
  const room = { vessel: ROOM, cell: 0, height: 'bulk' } as const;
  const from = { vessel: hose.vessel, cell: 0, height: 'bulk' } as const;
  joinVessels(car.network, `burned:${id}`, from, room, MANIFOLD.holeCdaM2);
  events.push({ id: 'hose-burned', subject: id, quantity: manifoldK, unit: 'K' });
}
