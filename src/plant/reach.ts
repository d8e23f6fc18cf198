/**
 * Which sides of the car an open can or tank leads to: its valve, then hose, then (for the gauge set) the manifold valves, then a
 * coupler whose valve is open on a port. Worked out from the path, never from a pressure.
 */
import type { HoseId } from '../equipment/hoses';
import type { PlantEvent } from './commandSpecs';
import type { Rig, RigPort } from './rig';

type Side = 'low' | 'high';

/** Sides with an unbroken open path from some can, in the order low, high. */
export function openCanSides(rig: Rig): Side[] {
  const reached = new Set<Side>();
  for (const can of Object.values(rig.desk.cans)) {
    if (!can.onto || can.turn === 0) continue;
    for (const { side } of portsReached(rig, can.onto)) reached.add(side);
  }
  return inOrder(reached);
}

/** The same from the charging tank. */
function openTankSides(rig: Rig): Side[] {
  const { devices, tank } = rig.desk.service;
  const onto = devices['charging-tank']?.onto;
  if (!onto || tank.turn === 0) return [];
  return inOrder(new Set(portsReached(rig, onto).map(({ side }) => side)));
}

const inOrder = (reached: ReadonlySet<Side>): Side[] =>
  (['low', 'high'] as const).filter((side) => reached.has(side));

/** Ports of the car that an open way leads to from the free end of a hose. */
export function portsReached(rig: Rig, onto: HoseId): RigPort[] {
  return hosesFrom(rig, onto).flatMap((hose) => portBehind(rig, hose) ?? []);
}

/** Hoses joined to the one a can stands on, itself included. */
function hosesFrom(rig: Rig, onto: HoseId): HoseId[] {
  if (onto !== 'utility') return [onto];
  const joined: HoseId[] = [];
  if (rig.desk.manifold.low > 0) joined.push('gauge-low');
  if (rig.desk.manifold.high > 0) joined.push('gauge-high');
  return joined;
}

function portBehind(rig: Rig, hose: HoseId): RigPort | null {
  const state = rig.desk.hoses[hose];
  if (!state?.port || !state.open) return null;
  return rig.ports.get(state.port) ?? null;
}

/** Events for each side that an open can or tank has just come to lead to; the desk remembers the sides. */
export function sidesReached(rig: Rig): PlantEvent[] {
  const now = openCanSides(rig);
  const before = rig.desk.canOpenTo;
  rig.desk.canOpenTo = now;
  const { service } = rig.desk;
  const tankBefore = service.tankOpenTo;
  service.tankOpenTo = openTankSides(rig);
  return [
    ...now.filter((side) => !before.includes(side)).map((side) => ({ id: 'can-open-to', subject: side })),
    ...service.tankOpenTo
      .filter((side) => !tankBefore.includes(side))
      .map((side) => ({ id: 'tank-open-to', subject: side })),
  ];
}
