/**
 * Compressor whose shaft points to the bumper, and the clutch on its nose: a hub plate before the pulley. Open, the
 * plate stands 15 mm off with a black crescent behind it and three sharp arms; engaged it is flush and its arms smear
 * to arcs.
 */
import type { Part, PointMm } from '../../../layout/layout';
import { across, dome, front, lit } from '../paints';
import { arc, ellipse, polygon } from '../paths';
import { bar, type Drawing, fill, mm, ROUND, repeat, shape, stroke } from '../record';
import { bolt, K, slab } from '../solids';

export function compressorFront(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    ...slab(x - 70, y - 222, 140, 46, { r: 12, lip: 12, m: 'cast' }),
    ...slab(x - 58, y - 196, 116, 150, { r: 20, lip: 16, m: 'mill', top: across('mill'), elevation: 40 }),
    ...repeat(4, (i) => [
      bar(x - 57, y - 160 + i * 24, x + 57, y - 160 + i * 24, 'mill-c', 3, 0.75),
      bar(x - 57, y - 157 + i * 24, x + 57, y - 157 + i * 24, 'mill-h', 1.6, 0.6),
    ]),
    ...bolt(x - 58, y - 200, 7),
    ...bolt(x + 58, y - 200, 7),
    ...slab(x - 66, y - 62, 132, 26, { r: 10, lip: 4, m: 'cast', elevation: 10 }),
  ];
}

const PULLEY_R = 62;
const ARM_TURN = (2 * Math.PI) / 3;
const SMEARS = [
  [0.8, 6, 0.5],
  [0.62, 4, 0.45],
  [0.46, 3, 0.4],
] as const;

/** The hub plate, facing front; `spin` in radians. */
export function hubFront(part: Part, engaged: boolean, spin = 0): Drawing {
  const [x, y] = part.at;
  const q = PULLEY_R - 8;
  const rim = engaged ? y - 3 : y + 12;
  const thick = engaged ? 3 : 5;
  const face = rim - thick;
  const wall = `M${x - q} ${mm(rim)}V${mm(face)}A${q} ${mm(q * K)} 0 0 1 ${x + q} ${mm(face)}V${mm(rim)}A${q} ${mm(q * K)} 0 0 1 ${x - q} ${mm(rim)}Z`;
  const gap: Drawing = engaged
    ? []
    : [
        fill(ellipse(x, y, q + 1, (q + 1) * K), 'shadow'),
        stroke(`M${x - q - 1} ${y}A${q + 1} ${mm((q + 1) * K)} 0 0 1 ${x + q + 1} ${y}`, 'iron-h', 1.6, 0.7),
      ];
  return [
    shape(ellipse(x, y, q + 5, (q + 5) * K), front('iron'), 'iron-d', 1.6),
    ...gap,
    shape(wall, 'mill-c', 'mill-d', 1.8),
    shape(ellipse(x, face, q, q * K), lit('mill'), 'mill-d', 1.4),
    ...(engaged ? smear(x, face, q, spin) : arms(x, face, q, spin)),
    shape(ellipse(x, face, PULLEY_R * 0.27, PULLEY_R * 0.27 * K), dome('iron'), 'iron-d', 1.6),
    fill(ellipse(x, face, PULLEY_R * 0.11, PULLEY_R * 0.11 * K), 'mill-b'),
  ];
}

const smear = (x: number, y: number, q: number, spin: number): Drawing =>
  SMEARS.flatMap(([share, width, alpha]) =>
    [0, 1, 2].map((i) => {
      const from = spin + i * ARM_TURN + 0.3;
      return stroke(arc(x, y, q * share, q * share * K, from, from + 1.4), 'mill-d', width, alpha, ROUND);
    }),
  );

function arms(x: number, y: number, q: number, spin: number): Drawing {
  return repeat(3, (i) => {
    const angle = spin + i * ARM_TURN + 0.5;
    const at = (share: number, aside: number): PointMm => [
      x + Math.cos(angle + aside) * q * share,
      y + Math.sin(angle + aside) * q * share * K,
    ];
    const rivet = at(0.72, 0);
    return [
      shape(polygon([at(0.3, -0.4), at(0.86, -0.24), at(0.86, 0.24), at(0.3, 0.4)]), 'cast-c', 'mill-d', 1.4),
      shape(ellipse(rivet[0], rivet[1], 5.5, 3), 'mill-a', 'mill-d', 1.2),
    ];
  });
}
