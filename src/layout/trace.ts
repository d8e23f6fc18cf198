/**
 * Following a line from a port to the part that decides which side it is on.
 *
 * The refrigerant circuit is a graph: parts joined by lines that name their ends in flow order. From a port the walk
 * goes both ways, through vessels that only hold (accumulator, drier, condenser, evaporator), until it reaches a part
 * that changes the pressure: the compressor, or what meters the refrigerant. Between the metering device's outlet and
 * the compressor's inlet is the low side; between the compressor's outlet and the metering device's inlet, the high.
 */
import { courseOf, nearestStation } from './course';
import type { Layout, Line, Part, PointMm, Port } from './layout';

/** Parts at which the pressure changes: these, */
const COMPRESSOR: ReadonlySet<string> = new Set([
  'compressor-front',
  'compressor-side',
  'compressor-electric',
]);
/** and these; a rear unit has its metering device inside. */
const METERING: ReadonlySet<string> = new Set(['txv', 'orifice', 'rear-unit']);
const decides = (kind: string): boolean => COMPRESSOR.has(kind) || METERING.has(kind);

export interface TraceStep {
  /** Line followed, or the vessel passed through. */
  readonly id: string;
  readonly kind: 'line' | 'part';
}

export interface Trace {
  /** From the port with the flow, the deciding part last. */
  readonly downstream: readonly TraceStep[];
  /** From the port against the flow, the deciding part last. */
  readonly upstream: readonly TraceStep[];
  /** Low where the flow from here enters the compressor. */
  readonly side: 'low' | 'high';
}

/** Follows a port both ways. Throws `RangeError` where the port or an end of the walk is missing. */
export function tracePort(layout: Layout, portId: string): Trace {
  const port = portOf(layout, portId);
  const downstream = walk(layout, port, 'to');
  const upstream = walk(layout, port, 'from');
  const end = partOf(layout, downstream[downstream.length - 1].id);
  return { downstream, upstream, side: COMPRESSOR.has(end.kind) ? 'low' : 'high' };
}

export function portOf(layout: Layout, portId: string): Port {
  const port = layout.ports.find((p) => p.id === portId);
  if (!port)
    throw new RangeError(`no port "${portId}"; there is ${layout.ports.map((p) => p.id).join(', ')}`);
  return port;
}

export function partOf(layout: Layout, partId: string): Part {
  const part = layout.parts.find((p) => p.id === partId);
  if (!part) throw new RangeError(`no part "${partId}" in layout "${layout.id}"`);
  return part;
}

export function lineOf(layout: Layout, lineId: string): Line {
  const line = layout.lines.find((l) => l.id === lineId);
  if (!line) throw new RangeError(`no line "${lineId}" in layout "${layout.id}"`);
  return line;
}

/** Lines of the refrigerant circuit. */
export function loopLines(layout: Layout): readonly Line[] {
  return layout.lines.filter((line) => line.from !== undefined && line.to !== undefined);
}

type Way = 'from' | 'to';

function walk(layout: Layout, port: Port, way: Way): TraceStep[] {
  const steps: TraceStep[] = [];
  let line = 'line' in port.on ? lineOf(layout, port.on.line) : leaving(layout, port.on.part, way);
  if ('part' in port.on) steps.push({ id: port.on.part, kind: 'part' });
  let entered = 'line' in port.on ? shareAt(line, port.at) : null;
  for (;;) {
    steps.push({ id: line.id, kind: 'line' });
    const held = decidingPartIn(layout, line, entered, way);
    if (held) return [...steps, { id: held, kind: 'part' }];
    const part = partOf(layout, (way === 'to' ? line.to : line.from) as string);
    steps.push({ id: part.id, kind: 'part' });
    if (decides(part.kind)) return steps;
    if (steps.length > 2 * layout.lines.length) throw new RangeError(`port "${port.id}" leads nowhere`);
    line = leaving(layout, part.id, way);
    entered = null;
  }
}

/** The line that goes on from a part with (`to`) or against (`from`) the flow. */
function leaving(layout: Layout, partId: string, way: Way): Line {
  const line = loopLines(layout).find((l) => (way === 'to' ? l.from : l.to) === partId);
  if (!line) throw new RangeError(`no line goes on from "${partId}" in layout "${layout.id}"`);
  return line;
}

/** A metering device inside the line, on the way from where it was entered (null: from its end). */
function decidingPartIn(layout: Layout, line: Line, entered: number | null, way: Way): string | null {
  for (const id of line.holds ?? []) {
    const part = partOf(layout, id);
    if (!decides(part.kind)) continue;
    if (entered === null) return id;
    const at = shareAt(line, part.at);
    if (way === 'to' ? at > entered : at < entered) return id;
  }
  return null;
}

/** How far along the line a point lies, as a share of its length in flow order. */
function shareAt(line: Line, point: PointMm): number {
  const course = courseOf(line.way, line.fillet);
  return nearestStation(course, point).alongMm / course.lengthMm;
}
