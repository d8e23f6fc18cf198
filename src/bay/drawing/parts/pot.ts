/** An upright pot as frost and dew need it: its top face and how much of its wall shows. */
import type { Part } from '../../../layout/layout';
import type { Pot } from '../gear/pot';
import { fileOf, stretchOf } from './partDrawing';

/** Throws `RangeError` for a part that is no pot. */
export function potOf(part: Part): Pot {
  const { size, lip } = fileOf(part).meta;
  if (size?.r === undefined || lip === undefined) throw new RangeError(`part "${part.id}" is no pot`);
  const { kx, ky } = stretchOf(part);
  return { id: part.id, x: part.at[0], y: part.at[1], r: size.r * kx, lip: lip * ky };
}
