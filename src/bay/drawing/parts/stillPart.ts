/** What stands still of a part, at rest: the body of its drawing, or what is made of the layout's numbers. */
import type { Part } from '../../../layout/layout';
import type { Drawing } from '../record';
import { beltFront } from './beltFront';
import { beltSide } from './beltSide';
import { partDrawing } from './partDrawing';

/** Belts follow the wheels of their layout; a label is printed by its car; some parts are drawn with what they sit in. */
const OTHERWISE: Readonly<Record<string, (part: Part) => Drawing>> = {
  'belt-front': beltFront,
  'belt-side': beltSide,
  label: () => [],
  undrawn: () => [],
};

/** Throws `RangeError` for a drawing that was not fetched. */
export function stillPart(part: Part): Drawing {
  const draw = OTHERWISE[part.kind];
  return draw ? draw(part) : partDrawing(part, 'body');
}
