/**
 * Names that say where a thing is and not what it is: a port by its bore and place, a line by its diameter and place, a
 * part that would tell the kind of loop by its place alone. The drawn bay, its twin and the panels all use these.
 */
import { isThreaded } from '../layout/bores';
import type { BoreMm, Layout, PointMm, Port } from '../layout/layout';
import { stopsOf } from '../layout/order';
import { placeOf } from '../layout/place';
import { lineOf, loopLines, partOf } from '../layout/trace';
import { formatNumber } from '../units/format';
import { word } from '../words/words';

/** Parts whose name would say which kind of loop this is: what an assessed trainee has to see for themselves. */
const TELLTALE: ReadonlySet<string> = new Set([
  ...['accumulator', 'drier', 'drier-slim', 'orifice', 'txv', 'evaporator-case', 'rear-unit'],
]);

export const isTelltale = (layout: Layout, partId: string): boolean =>
  TELLTALE.has(partOf(layout, partId).kind);

export function placeWords(layout: Layout, at: PointMm): string {
  const { depth, across } = placeOf(layout, at);
  return word('bay.place', { depth: word(`bay.depth.${depth}`), across: word(`bay.across.${across}`) });
}

/** `bore`: across the fitting that is on it now. */
export function portByPlace(layout: Layout, port: Port, bore: BoreMm = port.boreMm): string {
  const values = { bore: String(bore), place: placeWords(layout, port.at) };
  return isThreaded(bore) ? word('bay.port.threaded', values) : word('bay.port.name', values);
}

export const partByPlace = (layout: Layout, at: PointMm): string =>
  word('bay.loopPart', { place: placeWords(layout, at) });

export const lineByPlace = (layout: Layout, id: string, at: PointMm): string =>
  word('bay.line.unnamed', {
    diameter: `${formatNumber(lineOf(layout, id).diameterMm, 0.1)} mm`,
    place: placeWords(layout, at),
  });

/** Where a joint (`LINE-PART`) lies: the end of its line there; null for any other id. */
function jointPoint(layout: Layout, id: string): PointMm | null {
  for (const line of loopLines(layout)) {
    const at = [line.from, line.to].findIndex((end) => `${line.id}-${end}` === id);
    const [x, y] = line.way[at === 0 ? 0 : line.way.length - 1];
    if (at >= 0) return [x, y];
  }
  return null;
}

/** The last stretch of a line, `LINE-end`; null for any other id. */
function lineEnd(layout: Layout, id: string): string | null {
  const line = loopLines(layout).find((one) => id === `${one.id}-end`);
  if (!line) return null;
  const [x, y] = line.way[line.way.length - 1];
  const diameter = `${formatNumber(line.diameterMm, 0.1)} mm`;
  return word('bay.line.end', { diameter, place: placeWords(layout, [x, y]) });
}

/** The neutral name of a joint, line or telltale part of the layout; null for everything that may be named. */
export function neutralName(layout: Layout, id: string): string | null {
  const joint = jointPoint(layout, id);
  if (joint) return word('bay.joint', { place: placeWords(layout, joint) });
  const end = lineEnd(layout, id);
  if (end) return end;
  const stop = stopsOf(layout).find((one) => one.id === id);
  if (stop?.kind === 'line') return lineByPlace(layout, id, stop.at);
  return stop?.kind === 'part' && isTelltale(layout, id) ? partByPlace(layout, stop.at) : null;
}
