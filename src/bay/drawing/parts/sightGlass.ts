/** Sight glass from above; `bubbles` is the share of foam behind it, `streaked` with oil that runs by. */
import { move } from '../matrix';
import { type Drawing, placed } from '../record';
import { looseDrawing } from './partDrawing';

const MOST_BUBBLES = 8;

export function sightGlass(x: number, y: number, bubbles: number, streaked = false): Drawing {
  const foam = Array.from({ length: Math.round(bubbles * MOST_BUBBLES) }, (_, i) => `foam:${i + 1}`);
  return placed(
    ['body', ...foam, ...(streaked ? ['state:streaked'] : []), 'over'].flatMap((group) =>
      looseDrawing('sight-glass', group),
    ),
    move(x, y),
  );
}
