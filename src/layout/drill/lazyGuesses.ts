/**
 * What somebody says who does not trace. By the nearest part: at the compressor, the firewall or an accumulator it is
 * low, at the condenser, a drier or an orifice tube high. By the thickest pipe in view near the port, whether it belongs
 * to the loop or not: thick is low. By the cap: what its letter says. By its size as drawn: the larger fitting is high.
 * Without an opinion a guess is the first choice.
 */

import { letterOf, otherBore } from '../bores';
import type { Line, PointMm } from '../layout';
import { portOf } from '../trace';
import { answerOf } from './answerOf';
import { capLetter } from './capLetter';
import type { DrillBay, DrillPart } from './drill';
import { apart, nearestOn, toRect } from './geometry';

export interface LazyGuesses {
  readonly nearestPart: string;
  readonly thickestPipe: string;
  readonly cap: string;
  readonly capSize: string;
}

export interface Clues {
  /** The loop's nearest part that one recognises without tracing, and how far it is. */
  readonly nearest: { readonly id: string; readonly part: DrillPart; readonly awayMm: number };
  /** The thickest pipe within a hand's breadth that no cover hides; null where nothing is in view. */
  readonly thickest: { readonly line: string; readonly drawnMm: number; readonly inLoop: boolean } | null;
  readonly capSays: 'low' | 'high' | null;
  /** Across the fitting that what is on it is drawn for. */
  readonly capSizeMm: number;
}

const SAYS_LOW: ReadonlySet<DrillPart> = new Set(['compressor', 'valve', 'evaporator', 'accumulator']);
const RECOGNISED: ReadonlySet<DrillPart> = new Set([
  'compressor',
  'condenser',
  'drier',
  'valve',
  'orifice',
  'evaporator',
  'accumulator',
]);
const IN_VIEW_MM = 150;
/** Thicker than this in the picture looks thick. */
const THICK_MM = 20;
/** Hose over tube of a refrigerant line, as drawn. */
const HOSE_OVER_TUBE = 1.36;

export function cluesAt(bay: DrillBay, portId: string): Clues {
  const { at, boreMm } = portOf(bay.layout, portId);
  const letter = capLetter(bay, portId);
  return {
    nearest: nearestPart(bay, at),
    thickest: thickestNear(bay, at),
    capSays: letter === null ? null : letter === 'L' ? 'low' : 'high',
    capSizeMm: letter === null || letter === letterOf(boreMm) ? boreMm : otherBore(boreMm),
  };
}

export function lazyGuesses(bay: DrillBay): LazyGuesses {
  const { question } = bay;
  const { choices } = answerOf(bay);
  if (question.kind === 'side') {
    const clues = cluesAt(bay, question.port);
    return {
      nearestPart: SAYS_LOW.has(clues.nearest.part) ? 'low' : 'high',
      thickestPipe: (clues.thickest?.drawnMm ?? 0) >= THICK_MM ? 'low' : 'high',
      cap: clues.capSays ?? choices[0],
      capSize: sideBySize(bay, question.port) ?? choices[0],
    };
  }
  const all = question.ports.map((id) => ({ id, clues: cluesAt(bay, id) }));
  const low = all.filter(({ clues }) => SAYS_LOW.has(clues.nearest.part));
  const nearest = (low.length > 0 ? low : all).reduce((a, b) =>
    b.clues.nearest.awayMm < a.clues.nearest.awayMm ? b : a,
  );
  const thickest = all.reduce((a, b) =>
    (b.clues.thickest?.drawnMm ?? 0) > (a.clues.thickest?.drawnMm ?? 0) ? b : a,
  );
  return {
    nearestPart: nearest.id,
    thickestPipe: thickest.id,
    cap: all.find(({ clues }) => clues.capSays === 'low')?.id ?? choices[0],
    capSize: all.find(({ id }) => sideBySize(bay, id) === 'low')?.id ?? choices[0],
  };
}

/** The largest in view is high, the smallest low; null where all are of one size. */
function sideBySize(bay: DrillBay, portId: string): 'low' | 'high' | null {
  const sizes = bay.ports.map(({ id }) => cluesAt(bay, id).capSizeMm);
  const own = cluesAt(bay, portId).capSizeMm;
  if (own > Math.min(...sizes)) return 'high';
  return own < Math.max(...sizes) ? 'low' : null;
}

function nearestPart(bay: DrillBay, at: PointMm): Clues['nearest'] {
  let best: Clues['nearest'] | null = null;
  for (const part of bay.layout.parts) {
    const known = bay.loopParts[part.id];
    if (!known || !RECOGNISED.has(known) || !part.hit) continue;
    const awayMm = toRect(at, part.hit);
    if (!best || awayMm < best.awayMm) best = { id: part.id, part: known, awayMm };
  }
  if (!best) throw new RangeError(`drill ${bay.layout.id}: no part of the loop`);
  return best;
}

function thickestNear(bay: DrillBay, at: PointMm): Clues['thickest'] {
  let best: Clues['thickest'] = null;
  for (const line of bay.layout.lines) {
    const drawnMm = drawnWidth(bay, line);
    if ((!best || drawnMm > best.drawnMm) && isInView(bay, line, at))
      best = { line: line.id, drawnMm, inLoop: line.from !== undefined };
  }
  return best;
}

function drawnWidth({ layout }: DrillBay, line: Line): number {
  if (line.from === undefined) return line.diameterMm;
  const hose = line.sections?.some(([material]) => material === 'hose') ? HOSE_OVER_TUBE : 1;
  return line.diameterMm * layout.pipeScale * hose;
}

const isInView = (bay: DrillBay, { way }: Line, at: PointMm): boolean =>
  way.some(([bx, by], i) => {
    if (i === 0) return false;
    const near = nearestOn(at, [way[i - 1][0], way[i - 1][1]], [bx, by]);
    return apart(near, at) <= IN_VIEW_MM && bay.covers.every(({ rect }) => toRect(near, rect) > 0);
  });
