/** Frost and dew of a line or a pot at a cover of each: what the scene and the look-closer view draw alike. */
import { courseOf, nearestStation } from '../../../layout/course';
import type { Layout, Part } from '../../../layout/layout';
import { potOf } from '../parts/pot';
import type { Drawing } from '../record';
import { type Run, runsOf } from '../run';
import { sweatingLine, sweatingPot } from './dew';
import { frostedLine, frostedPot } from './frost';

export type CoverDrawing = (frost: number, sweat: number) => Drawing;

/** A line is coated from its cold end: where it leaves a metering device inside it, else its start. */
function lineCover(layout: Layout, run: Run): CoverDrawing {
  const start = coldStart(layout, run);
  const reach = (cover: number): number => start + (1 - start) * cover;
  return (frost, sweat) => [
    ...(sweat > frost ? sweatingLine(run, reach(frost), reach(sweat)) : []),
    ...(frost > 0 ? frostedLine(run, start, reach(frost)) : []),
  ];
}

function coldStart(layout: Layout, run: Run): number {
  const [held] = run.line.holds ?? [];
  const part = layout.parts.find((p) => p.id === held);
  if (!part) return 0;
  const course = courseOf(run.line.way, run.line.fillet);
  return nearestStation(course, part.at).alongMm / course.lengthMm;
}

const POTS: ReadonlySet<string> = new Set(['accumulator', 'drier', 'drier-slim']);

const isPot = (part: Part): boolean => POTS.has(part.kind);

function potCover(part: Part): CoverDrawing {
  const pot = potOf(part);
  return (frost, sweat) => [
    ...(sweat > 0 ? sweatingPot(pot, sweat) : []),
    ...(frost > 0 ? frostedPot(pot, frost) : []),
  ];
}

const known = new WeakMap<Layout, readonly (readonly [id: string, draw: CoverDrawing])[]>();

/** Everything of a bay that can be coated: its loop lines and its pots, found once. */
export function coversOf(layout: Layout): readonly (readonly [id: string, draw: CoverDrawing])[] {
  const before = known.get(layout);
  if (before) return before;
  const covers = [
    ...runsOf(layout)
      .filter((run) => run.loop)
      .map((run) => [run.line.id, lineCover(layout, run)] as const),
    ...layout.parts.filter(isPot).map((part) => [part.id, potCover(part)] as const),
  ];
  known.set(layout, covers);
  return covers;
}
