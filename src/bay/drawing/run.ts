/**
 * A line of the layout made ready to draw: its course and its drawn width. Every refrigerant line is drawn at the same
 * scale over its true diameter, so the ratio between thick and thin is always true; rubber on a refrigerant line is
 * wider by the same factor everywhere.
 */
import { type Course, courseOf, crossings, stretch } from '../../layout/course';
import type { Layout, Line, Section } from '../../layout/layout';
import { polyline } from './paths';

export interface Run {
  readonly line: Line;
  readonly course: Course;
  /** Drawn width of its tube, mm. */
  readonly width: number;
  readonly loop: boolean;
  /** Where it goes over another line: length along it and half the width below. */
  readonly over: readonly Crossing[];
}

export interface Crossing {
  readonly alongMm: number;
  readonly halfMm: number;
}

/** Rubber over tube on a refrigerant line. */
export const HOSE_FACTOR = 1.36;

export function runsOf(layout: Layout): Run[] {
  const bare = layout.lines.map((line): Run => {
    const loop = line.from !== undefined;
    const width = line.diameterMm * (loop ? layout.pipeScale : 1);
    return { line, course: courseOf(line.way, line.fillet), width, loop, over: [] };
  });
  return bare.map((run, i) => ({
    ...run,
    over: bare.flatMap((other, j) => (liesOver(run, other, i, j) ? crossingsOf(run, other) : [])),
  }));
}

function liesOver(upper: Run, lower: Run, i: number, j: number): boolean {
  return i !== j && (upper.line.z > lower.line.z || (upper.line.z === lower.line.z && i > j));
}

const crossingsOf = (upper: Run, lower: Run): Crossing[] =>
  crossings(upper.course, lower.course).map((alongMm) => ({ alongMm, halfMm: lower.width * 0.5 + 3 }));

export const sectionsOf = (line: Line): readonly Section[] => line.sections ?? [['tube', 0, 1]];

export const hasHose = (line: Line): boolean => sectionsOf(line).some(([material]) => material === 'hose');

/** Path of a stretch, as lengths along the run. */
export const pathOf = (run: Run, fromMm = 0, toMm = run.course.lengthMm): string => {
  const points = stretch(run.course, fromMm, toMm);
  return points.length > 1 ? polyline(points) : '';
};
