/**
 * Phase and drawn level of a stretch from its share of liquid by volume. A tenth of a pipe's mass as liquid is a hundredth
 * of its room; the level is the root of the share, so that a film can be seen, and says no more than more or less.
 */
export type Phase = 'liquid' | 'mixture' | 'vapour';

const FULL = 0.98;
const DRY = 0.002;

export function phaseOf(liquidRatio: number): Phase {
  if (liquidRatio >= FULL) return 'liquid';
  return liquidRatio > DRY ? 'mixture' : 'vapour';
}

export const TEXTURE: Readonly<Record<Phase, string>> = {
  liquid: 't-liq',
  mixture: 't-two',
  vapour: 't-vap',
};

/** Share of a pass's height that is drawn as liquid. */
export function drawnLevel(liquidRatio: number): number {
  if (!(liquidRatio > DRY)) return 0;
  return Math.sqrt(Math.min(1, liquidRatio));
}

/** Drawn levels at the ends of the cells of a coil: its own at either end, the mean of two between them. */
export function levelsAlong(liquidRatios: readonly number[]): number[] {
  const levels = liquidRatios.map(drawnLevel);
  return Array.from({ length: levels.length + 1 }, (_, i) => {
    const before = levels[Math.max(0, i - 1)];
    const after = levels[Math.min(levels.length - 1, i)];
    return (before + after) / 2;
  });
}

/** How far along a coil, in cells, the first is that holds no more (or, for a condenser, is full); null where none is. */
export function firstCell(liquidRatios: readonly number[], phase: Phase): number | null {
  const index = liquidRatios.findIndex((ratio) => phaseOf(ratio) === phase);
  return index < 0 ? null : index;
}
