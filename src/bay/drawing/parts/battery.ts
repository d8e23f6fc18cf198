/** Battery in its tray: cell caps, two posts, a red-free cover over the plus post, hold-down bar. */
import type { Part } from '../../../layout/layout';
import { lit } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, mm, repeat, shape, text } from '../record';
import { bolt, canister, slab } from '../solids';
import { sizeOf } from './partSize';

export function battery(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const [plus, minus] = part.flip ? [x + w - 34, x + 34] : [x + 34, x + w - 34];
  const cell = (i: number): Drawing => {
    const cx = x + 26 + (i * (w - 52)) / 5;
    return [
      { ...shape(circle(cx, y + h * 0.56, 11), 'plas-c', 'plas-h', 1.4), inkAlpha: 0.5 },
      bar(cx - 6, y + h * 0.56, cx + 6, y + h * 0.56, 'plas-h', 1.6, 0.6),
    ];
  };
  return [
    ...slab(x - 10, y - 8, w + 20, h + 16, { r: 8, lip: 30, m: 'iron', elevation: 34 }),
    ...slab(x, y, w, h, { r: 8, lip: 22, m: 'plas', elevation: 14 }),
    shape(roundRect(x + 10, y + h * 0.36, w - 20, h * 0.4, 6), lit('plas'), 'plas-d', 1.6),
    ...repeat(6, cell),
    ...canister(plus, y + 30, 14, 8, 'mill'),
    ...canister(minus, y + 30, 14, 8, 'mill'),
    shape(roundRect(plus - 24, y + 14, 48, 34, 9), 'rub-a', 'rub-d', 2),
    text('+', plus, mm(y + 40), 26, 'resv-a'),
    text('−', minus, mm(y + 66), 26, 'resv-b'),
    ...slab(x - 6, y + h - 26, w + 12, 16, { r: 5, lip: 3, m: 'iron', elevation: 8 }),
    ...bolt(x + 12, y + h - 18, 6),
    ...bolt(x + w - 12, y + h - 18, 6),
  ];
}
