/**
 * Fans, electric or on the engine's belt. Shroud, blades and motor are groups of one drawing, so that the blades can turn
 * between the other two.
 */
import type { Part } from '../../../layout/layout';
import type { Drawing } from '../record';
import { partDrawing, sizeDrawn, turningDisc, turnsOf } from './partDrawing';

export interface FanPlace {
  readonly x: number;
  readonly y: number;
  readonly r: number;
  /** The mouth's height over its width. */
  readonly squash: number;
  /** Of its shroud. */
  readonly width: number;
}

/** The mouth. Throws `RangeError` for a part that has none. */
export function fanPlace(part: Part): FanPlace {
  const turns = turnsOf(part);
  if (!turns) throw new RangeError(`part "${part.id}" has nothing that turns`);
  return { x: turns.at[0], y: turns.at[1], r: turns.r, squash: turns.squash, width: sizeDrawn(part).w };
}

/** Blades standing still, with their hub. */
export const fanStill = (part: Part): Drawing => partDrawing(part, 'still');

/** Blades in motion, round about the origin: the scene turns this picture and squashes it to the mouth. */
export const fanTurning = (part: Part): Drawing => turningDisc(part);

/** Hub over the turning blades. */
export const fanHub = (part: Part): Drawing => partDrawing(part, 'hub');

/** Motor over the blades; a fan on the belt has none. */
export const fanMotor = (part: Part): Drawing => partDrawing(part, 'over');
