/**
 * What goes wrong by itself, after each step: heat, gas and fumes once a second, and what a strange gas, an overfull tank, a hot
 * can or a bridged switch leads to in the step in which it does.
 */
import { CAN_BURST_CDA_M2, CAN_BURST_PA, CAN_MOST_K } from '../equipment/cans';
import { fit } from '../equipment/fittings';
import { HIGH_VOLTAGE } from '../equipment/highVoltage';
import { RECOVERY_TANK } from '../equipment/recoveryMachine';
import { SEALER } from '../equipment/sealerTest';
import { STRONG_GAS_IDS } from '../equipment/strongGas';
import { hasClutch } from '../loop/car/coolingAsked';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { contactOf, liquidKg } from './contact';
import { joinDevice } from './deviceLinks';
import { fittingAt } from './fittingAt';
import { holdsFlammable } from './flammable';
import { keepHotPlaces } from './hotPlaces';
import { joinToRoom } from './links';
import { loopForeignKg, otherGasKg } from './loopForeign';
import { oilNow, wrongOilShare } from './oilBook';
import { keepPlaceAir } from './placeAir';
import { portsReached } from './reach';
import type { Rig } from './rig';
import { HAZARD, TALLY, ventedAt } from './tally';
import { tellOnce } from './tellOnce';
import { hubTurning } from './turning';

const STEPS_PER_SECOND = 50;
/** Over the room: less is what is left in a loop that was emptied. */
const UNDER_PRESSURE_PA = 20_000;
/** Let out by hand at one job, from which on it is no slip any more [guess]: a liquid-full hose holds 39 g. */
const BLOWN_OFF_KG = 0.06;
/** Fed to a compressor that stands while it is asked for [guess]. */
const FED_STANDING_KG = 0.03;
/** Over what the machine's own limit lets by. */
const OVERFILLED_SHARE = RECOVERY_TANK.mostLiquidShare + 0.02;
/** Foreign gas in a loop with which one more can is a mixture and no mistake of the scale [guess]. */
const OTHER_GAS_KG = 0.02;

export function heedHazards(rig: Rig, parts: PlantParts, events: PlantEvent[]): void {
  heedBridged(parts, events);
  if (parts.tally[TALLY.step] % STEPS_PER_SECOND !== 0) return;
  keepHotPlaces(parts, events);
  keepPlaceAir(parts, events);
  heedBlownOff(parts, events);
  heedCans(parts, events);
  heedWrongGas(rig, parts, events);
  heedMismatch(parts, events);
  heedMixing(parts, events);
  heedFedStanding(parts, events);
  heedMachine(rig, parts, events);
  heedSealerTest(rig, parts, events);
  heedInsulation(parts, events);
}

/** The compressor turns although a switch has opened. */
function heedBridged({ car, desk, tally, options }: PlantParts, events: PlantEvent[]): void {
  const { bypass } = desk.hazards;
  if (!bypass['low-switch'] && !bypass['high-switch']) return;
  const { network, loop } = car;
  const overPa = (vessel: number): number => network.pressurePa(vessel) - options.weather.pressurePa;
  const turns = hubTurning(car) && tally[TALLY.step] > 0;
  const low = turns && bypass['low-switch'] && car.number('lowSwitch') === 0;
  const high = turns && bypass['high-switch'] && car.number('highSwitch') === 0;
  tellOnce(
    desk.hazards,
    low,
    { id: 'ran-bridged', subject: 'low-switch', quantity: overPa(loop.low), unit: 'Pa' },
    events,
  );
  tellOnce(
    desk.hazards,
    high,
    { id: 'ran-bridged', subject: 'high-switch', quantity: overPa(loop.high), unit: 'Pa' },
    events,
  );
}

const BY_HAND = ['opened', 'purge', 'spray', 'pump', 'sample'] as const;

function heedBlownOff({ tally, desk }: PlantParts, events: PlantEvent[]): void {
  const kg = BY_HAND.reduce((sum, cause) => sum + tally[ventedAt(cause)], 0);
  tally[HAZARD.byHandKg] = kg;
  tellOnce(desk.hazards, kg >= BLOWN_OFF_KG, { id: 'blown-off', quantity: kg, unit: 'kg' }, events);
}

/** A can over what makers allow, and one over what it must stand. */
function heedCans(parts: PlantParts, events: PlantEvent[]): void {
  const { cans, car, desk, options } = parts;
  const { network } = car;
  for (const [id, { vessel }] of cans) {
    const insideK = network.temperatureK(vessel, 0);
    const holds = network.chargeKg(vessel) > 0.005;
    tellOnce(
      desk.hazards,
      holds && insideK > CAN_MOST_K,
      { id: 'can-overheated', subject: id, quantity: insideK, unit: 'K' },
      events,
    );
    const overPa = network.pressurePa(vessel) - options.weather.pressurePa;
    if (overPa < CAN_BURST_PA || desk.hazards.burst.includes(id)) continue;
    desk.hazards.burst = [...desk.hazards.burst, id];
    events.push(
      { id: 'can-burst', subject: id, quantity: overPa, unit: 'Pa' },
      ...contactOf(parts, liquidKg(parts, vessel)),
    );
    joinToRoom(network, `burst:${id}`, vessel, CAN_BURST_CDA_M2);
  }
}

