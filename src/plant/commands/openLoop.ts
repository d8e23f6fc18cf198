/**
 * Undoing the loop at a place to change what is there, and doing it up again. What is left in it leaves through the joint;
 * air and its moisture come in while it stands open.
 */
import { OPEN_JOINT_CDA_M2 } from '../../equipment/openJoint';
import type { LeakPlace } from '../../faults/leakPlaces';
import { ROOM } from '../../loop/networkTypes';
import type { Command, PlantEvent } from '../commandSpecs';
import { dropLink, joinVessels } from '../links';
import { mayTurn } from '../mayTurn';
import { done, type Rig, refuse } from '../rig';
import { waysAt } from '../waysAt';

/** Over this a joint is said to be under pressure. */
const PRESSURE_PA = 20_000;

export const openLoop = {
  'open-loop'(rig: Rig, command: Command) {
    const place = rig.places.get(String(command.part)) as LeakPlace;
    const { opened } = rig.desk.search;
    if (opened.includes(place.id)) return refuse('already');
    const turns = mayTurn(rig);
    if (turns) return refuse(turns);
    if (isTaken(rig, place)) return refuse('couplerInTheWay');
    const ways = waysAt(rig.places, place);
    const overPa =
      Math.max(...ways.map(({ port }) => rig.network.pressurePa(port.vessel))) - rig.airPressurePa;
    opened.push(place.id);
    const room = { vessel: ROOM, cell: 0, height: 'bulk' } as const;
    for (const way of ways) joinVessels(rig.network, wayOutAt(way), way.port, room, OPEN_JOINT_CDA_M2);
    const events: PlantEvent[] = [{ id: 'loop-opened', subject: place.id }];
    if (overPa > PRESSURE_PA)
      events.push({ id: 'opened-under-pressure', subject: place.id, quantity: overPa, unit: 'Pa' });
    return done(...events);
  },

  'close-loop'(rig: Rig, command: Command) {
    const place = rig.places.get(String(command.part)) as LeakPlace;
    const { opened } = rig.desk.search;
    if (!opened.includes(place.id)) return refuse('already');
    opened.splice(opened.indexOf(place.id), 1);
    const stillOpen = opened.flatMap((id) => waysOut(rig, rig.places.get(id) as LeakPlace));
    for (const way of waysOut(rig, place)) if (!stillOpen.includes(way)) dropLink(rig.network, way);
    return done({ id: 'loop-closed', subject: place.id });
  },
};

/** Joints at one cell of the network are one way out. */
const wayOutAt = ({ port: { vessel, cell } }: LeakPlace): string => `open:${vessel}-${cell}`;

const waysOut = ({ places }: Rig, place: LeakPlace): string[] => waysAt(places, place).map(wayOutAt);

function isTaken({ desk }: Rig, { id, kind }: LeakPlace): boolean {
  return kind === 'port' && Object.values(desk.hoses).some(({ port }) => port === id);
}
