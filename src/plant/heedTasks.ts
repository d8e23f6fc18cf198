/** After each step: whoever is licensed at work, dye that came out of a can, and whether the loop has been empty. */
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { dueNow } from './due';
import { heedLicensed } from './licensedAtWork';
import type { Rig } from './rig';
import { SEARCH } from './tally';

/** Looked at once a second. */
const EVERY = 50;
/** With less than this of its charge a loop is as good as empty: what a recovery machine leaves in the oil. */
const EMPTY_SHARE = 0.03;

export function heedTasks(rig: Rig, parts: PlantParts, events: PlantEvent[]): void {
  if (rig.desk.tasks.licensed !== null) heedLicensed(rig, events);
  if (rig.step() % EVERY !== 0) return;
  carryDye(parts);
  noteEmpty(parts);
}

/** A can's dye comes out with its oil, by its share. */
function carryDye({ cans, car, desk, tally }: PlantParts): void {
  for (const [id, { spec, vessel }] of cans) {
    const { dyeKg = 0, oilKg = 0 } = spec;
    if (dyeKg === 0) continue;
    const leftKg = car.network.massKg(vessel, 'oil');
    const cameKg = desk.tasks.canOilKg[id] - leftKg;
    desk.tasks.canOilKg[id] = leftKg;
    tally[SEARCH.dyeKg] += (cameKg * dyeKg) / (dyeKg + oilKg);
  }
}

function noteEmpty({ car, desk }: PlantParts): void {
  if (desk.tasks.wasEmpty) return;
  const { network, loop, vehicle } = car;
  const heldKg = network.chargeKg(loop.high) + network.chargeKg(loop.low);
  desk.tasks.wasEmpty = heldKg < EMPTY_SHARE * dueNow(vehicle, desk).chargeKg;
}
