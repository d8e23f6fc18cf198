/**
 * Noises of a moment as captions: each stands for some seconds of the wall's time after it was heard last, and the same
 * one again is counted, not written again.
 */
import type { MomentSound } from './soundIds';

export interface Caption {
  readonly id: MomentSound;
  readonly count: number;
}

const STANDS_MS = 5000;

export interface CaptionBook {
  hear(id: MomentSound, nowMs: number): void;
  /** Those that still stand, the latest last. */
  standing(nowMs: number): readonly Caption[];
}

export function captionBook(): CaptionBook {
  const heard = new Map<MomentSound, { count: number; lastMs: number }>();
  return {
    hear(id, nowMs) {
      const before = heard.get(id);
      const isStanding = before !== undefined && nowMs - before.lastMs < STANDS_MS;
      heard.set(id, { count: isStanding ? before.count + 1 : 1, lastMs: nowMs });
    },
    standing(nowMs) {
      return [...heard]
        .filter(([, { lastMs }]) => nowMs - lastMs < STANDS_MS)
        .sort(([, one], [, other]) => one.lastMs - other.lastMs)
        .map(([id, { count }]) => ({ id, count }));
    },
  };
}
