/**
 * A hose that lies where something turns is caught after half a second: it is torn off its port, and if it was open its
 * end lets out what it holds. What turns is asked of the car; where the hose lies was said when it was led.
 */
import type { HoseId } from '../equipment/hoses';
import type { Zone } from '../layout/layout';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { letGo } from './commands/connect';
import type { HoseOnDesk } from './desk';
import { heedCaps } from './heedCaps';
import type { Rig, RigHose } from './rig';
import { fanTurning } from './turning';

const CAUGHT_AFTER_STEPS = 25;

export function heedHoses(rig: Rig, parts: PlantParts, events: PlantEvent[]): void {
  for (const hose of rig.hoses.values()) {
    const state = rig.desk.hoses[hose.spec.id];
    if (state?.port) heed(rig, parts, hose, state, events);
  }
}

function heed(rig: Rig, parts: PlantParts, hose: RigHose, state: HoseOnDesk, events: PlantEvent[]): void {
  const zone = turningOn(parts, state.route);
  if (!zone) {
    state.dangerSteps = 0;
    return;
  }
  if (state.dangerSteps === 0) events.push({ id: 'hose-in-zone', subject: zone.id });
  state.dangerSteps += 1;
  if (state.dangerSteps < CAUGHT_AFTER_STEPS) return;
  const heldKg = rig.network.chargeKg(hose.vessel);
  const id: HoseId = hose.spec.id;
  letGo(rig, hose, state);
  state.caught = true;
  heedCaps(parts);
  events.push({ id: 'hose-caught', subject: id, quantity: heldKg, unit: 'kg' });
}

/** The first zone of a way in which something turns. */
function turningOn(parts: PlantParts, route: readonly string[]): Zone | undefined {
  for (const id of route) {
    for (const zone of parts.layout.zones) if (zone.id === id && isTurning(parts, zone)) return zone;
  }
  return undefined;
}

function isTurning(parts: PlantParts, zone: Zone): boolean {
  if (zone.hazard === 'fan') return fanTurning(parts.car, zone.part ?? '');
  return zone.hazard === 'belt' && parts.desk.engineRpm > 0;
}
