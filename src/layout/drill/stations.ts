/**
 * Where a port may stand: on an upright stretch in a lane, on plain tube, clear of crossings, pots and bends.
 */
import type { Part, PointMm } from '../layout';
import { laneAt } from './bayFrame';
import type { Draws } from './draws';
import type { LoopRun, Side } from './drill';
import { apart, toRect } from './geometry';

export interface Station {
  readonly run: LoopRun;
  readonly at: PointMm;
  /** The pot it stands on, where it is not on the line. */
  readonly pot?: string;
}

const FROM_BEND_MM = 58;
const STEP_MM = 34;
const DISTANCE_BIN_MM = 130;
const REAR_MOST_MM = 250;
const FRONT_MOST_MM = 732;
const CLEAR_MM = 48;
const FROM_POT_MM = 22;
/** On a pot's lid, behind its middle. */
const ON_LID_MM = 8;
/** Share of attempts in which a port may stand on a pot. */
const ON_LID_SHARE = 0.03;
const PORTS_APART_MM = 110;

/** Kinds of part that one recognises without tracing. */
const SEEN: ReadonlySet<string> = new Set([
  'compressor-side',
  'compressor-front',
  'condenser',
  'txv',
  'evaporator-case',
  'accumulator',
  'drier',
]);
const POTS: ReadonlySet<string> = new Set(['accumulator', 'drier']);

/**
 * A place for the low port and one for the high. Each has a part nearest to it that the other could have had too, drawn
 * from the same list: so the nearest part tells nothing. Null where the runs leave no such places.
 */
export function stationsFor(
  draws: Draws,
  runs: readonly LoopRun[],
  parts: readonly Part[],
): Readonly<Record<Side, Station>> | null {
  const onLid = draws.chance(ON_LID_SHARE);
  const low = byNearest('low', runs, parts, onLid);
  const high = byNearest('high', runs, parts, onLid);
  const both = [...low.keys()].filter((id) => high.has(id));
  if (both.length === 0) return null;
  const found = {
    low: draws.pick(low.get(draws.pick(both)) ?? []),
    high: draws.pick(high.get(draws.pick(both)) ?? []),
  };
  return apart(found.low.at, found.high.at) >= PORTS_APART_MM ? found : null;
}

function byNearest(
  side: Side,
  runs: readonly LoopRun[],
  parts: readonly Part[],
  onLid: boolean,
): Map<string, Station[]> {
  const found = new Map<string, Station[]>();
  for (const run of runs) {
    if (run.side !== side) continue;
    for (const station of [...(onLid ? onPot(run, parts) : []), ...stationsOf(run, runs, parts)]) {
      const seen = nearestSeen(station.at, parts);
      const id = seen ? `${seen.id} ${Math.floor(seen.awayMm / DISTANCE_BIN_MM)}` : '';
      const list = found.get(id);
      if (list) list.push(station);
      else found.set(id, [station]);
    }
  }
  return found;
}

/** On the lid of the pot a run begins at: an accumulator's or a drier's. */
function onPot(run: LoopRun, parts: readonly Part[]): Station[] {
  const pot = parts.find(({ id, kind }) => id === run.from && POTS.has(kind));
  return pot ? [{ run, at: [pot.at[0], pot.at[1] - ON_LID_MM], pot: pot.id }] : [];
}

/** The part one would name as the nearest, and how far it is. */
export function nearestSeen(
  at: PointMm,
  parts: readonly Part[],
): { readonly id: string; readonly awayMm: number } | null {
  let best: { readonly id: string; readonly awayMm: number } | null = null;
  for (const { id, kind, hit } of parts) {
    if (!hit || !SEEN.has(kind)) continue;
    const awayMm = toRect(at, hit);
    if (!best || awayMm < best.awayMm) best = { id, awayMm };
  }
  return best;
}

function stationsOf(run: LoopRun, runs: readonly LoopRun[], parts: readonly Part[]): Station[] {
  const found: Station[] = [];
  for (let i = 1; i < run.way.length; i++) {
    const [[x, ya], [xb, yb]] = [run.way[i - 1], run.way[i]];
    if (x !== xb || laneAt(x) === null) continue;
    const least = Math.max(REAR_MOST_MM, Math.min(ya, yb) + FROM_BEND_MM);
    const most = Math.min(FRONT_MOST_MM, Math.max(ya, yb) - FROM_BEND_MM);
    for (let y = least; y <= most; y += STEP_MM) {
      if (isClear([x, y], run, runs, parts)) found.push({ run, at: [x, y] });
    }
  }
  return found;
}

/** No other run crosses here and no pot stands in the way. */
function isClear([x, y]: PointMm, own: LoopRun, runs: readonly LoopRun[], parts: readonly Part[]): boolean {
  for (const { kind, hit } of parts) {
    if (hit && POTS.has(kind) && toRect([x, y], hit) < FROM_POT_MM) return false;
  }
  for (const run of runs) {
    if (run === own) continue;
    for (let i = 1; i < run.way.length; i++) {
      const [a, b] = [run.way[i - 1], run.way[i]];
      const isHere =
        Math.min(a[1], b[1]) - CLEAR_MM < y &&
        y < Math.max(a[1], b[1]) + CLEAR_MM &&
        Math.min(a[0], b[0]) - CLEAR_MM < x &&
        x < Math.max(a[0], b[0]) + CLEAR_MM;
      if (isHere) return false;
    }
  }
  return true;
}
