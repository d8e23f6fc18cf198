/**
 * Every place of a car where its loop can leak or be undone, with the cell of the network that stands behind it: parts,
 * lines, service ports, and the joint of each line with the part at its end (`LINE-PART`, say `discharge-condenser`).
 *
 * A line or part that is no stretch of the network of its own stands for the one it leads to, or, where a metering device
 * lies between, for the one that feeds it. A line that holds the metering device ends on the low side; a rear unit has its
 * device inside, so the joint there is still on the high side.
 */
import type { Layout, Line, PointMm } from '../layout/layout';
import { layoutOf } from '../layout/layouts';
import { middleOf } from '../layout/place';
import { loopLines } from '../layout/trace';
import type { CarPart } from '../loop/car/assembleLoop';
import type { Car } from '../loop/car/car';
import type { Port } from '../loop/networkTypes';

export interface LeakPlace {
  readonly id: string;
  readonly kind: 'part' | 'line' | 'port' | 'joint';
  readonly port: Port;
  /** Where it lies in the bay; null for what is not drawn. */
  readonly at: PointMm | null;
  /** In its case: neither eye nor probe gets there. */
  readonly isHidden: boolean;
}

const METERING_KINDS: ReadonlySet<string> = new Set(['txv', 'orifice']);

export function leakPlaces(car: Car): readonly LeakPlace[] {
  const layout = layoutOf(car.vehicle.id);
  const lines = loopLines(layout);
  return [
    ...car.loop.parts
      .filter(({ part }) => lines.every(({ id }) => id !== part))
      .map((part) => place(part.part, 'part', lastOf(part), pointOf(layout, part.part))),
    ...layout.parts
      .filter(({ kind }) => METERING_KINDS.has(kind))
      .map((part) => {
        const high = { vessel: car.loop.high, cell: car.network.cellCount(car.loop.high) - 1 };
        return place(part.id, 'part', { ...high, height: 'bulk' }, middleOf(part));
      }),
    ...lines.map((line) => place(line.id, 'line', lastOf(standsFor(car, line)), middleOfLine(line))),
    ...lines.flatMap((line) => [jointAt(car, line, 'from'), jointAt(car, line, 'to')]),
    ...layout.ports.map(({ id, at }) => place(id, 'port', car.port(id), at)),
  ];
}

function place(id: string, kind: LeakPlace['kind'], port: Port, at: PointMm | null): LeakPlace {
  return { id, kind, port, at, isHidden: id.endsWith('evaporator') };
}

function jointAt(car: Car, line: Line, end: 'from' | 'to'): LeakPlace {
  const partId = String(line[end]);
  const own = partOf(car, line.id);
  const part = end === 'to' && leadsToRearUnit(car, line) ? undefined : partOf(car, partId);
  const isPastMetering = end === 'to' && (line.holds ?? []).length > 0;
  const fromLine = own !== undefined && !(isPastMetering && part);
  const stretch = fromLine ? own : (part ?? standsFor(car, line));
  // the line's own end is its last cell with the flow; the part's end there is its first
  const isLast = (end === 'to') === fromLine;
  const way = line.way[end === 'from' ? 0 : line.way.length - 1];
  return place(`${line.id}-${partId}`, 'joint', isLast ? lastOf(stretch) : firstOf(stretch), [
    way[0],
    way[1],
  ]);
}

function standsFor(car: Car, line: Line): CarPart {
  const meters = (line.holds ?? []).length > 0 || leadsToRearUnit(car, line);
  const onward = meters ? undefined : partOf(car, line.to ?? '');
  const found = partOf(car, line.id) ?? onward ?? partOf(car, line.from ?? '');
  if (found) return found;
  const feeding = loopLines(layoutOf(car.vehicle.id)).find(({ to }) => to === line.from);
  if (!feeding) throw new RangeError(`line "${line.id}" leads to no part of the loop`);
  return standsFor(car, feeding);
}

const leadsToRearUnit = (car: Car, line: Line): boolean =>
  layoutOf(car.vehicle.id).parts.some(({ id, kind }) => id === line.to && kind === 'rear-unit');

const partOf = (car: Car, id: string): CarPart | undefined => car.loop.parts.find(({ part }) => part === id);

const firstOf = ({ vessel, firstCell }: CarPart): Port => ({ vessel, cell: firstCell, height: 'bulk' });
const lastOf = ({ vessel, firstCell, cells }: CarPart): Port => ({
  vessel,
  cell: firstCell + cells - 1,
  height: 'bulk',
});

function pointOf(layout: Layout, id: string): PointMm | null {
  const found = layout.parts.find((part) => part.id === id);
  return found ? middleOf(found) : null;
}

function middleOfLine({ way }: Line): PointMm {
  const middle = way[Math.floor(way.length / 2)];
  return [middle[0], middle[1]];
}
