/** A slim drier without a sight glass: on the side of a condenser, or on its own bracket. */
import type { Part } from '../../../layout/layout';
import { across } from '../paints';
import { circle } from '../paths';
import { type Drawing, shape, stroke } from '../record';
import { bolt, canister } from '../solids';
import { strapBand } from './accumulator';
import { sizeOf } from './partSize';

export function drierSlim(part: Part): Drawing {
  const [x, y] = part.at;
  const r = sizeOf(part, 'r');
  const lip = sizeOf(part, 'lip');
  return [
    ...canister(x, y, r, lip, 'alu', { elevation: lip * 0.6 }),
    shape(strapBand(x, y + lip * 0.5, r + 2.5, 12), across('iron'), 'iron-d', 1.6),
    stroke(circle(x, y, r * 0.7), 'alu-c', 2.2, 0.8),
    ...bolt(x, y, Math.max(5, r * 0.24)),
  ];
}
