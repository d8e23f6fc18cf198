/**
 * Where something lies, in words of thirds: rear, middle or front of the bay; picture left (the car's right), centre
 * or picture right. The twin, the plans and the drill all say it through these.
 */
import { courseOf, distance } from './course';
import type { Layout, Line, Part, PointMm } from './layout';

export type Depth = 'rear' | 'middle' | 'front';
export type Across = 'left' | 'centre' | 'right';
export type Turn = 'left' | 'right' | 'forward' | 'rearward';

export interface Place {
  readonly depth: Depth;
  readonly across: Across;
}

export function placeOf(layout: Layout, [x, y]: PointMm): Place {
  const { left, right, firewall, nose } = layout.shell;
  const u = (x - left) / (right - left);
  const v = (y - firewall) / (nose - firewall);
  return {
    depth: v < 1 / 3 ? 'rear' : v < 2 / 3 ? 'middle' : 'front',
    across: u < 1 / 3 ? 'left' : u < 2 / 3 ? 'centre' : 'right',
  };
}

/** The middle of a part: of its hit area, or its anchor where it has none. */
export function middleOf(part: Part): PointMm {
  return part.hit ? [part.hit[0] + part.hit[2] / 2, part.hit[1] + part.hit[3] / 2] : part.at;
}

export interface LineFacts {
  readonly from: string;
  readonly to: string;
  readonly diameterMm: number;
  readonly lengthMm: number;
  /** Directions in flow order, each named once in a row; runs under 45 mm are not worth a word. */
  readonly turns: readonly Turn[];
  readonly holds: readonly string[];
}

const WORTH_A_WORD_MM = 45;

/** What is to be said of a refrigerant line. Throws `RangeError` for a line without ends. */
export function lineFacts(line: Line): LineFacts {
  if (line.from === undefined || line.to === undefined)
    throw new RangeError(`line "${line.id}" carries no refrigerant`);
  const { lengthMm } = courseOf(line.way, line.fillet);
  return {
    from: line.from,
    to: line.to,
    diameterMm: line.diameterMm,
    lengthMm,
    turns: turnsOf(line),
    holds: line.holds ?? [],
  };
}

function turnsOf(line: Line): Turn[] {
  const turns: Turn[] = [];
  for (let i = 1; i < line.way.length; i++) {
    const a: PointMm = [line.way[i - 1][0], line.way[i - 1][1]];
    const b: PointMm = [line.way[i][0], line.way[i][1]];
    if (distance(a, b) < WORTH_A_WORD_MM) continue;
    const turn = heading(b[0] - a[0], b[1] - a[1]);
    if (turns[turns.length - 1] !== turn) turns.push(turn);
  }
  return turns;
}

function heading(dx: number, dy: number): Turn {
  if (Math.abs(dx) > Math.abs(dy)) return dx > 0 ? 'right' : 'left';
  return dy > 0 ? 'forward' : 'rearward';
}