/** Told when it has an open way into the car: until then it can be taken off again. */
function heedWrongGas(rig: Rig, { desk, options, car }: PlantParts, events: PlantEvent[]): void {
  for (const id of STRONG_GAS_IDS) {
    const state = desk.service.devices[id];
    if (!state) continue;
    const port = state.onto && state.running ? portsReached(rig, state.onto)[0] : undefined;
    const overPa = port ? car.network.pressurePa(port.at.vessel) - options.weather.pressurePa : 0;
    tellOnce(
      desk.hazards,
      port !== undefined,
      { id: 'wrong-gas-in', subject: id, quantity: overPa, unit: 'Pa' },
      events,
    );
  }
}

/** A coupler that does not fit, held on by a loose adapter, has let pressure through. */
function heedMismatch(parts: PlantParts, events: PlantEvent[]): void {
  const { desk, hoses, car, options } = parts;
  for (const id of desk.hazards.adapters) {
    const [hose, state] = [hoses.get(id), desk.hoses[id]];
    if (!hose?.spec.coupler || !state?.open || state.port === null) continue;
    const overPa = car.network.pressurePa(hose.vessel) - options.weather.pressurePa;
    const defeats = fit(hose.spec.coupler, fittingAt(parts, state.port)) !== 'fits';
    tellOnce(
      desk.hazards,
      defeats && overPa > UNDER_PRESSURE_PA,
      { id: 'mismatch-defeated', subject: id, quantity: overPa, unit: 'Pa' },
      events,
    );
  }
}

/** A can or tank is open to a loop that holds another gas. */
function heedMixing(parts: PlantParts, events: PlantEvent[]): void {
  const { desk, car } = parts;
  const isOpen = desk.canOpenTo.length > 0 || desk.service.tankOpenTo.length > 0;
  const otherKg = loopForeignKg(parts);
  tellOnce(
    desk.hazards,
    isOpen && otherKg > OTHER_GAS_KG,
    { id: 'gas-mixed', subject: car.network.refrigerantId, quantity: otherKg, unit: 'kg' },
    events,
  );
}

function heedFedStanding({ car, desk, tally }: PlantParts, events: PlantEvent[]): void {
  const intoKg = tally[TALLY.intoLoopKg];
  const came = intoKg - tally[HAZARD.intoLoopSeenKg];
  tally[HAZARD.intoLoopSeenKg] = intoKg;
  const stands =
    hasClutch(car.vehicle) && desk.engineRpm > 0 && desk.acOn && desk.blower > 0 && !hubTurning(car);
  if (!stands) tally[HAZARD.fedStandingKg] = 0;
  else if (desk.canOpenTo.length > 0) tally[HAZARD.fedStandingKg] += Math.max(0, came);
  const kg = tally[HAZARD.fedStandingKg];
  tellOnce(desk.hazards, kg >= FED_STANDING_KG, { id: 'fed-standing', quantity: kg, unit: 'kg' }, events);
}

/** The recovery machine: overfilled, fouled, given gas that burns, given gas that nobody has named. */
function heedMachine(rig: Rig, parts: PlantParts, events: PlantEvent[]): void {
  const { desk, car, toolVessels, options } = parts;
  if (!desk.service.devices['recovery-machine']) return;
  const { network } = car;
  const { separator, recoveryTank } = toolVessels;
  const share = network.liquidShare(recoveryTank, 0);
  tellOnce(
    desk.hazards,
    share > OVERFILLED_SHARE,
    { id: 'tank-overfilled', quantity: share, unit: '1' },
    events,
  );
  const isUnknown = desk.service.sample.shares === null;
  tellOnce(
    desk.hazards,
    isUnknown && desk.service.recovery.contaminatedBy.includes('foreign'),
    { id: 'unidentified-into-tank', quantity: otherGasKg(parts, recoveryTank), unit: 'kg' },
    events,
  );
  const draws = desk.service.devices['recovery-machine'].running;
  tellOnce(
    desk.hazards,
    draws && options.bench.rated !== true && holdsFlammable(parts, separator),
    { id: 'unrated-with-flammable', subject: 'recovery-machine' },
    events,
  );
  const sealerKg = network.massKg(separator, 'sealant') + network.massKg(recoveryTank, 'sealant');
  if (desk.hazards.machineFouled || sealerKg < SEALER.foulsKg) return;
  desk.hazards.machineFouled = true;
  desk.service.devices['recovery-machine'].running = false;
  joinDevice(rig, 'recovery-machine');
  events.push(
    { id: 'machine-fouled', quantity: sealerKg, unit: 'kg' },
    { id: 'device-stopped', subject: 'recovery-machine' },
  );
}

function heedSealerTest(rig: Rig, { desk, car }: PlantParts, events: PlantEvent[]): void {
  const { sealerTest } = desk.hazards;
  if (sealerTest.port === null || rig.step() < sealerTest.endsAt) return;
  const port = rig.ports.get(sealerTest.port);
  const kg = port ? car.network.massKg(port.at.vessel, 'sealant') : 0;
  desk.hazards.sealerTest = { port: null, endsAt: 0, found: kg >= SEALER.seenKg };
  events.push({ id: 'sealer-tested', subject: port?.id ?? '' });
}

/** Strange oil in the loop of an electric compressor; the book of oils is kept up for every car. */
function heedInsulation(parts: PlantParts, events: PlantEvent[]): void {
  const { car, desk } = parts;
  // what has left since the last second left evenly
  desk.tasks.oil = oilNow(parts);
  if (car.vehicle.compressor.kind !== 'electric') return;
  const share = wrongOilShare(parts);
  tellOnce(
    desk.hazards,
    share >= HIGH_VOLTAGE.strangeOilShare,
    { id: 'insulation-lost', quantity: share, unit: '1' },
    events,
  );
}
