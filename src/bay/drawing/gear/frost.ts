/**
 * Frost: a thin coat and crystals, which are strokes with side branches that feather past the edge; no beads. Cover 0..1
 * is how much of a line or wall is coated, counted from its cold end; grain comes from the id, so the same state is the
 * same picture.
 */
import { stationAt } from '../../../layout/course';
import { grain, seedOf } from '../grain';
import { move } from '../matrix';
import { FROST_COAT } from '../paints';
import { circle } from '../paths';
import { type Drawing, type DrawRecord, fill, mm, ROUND, stroke } from '../record';
import { pathOf, type Run } from '../run';
import { type Pot, potOutline } from './pot';

/** One crystal: a stroke and pairs of side branches. */
export function frostSpike(x: number, y: number, angle: number, length: number, pairs: number): string {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  let d = `M${mm(x)} ${mm(y)}L${mm(x + c * length)} ${mm(y + s * length)}`;
  for (let i = 0; i < pairs; i++) {
    const share = 0.4 + i * 0.26;
    const [bx, by] = [x + c * length * share, y + s * length * share];
    const branch = length * (0.42 - i * 0.1);
    for (const side of [1, -1])
      d += `M${mm(bx)} ${mm(by)}L${mm(bx + Math.cos(angle + side * 0.95) * branch)} ${mm(by + Math.sin(angle + side * 0.95) * branch)}`;
  }
  return d;
}

const COATS = [
  [0, 0.34, 1.11],
  [0.03, 0.4, 1],
  [0.07, 0.5, 0.9],
] as const;
const SHADES = [
  [0.2, 0.5],
  [0.27, 0.34],
  [0.32, 0.18],
] as const;

/** Frost on a line from `from` to `to` (shares of its length). */
export function frostedLine(run: Run, from: number, to: number): Drawing {
  const [a, b] = [from * run.course.lengthMm, to * run.course.lengthMm];
  const length = b - a;
  if (length < 6) return [];
  const w = run.width * 1.12;
  const solid = to < 1 ? b - Math.min(PATCHY_MM, length / 2) : b;
  const coat = COATS.map(([inset, alpha, k]) =>
    stroke(pathOf(run, a + length * inset, solid - length * inset), 'frost', mm(w * k), alpha, ROUND),
  );
  const shade = SHADES.map(([shift, k]) => ({
    ...stroke(pathOf(run, a + length * 0.05, solid - length * 0.05), 'frost-d', mm(w * k), 0.16, ROUND),
    matrix: move(mm(w * shift), mm(w * shift)),
  }));
  const patches = to < 1 ? patchesOf(run, solid, b) : '';
  const ragged = COATS.map(([, alpha, k]) => stroke(patches, 'frost', mm(w * k * 0.94), alpha, ROUND));
  return [...coat, ...ragged, ...shade, ...lineCrystals(run, a, b, w)].filter((record) => record.d !== '');
}

/** Its warm end is ragged: over this length patches take the place of the coat. */
const PATCHY_MM = 90;
const PATCH_MM = 9;

/** Cells between two lengths that are coated; one that is, stays so while the coat grows. */
function patchesOf(run: Run, from: number, to: number): string {
  const random = grain(seedOf(run.line.id) + 7);
  let patches = '';
  for (let q = 0; q < to; q += PATCH_MM) {
    const needs = random();
    if (q >= from && needs < (to - q) / (to - from)) patches += pathOf(run, q, q + PATCH_MM * 0.6);
  }
  return patches;
}

