/**
 * The hub plate of a compressor's clutch: apart from its pulley with a black gap while the clutch is open, flush when it
 * is engaged. Facing front its arms smear to arcs that turn; edge-on its glints move.
 */
import type { Part } from '../../../layout/layout';
import { move, multiply } from '../matrix';
import { type Drawing, placed } from '../record';
import { looseDrawing, partDrawing, turningDisc, turnsOf } from './partDrawing';

/** `spin` in radians, `phase` 0 or 1: where a turning plate stands. */
export function clutchHub(part: Part, engaged: boolean, spin = 0, phase = 0): Drawing {
  if (!engaged) return partDrawing(part, 'state:open');
  if (part.kind === 'compressor-side')
    return partDrawing(part, phase === 0 ? 'state:engaged' : 'state:engaged-turned');
  return [...partDrawing(part, 'state:engaged'), ...smear(part, spin), ...partDrawing(part, 'hub')];
}

function smear(part: Part, spin: number): Drawing {
  const turns = turnsOf(part);
  if (!turns) return [];
  const [c, s] = [Math.cos(spin), Math.sin(spin)];
  const squashed = multiply([1, 0, 0, turns.squash, 0, 0], [c, s, -s, c, 0, 0]);
  return placed(turningDisc(part), multiply(move(...turns.at), squashed));
}

/** The clutch face-on, as seen from the belt side, about the origin with its pulley at a radius of 100. */
export const clutchFace = (engaged: boolean): Drawing => [
  ...looseDrawing('clutch-face', 'body'),
  ...looseDrawing('clutch-face', engaged ? 'state:engaged' : 'state:open'),
];
