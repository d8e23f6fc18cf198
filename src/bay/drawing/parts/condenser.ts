/** Condenser behind the grille: bright tubes between two header tanks, thin fins across; dirt is a layer of its own. */
import type { Part } from '../../../layout/layout';
import { grain, seedOf } from '../grain';
import { across, down } from '../paints';
import { ellipse, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, repeat, shape, stroke } from '../record';
import { sizeOf } from './partSize';

const ROW_MM = 14.5;
const FIN_MM = 7;

export function condenser(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const rows = Math.round(h / ROW_MM);
  const pitch = h / rows;
  let fins = '';
  for (let at = x + 24; at < x + w - 20; at += FIN_MM) fins += `M${mm(at)} ${y}V${y + h}`;
  return [
    fill(roundRect(x, y, w, h, 4), 'floor-d'),
    ...repeat(rows, (i) => [
      fill(
        `M${x + 20} ${mm(y + i * pitch + 2)}H${x + w - 20}V${mm(y + (i + 1) * pitch - 5)}H${x + 20}Z`,
        'mill-c',
      ),
      fill(roundRect(x + 18, y + (i + 1) * pitch - 5, w - 36, 5.4, 2), down('alu')),
    ]),
    stroke(fins, 'mill-d', 1.5, 0.55),
    shape(roundRect(x, y - 4, 24, h + 8, 10), across('alu'), 'alu-d', 2),
    shape(roundRect(x + w - 24, y - 4, 24, h + 8, 10), across('alu'), 'alu-d', 2),
    fill(roundRect(x, y, w, 13, 0), 'shadow', 0.3),
  ];
}

/** Brown veil, lint, fibres and a few leaves: what a season leaves on the fins below `top`. Shown by alpha. */
export function condenserDirt(part: Part, top: number): Drawing {
  const [x] = part.at;
  const w = sizeOf(part, 'w');
  const y = Math.max(part.at[1], top);
  const h = part.at[1] + sizeOf(part, 'h') - y;
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
