/** Dirt on a condenser: a layer of its own over its drawing, shown by alpha. */
import type { Part } from '../../../layout/layout';
import { grain, seedOf } from '../grain';
import { ellipse, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, repeat, shape } from '../record';
import { sizeDrawn } from './partDrawing';

/** Brown veil, lint, fibres and a few leaves: what a season leaves on the fins below `top`. Shown by alpha. */
export function condenserDirt(part: Part, top: number): Drawing {
  const [x] = part.at;
  const { w, h: whole } = sizeDrawn(part);
  const y = Math.max(part.at[1], top);
  const h = part.at[1] + whole - y;
  const random = grain(seedOf(part.id));
  const lint = (i: number) => {
    const cx = x + 26 + random() * (w - 52);
    const cy = y + 8 + random() * (h - 12);
    const k = 4 + random() * 11;
    return fill(ellipse(cx, cy, k * 1.5, k * 0.62), `lint-${(i % 4) + 1}`, 0.45 + random() * 0.4);
  };
  const fibre = (i: number) => {
    const cx = x + 30 + random() * (w - 60);
    const cy = y + 10 + random() * (h - 18);
    const angle = random() * 3;
    return bar(
      cx,
      cy,
      cx + Math.cos(angle) * 16,
      cy + Math.sin(angle) * 7,
      i % 3 ? 'zinc-a' : 'iron-d',
      2,
      0.8,
    );
  };
  const leaf = (i: number) => {
    const cx = mm(x + 80 + random() * (w - 160));
    const cy = mm(y + 16 + random() * (h - 30));
    return shape(`M${cx} ${cy}q14 -14 32 -3q-12 15 -32 3z`, `leaf-${(i % 3) + 1}`, 'leaf-d', 1.3);
  };
  return [
    fill(roundRect(x + 20, y + 4, w - 40, h - 6, 4), 'lint', 0.5),
    ...repeat(170, lint),
    ...repeat(46, fibre),
    ...repeat(5, leaf),
  ];
}
