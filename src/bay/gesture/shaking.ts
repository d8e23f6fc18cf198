/**
 * A can moved quickly to and fro is shaken: told from the turns of its way. Pure: the way so far and the next point give
 * the next state. Distances and times are [guess], as a wrist does it.
 */
import type { PointMm } from '../../layout/layout';

export interface Shaking {
  /** Where the way last turned, and when, s. */
  readonly turn: PointMm;
  readonly turnedAtS: number;
  readonly last: PointMm;
  readonly turns: number;
}

/** A stroke is at least this long and takes at most this time. */
const STROKE_MM = 22;
const STROKE_S = 0.5;
const TURNS = 4;

export const startShaking = (at: PointMm, seconds: number): Shaking => ({
  turn: at,
  turnedAtS: seconds,
  last: at,
  turns: 0,
});

/** The way goes on to a point; it turns where it comes back toward where it turned last. */
export function shakeOn(now: Shaking, at: PointMm, seconds: number): Shaking {
  const [ax, ay] = [now.last[0] - now.turn[0], now.last[1] - now.turn[1]];
  const [bx, by] = [at[0] - now.last[0], at[1] - now.last[1]];
  const late = seconds - now.turnedAtS > STROKE_S;
  if (ax * bx + ay * by >= 0)
    return late ? { ...startShaking(now.last, seconds), last: at } : { ...now, last: at };
  const isStroke = ax * ax + ay * ay >= STROKE_MM * STROKE_MM;
  return { turn: now.last, turnedAtS: seconds, last: at, turns: isStroke && !late ? now.turns + 1 : 0 };
}

export const isShaken = ({ turns }: Shaking): boolean => turns >= TURNS;
