/**
 * What tracing meets: from the asked port along the lines, in order, to the part that decides, both ways. A line or part
 * is told by what can be seen of it (tube or with hose, its diameter, its place), never by its side.
 */
import { courseOf, stationAt } from '../course';
import type { Line } from '../layout';
import { middleOf, type Place, placeOf } from '../place';
import { lineOf, partOf, type TraceStep, tracePort } from '../trace';
import type { DrillBay, DrillPart, Side } from './drill';

/** Bright tube, tube with a length of hose in it, or tube that goes on as hose to its end. */
export type LineMade = 'tube' | 'tube-hose-tube' | 'tube-hose';

export type DrillStep =
  | {
      readonly id: string;
      readonly kind: 'line';
      readonly made: LineMade;
      readonly diameterMm: number;
      readonly place: Place;
    }
  | { readonly id: string; readonly kind: 'part'; readonly part: DrillPart; readonly place: Place };

export interface DrillTrace {
  /** With the flow from the port; the part that decides is last. */
  readonly downstream: readonly DrillStep[];
  readonly upstream: readonly DrillStep[];
  readonly side: Side;
}

export function drillTrace(bay: DrillBay, portId: string): DrillTrace {
  const { downstream, upstream, side } = tracePort(bay.layout, portId);
  return {
    downstream: downstream.map((step) => stepOf(bay, step)),
    upstream: upstream.map((step) => stepOf(bay, step)),
    side,
  };
}

function stepOf(bay: DrillBay, { id, kind }: TraceStep): DrillStep {
  if (kind === 'part')
    return {
      id,
      kind,
      part: bay.loopParts[id],
      place: placeOf(bay.layout, middleOf(partOf(bay.layout, id))),
    };
  const line = lineOf(bay.layout, id);
  const course = courseOf(line.way, line.fillet);
  const { x, y } = stationAt(course, course.lengthMm / 2);
  return {
    id,
    kind,
    made: madeOf(line),
    diameterMm: line.diameterMm,
    place: placeOf(bay.layout, [x, y]),
  };
}

export function madeOf({ sections = [] }: Line): LineMade {
  if (sections.every(([material]) => material !== 'hose')) return 'tube';
  return sections[sections.length - 1][0] === 'hose' ? 'tube-hose' : 'tube-hose-tube';
}