function lineCrystals(run: Run, a: number, b: number, w: number): (DrawRecord & { readonly d: string })[] {
  const random = grain(seedOf(run.line.id));
  let [edge, fine, skin, dark] = ['', '', '', ''];
  for (let q = 0; q < run.course.lengthMm; q += 3.1) {
    const t = stationAt(run.course, q);
    const [nx, ny] = [-t.ty, t.tx];
    const draws = [
      random(),
      random(),
      random(),
      random(),
      random(),
      random(),
      random(),
      random(),
      random(),
      random(),
      random(),
    ];
    if (q < a || q > b) continue;
    const fade = Math.min(1, Math.min(q - a, b - q) / 60 + 0.35);
    for (const [i, side] of [1, -1].entries()) {
      const angle = Math.atan2(ny * side, nx * side) + (draws[i * 3] - 0.5) * 1.1;
      const length = (5 + draws[i * 3 + 1] * 8.5) * fade;
      const spike = frostSpike(
        t.x + nx * side * w * 0.44,
        t.y + ny * side * w * 0.44,
        angle,
        length,
        draws[i * 3 + 2] < 0.5 ? 2 : 1,
      );
      if (draws[i * 3 + 2] < 0.5) edge += spike;
      else fine += spike;
    }
    if (draws[6] > 0.5) continue;
    const off = (draws[7] - 0.5) * w * 0.72;
    const spike = frostSpike(t.x + nx * off, t.y + ny * off, draws[8] * 6.28, 5 + draws[9] * 5, 2);
    if (nx * off + ny * off < 0 || draws[10] < 0.5) skin += spike;
    else dark += spike;
  }
  return [
    stroke(dark, 'frost-d', 1, 0.9, ROUND),
    stroke(skin, 'alu-h', 1.05, 1, ROUND),
    stroke(fine, 'frost', 1, 0.85, ROUND),
    stroke(edge, 'frost', 1.35, 1, ROUND),
  ];
}

/** Frost on a pot; cover thickens the coat and adds crystals. */
export function frostedPot(pot: Pot, cover: number): Drawing {
  const { x, y, r, lip } = pot;
  const random = grain(seedOf(pot.id));
  let [edge, skin, dark, fine] = ['', '', '', ''];
  for (let i = 0; i < 120; i++) {
    const dx = (random() * 2 - 1) * (r - 9);
    const half = Math.sqrt(Math.max(0, r * r - dx * dx)) - 7;
    const py = y - half + random() * (lip + 2 * half);
    const spike = frostSpike(x + dx, py, random() * 6.28, 6 + random() * 8, 3);
    const [shade, pick] = [random() * 0.9, random()];
    if (i >= 120 * cover) continue;
    if (shade < dx / r + (py > y + half ? 0.1 : -0.25)) dark += spike;
    else if (pick < 0.6) skin += spike;
    else fine += spike;
  }
  const grow = (count: number, at: () => readonly [number, number, number], longest: number): void => {
    for (let i = 0; i < count; i++) {
      const [px, py, angle] = at();
      const spike = frostSpike(
        px,
        py,
        angle + (random() - 0.5) * 1.1,
        3 + random() * longest,
        random() < 0.5 ? 2 : 1,
      );
      if (i < count * cover) edge += spike;
    }
  };
  const onRim = (half: 1 | -1, dy: number) => (): readonly [number, number, number] => {
    const angle = half * random() * Math.PI;
    return [x + Math.cos(angle) * (r - 2), y + dy + Math.sin(angle) * (r - 2), angle];
  };
  grow(96, onRim(-1, 0), 10);
  grow(64, onRim(1, lip), 7);
  grow(
    44,
    () => {
      const left = random() < 0.5;
      return [x + (left ? -1 : 1) * (r - 2), y + random() * lip, left ? Math.PI : 0];
    },
    6,
  );
  return [
    fill(potOutline(pot), FROST_COAT, Math.min(1, 0.25 + cover)),
    fill(circle(x, y, r - 2), 'frost', 0.5 * cover),
    stroke(
      `M${mm(x - r + 2)} ${mm(y + 3)}A${r - 2} ${r - 2} 0 0 0 ${mm(x + r - 2)} ${mm(y + 3)}`,
      'frost-d',
      7,
      0.18,
    ),
    stroke(
      `M${mm(x - r + 2)} ${mm(y + 2)}A${r - 2} ${r - 2} 0 0 0 ${mm(x + r - 2)} ${mm(y + 2)}`,
      'frost-d',
      3,
      0.3,
    ),
    stroke(dark, 'frost-d', 1.15, 0.95, ROUND),
    stroke(fine, 'frost-d', 1, 0.6, ROUND),
    stroke(skin, 'alu-h', 1.2, 1, ROUND),
    stroke(edge, 'frost', 1.4, 1, ROUND),
  ].filter((record) => record.d !== '');
}
