/**
 * The code of shape: low is round, high is a rounded square, hoses for cans a pennant on a staff. Shape and letter
 * carry the meaning, colour only helps. One function draws all of them.
 */
import type { HoseId } from '../../layout/layout';
import { circle, roundSquare } from './paths';
import { type Drawing, mm, ROUND, shape, stroke, text } from './record';

/** Palette token of a hose. */
export const HOSE_INK: Readonly<Record<HoseId, 'low' | 'high' | 'chg'>> = {
  low: 'low',
  high: 'high',
  charging: 'chg',
  utility: 'chg',
};
export const HOSE_LETTER: Readonly<Record<HoseId, string>> = {
  low: 'L',
  high: 'H',
  charging: 'C',
  utility: 'V',
};

export function codeShape(hose: HoseId, x: number, y: number, r: number): string {
  if (hose === 'low') return circle(x, y, r);
  if (hose === 'high') return roundSquare(x, y, r * 0.93, 0.2);
  return `M${mm(x - r)} ${mm(y - r * 1.02)}L${mm(x + r * 1.62)} ${mm(y - r * 0.34)}V${mm(y + r * 0.34)}L${mm(x - r)} ${mm(y + r * 1.02)}Z`;
}

/** A letter set on its optical middle. */
export const letter = (words: string, x: number, y: number, size: number, ink = 'white'): Drawing => [
  text(words, mm(x), mm(y + size * 0.36), mm(size), ink),
];

export function badge(hose: HoseId, x: number, y: number, r: number): Drawing {
  const ink = HOSE_INK[hose];
  const rim = mm(Math.max(1.6, r * 0.14));
  const flag = codeShape(hose, x, y, r);
  if (hose === 'low' || hose === 'high') {
    return [shape(flag, ink, 'white', rim, { join: 'round' }), ...letter(HOSE_LETTER[hose], x, y, r * 1.18)];
  }
  const staff = `M${mm(x - r)} ${mm(y - r * 1.2)}V${mm(y + r * 1.5)}`;
  return [
    stroke(staff, 'white', mm(r * 0.42), 1, ROUND),
    shape(flag, 'chg-d', 'white', rim, { join: 'round' }),
    stroke(staff, 'chg-d', mm(r * 0.2), 1, ROUND),
    ...letter(HOSE_LETTER[hose], x - r * 0.16, y, r * 1.22),
  ];
}
