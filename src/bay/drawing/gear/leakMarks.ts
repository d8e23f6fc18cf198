/**
 * What marks a leak for an eye: oil with dust on it, soap that foams, dye that glows under a lamp. Each about a point,
 * within `r`; what comes with more is added to what there is, so that a larger mark holds the smaller one.
 */
import { grain, seedOf } from '../grain';
import { circle, ellipse } from '../paths';
import { type Drawing, fill, repeat, shape } from '../record';

/** How far a mark reaches about its place in the bay. */
export const MARK_MM = 26;

const BLOBS = 16;
const SPECKS = 26;

/** Oil and dust; `share` 0 none .. 1 as wide as a hand. */
export function oilPatch(id: string, x: number, y: number, r: number, share: number): Drawing {
  if (share <= 0) return [];
  const random = grain(seedOf(id) + 3);
  const blobs = repeat(BLOBS, (i) => {
    const [angle, out, size, squash] = [random() * 6.28, random(), random(), random()];
    const q = r * 0.72 * out * (0.3 + 0.7 * (i / BLOBS));
    const k = r * (0.2 + size * 0.24);
    const blob = ellipse(
      x + Math.cos(angle) * q,
      y + Math.sin(angle) * q * 0.8,
      k,
      k * (0.55 + squash * 0.4),
    );
    return [fill(blob, 'oil', 0.2)];
  }).slice(0, Math.ceil(BLOBS * share));
  const specks = repeat(SPECKS, (i) => {
    const [angle, out, size] = [random() * 6.28, Math.sqrt(random()), random()];
    const q = r * 0.8 * out;
    return fill(
      circle(x + Math.cos(angle) * q, y + Math.sin(angle) * q * 0.8, r * (0.02 + size * 0.035)),
      `lint-${(i % 3) + 1}`,
      0.85,
    );
  }).slice(0, Math.ceil(SPECKS * share));
  const shine = fill(ellipse(x - r * 0.16, y - r * 0.2, r * 0.2, r * 0.06), 'white', 0.3);
  return [...blobs, ...specks, shine];
}

const BUBBLES = 34;
const MOST_LEVEL = 8;

/** Soap water; `level` 0 lies still .. 8 foams over; null: it has had no time yet. */
export function soapFoam(id: string, x: number, y: number, r: number, level: number | null): Drawing {
  const random = grain(seedOf(id) + 4);
  const bubbles = repeat(BUBBLES, () => {
    const [angle, out, size] = [random() * 6.28, Math.sqrt(random()), random()];
    const k = r * (0.05 + size * size * 0.16);
    const [bx, by] = [x + Math.cos(angle) * r * 0.62 * out, y + Math.sin(angle) * r * 0.52 * out];
    return [
      { ...shape(circle(bx, by, k), 'frost', 'frost-d', Math.max(0.7, r * 0.02)), fillAlpha: 0.5 },
      fill(circle(bx - k * 0.34, by - k * 0.36, k * 0.26), 'white'),
    ];
  });
  return [
    fill(ellipse(x, y, r * 0.72, r * 0.56), 'dew', 0.3),
    fill(ellipse(x - r * 0.2, y - r * 0.2, r * 0.28, r * 0.08), 'white', 0.4),
    ...bubbles.slice(0, 2 * Math.round((BUBBLES * (level ?? 0)) / MOST_LEVEL)),
  ];
}

/** Under the lamp: all about is dim, dye glows by `level` 0..8. */
export function dyeGlow(id: string, x: number, y: number, r: number, level: number): Drawing {
  const random = grain(seedOf(id) + 5);
  const share = level / MOST_LEVEL;
  const drops = repeat(14, () => {
    const [angle, out, size] = [random() * 6.28, Math.sqrt(random()), random()];
    return fill(
      ellipse(
        x + Math.cos(angle) * r * 0.6 * out,
        y + Math.sin(angle) * r * 0.5 * out,
        r * (0.06 + size * 0.14),
        r * (0.05 + size * 0.1),
      ),
      'glow',
      0.85,
    );
  });
  const halo = [0.4, 0.62, 0.84].map((k) => fill(circle(x, y, r * k), 'glow', 0.16));
  return [
    fill(circle(x, y, r * 1.25), 'shadow', 0.4),
    ...halo.slice(0, Math.ceil(halo.length * share)),
    ...drops.slice(0, Math.ceil(14 * share)),
  ];
}
