/** What many bays of the drill come to: traces that differ, and how often guesses without tracing are right. */
import { answerOf } from '../../../src/layout/drill/answerOf';
import { DRILL_LEVELS, type DrillBay, type DrillLevel } from '../../../src/layout/drill/drill';
import { drillBay } from '../../../src/layout/drill/drillBay';
import { drillTrace } from '../../../src/layout/drill/drillTrace';
import { toWay } from '../../../src/layout/drill/geometry';
import { cluesAt, lazyGuesses } from '../../../src/layout/drill/lazyGuesses';

export const bayOfTurn = (seed: number): DrillBay =>
  drillBay(seed, (((seed - 1) % DRILL_LEVELS) + 1) as DrillLevel);

export interface DrillFigures {
  /** Traces that differ in what is met, in order, whatever it is called and wherever it lies. */
  readonly traces: number;
  readonly nearestPartRight: number;
  readonly thickestPipeRight: number;
  readonly capRight: number;
  readonly capSizeRight: number;
  /** The best that could be made of a clue: for each of its values the side it stands for most often. */
  readonly bestByNearestPart: number;
  readonly bestByThickestPipe: number;
  readonly bestByCapSize: number;
  /** Of the questions for the low-side port: the port nearest to the thickest pipe of the whole bay. */
  readonly nearestToThickest: number;
}

type Table = Map<string, { low: number; high: number }>;

export function drillFigures(seeds: number): DrillFigures {
  const traces = new Set<string>();
  const right = { nearestPart: 0, thickestPipe: 0, cap: 0, capSize: 0 };
  const nearest: Table = new Map();
  const thickest: Table = new Map();
  const capSize: Table = new Map();
  const whole = { asked: 0, right: 0 };
  for (let seed = 1; seed <= seeds; seed++) {
    const bay = bayOfTurn(seed);
    const answer = answerOf(bay);
    const { downstream } = drillTrace(bay, answer.port);
    traces.add(downstream.map((step) => (step.kind === 'line' ? step.made : step.part)).join());
    const guesses = lazyGuesses(bay);
    for (const by of ['nearestPart', 'thickestPipe', 'cap', 'capSize'] as const)
      if (guesses[by] === answer.right) right[by]++;
    for (const { id, side } of bay.ports) {
      if (side === null) continue;
      const clues = cluesAt(bay, id);
      count(nearest, clues.nearest.part, side);
      count(thickest, String(clues.thickest?.drawnMm), side);
      count(capSize, String(clues.capSizeMm), side);
    }
    if (bay.question.kind === 'which') {
      whole.asked++;
      if (nearestToThickest(bay) === answer.right) whole.right++;
    }
  }
  return {
    traces: traces.size,
    nearestPartRight: right.nearestPart / seeds,
    thickestPipeRight: right.thickestPipe / seeds,
    capRight: right.cap / seeds,
    capSizeRight: right.capSize / seeds,
    bestByNearestPart: bestOf(nearest),
    bestByThickestPipe: bestOf(thickest),
    bestByCapSize: bestOf(capSize),
    nearestToThickest: whole.right / whole.asked,
  };
}

function count(table: Table, value: string, side: 'low' | 'high'): void {
  const row = table.get(value) ?? { low: 0, high: 0 };
  row[side]++;
  table.set(value, row);
}

function bestOf(table: Table): number {
  const rows = [...table.values()];
  const all = rows.reduce((sum, { low, high }) => sum + low + high, 0);
  return rows.reduce((sum, { low, high }) => sum + Math.max(low, high), 0) / all;
}

function nearestToThickest({ layout, ports }: DrillBay): string {
  const drawn = (line: (typeof layout.lines)[number]): number =>
    line.diameterMm * (line.from === undefined ? 1 : layout.pipeScale);
  const thick = layout.lines.reduce((a, b) => (drawn(b) > drawn(a) ? b : a));
  const away = (id: string): number => {
    const at = layout.ports.find((port) => port.id === id)?.at ?? [0, 0];
    return toWay(
      at,
      thick.way.map(([x, y]) => [x, y]),
    );
  };
  return ports.map(({ id }) => id).reduce((a, b) => (away(b) < away(a) ? b : a));
}
