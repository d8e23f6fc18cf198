/** What is decided, named, mended and written: the job card's lines are evidence, and a new part clears its fault. */
import { LEVEL_PA } from '../../equipment/openJoint';
import type { LeakPlace } from '../../faults/leakPlaces';
import type { Command, PlantEvent } from '../commandSpecs';
import { mayTurn } from '../mayTurn';
import { oilInPart } from '../oilInPart';
import { done, type Rig, refuse } from '../rig';
import { waysAt } from '../waysAt';

export const card = {
  decide(_rig: Rig, command: Command) {
    return done({ id: 'decided', subject: String(command.answer) });
  },

  diagnose(_rig: Rig, command: Command) {
    return done({ id: 'diagnosed', subject: String(command.cause) });
  },

  replace(rig: Rig, command: Command) {
    const part = String(command.part);
    const turns = mayTurn(rig);
    if (turns) return refuse(turns);
    const place = rig.places.get(part);
    if (place && !rig.desk.search.opened.includes(part)) return refuse('loopShut');
    const overPa = place ? apartFromRoomPa(rig, place) : 0;
    if (Math.abs(overPa) > LEVEL_PA) return refuse(overPa > 0 ? 'loopBlows' : 'loopDraws');
    rig.desk.replaced.push(part);
    rig.repair(part);
    const oilKg = place ? takeOil(rig, place) : 0;
    rig.desk.tasks.oilOutKg += oilKg;
    if (place) renewDesiccant(rig, place);
    const events: PlantEvent[] = [{ id: 'replaced', subject: part }];
    if (oilKg > 0) events.push({ id: 'oil-in-part', subject: part, quantity: oilKg, unit: 'kg' });
    return done(...events);
  },

  'write-label'(_rig: Rig, command: Command) {
    return done({ id: 'labelled', quantity: Number(command.grams) / 1000, unit: 'kg' });
  },
};

/** Over the room's pressure, furthest from it of what stands behind the place's joints. */
function apartFromRoomPa({ network, places, airPressurePa }: Rig, place: LeakPlace): number {
  return waysAt(places, place)
    .map(({ port }) => network.pressurePa(port.vessel) - airPressurePa)
    .reduce((most, overPa) => (Math.abs(overPa) > Math.abs(most) ? overPa : most), 0);
}

/** The old part takes its oil along, a compressor what stands in it; kg. */
function takeOil({ network, ports }: Rig, { id, kind, port: { vessel } }: LeakPlace): number {
  if (id === 'compressor') return -network.bringIn(vessel, 'oil', -network.sumpOilKg(vessel), 'sump');
  const sides = new Set([...ports.values()].map(({ at }) => at.vessel));
  const oilKg = [...sides].reduce((sum, side) => sum + network.massKg(side, 'oil'), 0);
  return -network.bringIn(vessel, 'oil', -oilInPart(id, kind) * oilKg);
}

/** A new drier or accumulator comes with a dry desiccant. */
function renewDesiccant({ network }: Rig, { id, port: { vessel } }: LeakPlace): void {
  if (id === 'drier' || id === 'accumulator') network.renewDesiccant(vessel, network.desiccantKg(vessel), 0);
}
