/**
 * Which sides of the car an open can leads to: can valve, then hose, then (for the gauge set) the manifold valves, then a
 * coupler whose valve is open on a port. Worked out from the path, never from a pressure.
 */
import type { HoseId } from '../equipment/hoses';
import type { PlantEvent } from './commandSpecs';
import type { Rig } from './rig';

type Side = 'low' | 'high';

/** Sides with an unbroken open path from some can, in the order low, high. */
export function openCanSides(rig: Rig): Side[] {
  const reached = new Set<Side>();
  for (const can of Object.values(rig.desk.cans)) {
    if (!can.onto || can.turn === 0) continue;
    for (const hose of hosesFrom(rig, can.onto)) {
      const side = sideBehind(rig, hose);
      if (side) reached.add(side);
    }
  }
  return (['low', 'high'] as const).filter((side) => reached.has(side));
}

/** Hoses joined to the one a can stands on, itself included. */
function hosesFrom(rig: Rig, onto: HoseId): HoseId[] {
  if (onto !== 'utility') return [onto];
  const joined: HoseId[] = [];
  if (rig.desk.manifold.low > 0) joined.push('gauge-low');
  if (rig.desk.manifold.high > 0) joined.push('gauge-high');
  return joined;
}

function sideBehind(rig: Rig, hose: HoseId): Side | null {
  const state = rig.desk.hoses[hose];
  if (!state?.port || !state.open) return null;
  return rig.ports.get(state.port)?.side ?? null;
}

/** Events for each side that an open can has just come to lead to; the desk remembers the sides. */
export function sidesReached(rig: Rig): PlantEvent[] {
  const now = openCanSides(rig);
  const before = rig.desk.canOpenTo;
  rig.desk.canOpenTo = now;
  return now.filter((side) => !before.includes(side)).map((side) => ({ id: 'can-open-to', subject: side }));
}
