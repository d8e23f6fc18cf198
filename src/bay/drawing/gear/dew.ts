/** Dew: a film with round drops and a few drips at the lower edge; cover 0..1 as for frost. */
import { stationAt } from '../../../layout/course';
import { grain, seedOf } from '../grain';
import { circle, ellipse } from '../paths';
import { type Drawing, type DrawRecord, fill, mm, shape, stroke } from '../record';
import { pathOf, type Run } from '../run';
import { type Pot, potOutline } from './pot';

/** Dew on a line from `from` to `to`. */
export function sweatingLine(run: Run, from: number, to: number): Drawing {
  const random = grain(seedOf(run.line.id) + 1);
  const [a, b] = [from * run.course.lengthMm, to * run.course.lengthMm];
  if (b - a < 6) return [];
  const w = run.width * 1.1;
  const drops: DrawRecord[] = [];
  for (let q = 0; q < run.course.lengthMm; q += 10) {
    const t = stationAt(run.course, q + random() * 8);
    const off = (random() - 0.5) * w * 0.8;
    const size = 1.8 + random() * 2.2;
    if (q >= a && q <= b) drops.push(...drop(t.x - t.ty * off, t.y + t.tx * off, size));
  }
  for (let q = a + 18; q < b; q += 52) {
    const t = stationAt(run.course, q);
    drops.push(...drip(t.x + w * 0.28, t.y + w * 0.5, 4.4));
  }
  return [stroke(pathOf(run, a, b), 'dew', mm(w * 0.86), 0.34), ...drops];
}

const drop = (x: number, y: number, size: number): Drawing => [
  fill(ellipse(x + 0.8, y + 1, size, size * 1.1), 'shadow', 0.35),
  shape(ellipse(x, y, size, size * 1.15), 'dew', 'dew-d', 0.8),
  fill(circle(x - size * 0.3, y - size * 0.35, size * 0.34), 'white'),
];

const drip = (x: number, y: number, size: number): Drawing => [
  shape(
    `M${mm(x)} ${mm(y - size * 1.5)}C${mm(x + size * 1.3)} ${mm(y + size * 0.3)} ${mm(x + size)} ${mm(y + size * 1.5)} ${mm(x)} ${mm(y + size * 1.5)}` +
      `C${mm(x - size)} ${mm(y + size * 1.5)} ${mm(x - size * 1.3)} ${mm(y + size * 0.3)} ${mm(x)} ${mm(y - size * 1.5)}Z`,
    'dew',
    'dew-d',
    1.1,
  ),
  fill(circle(x - size * 0.3, y + size * 0.2, size * 0.26), 'white'),
];

export function sweatingPot(pot: Pot, cover: number): Drawing {
  const { x, y, r, lip } = pot;
  const random = grain(seedOf(pot.id) + 1);
  const drops: DrawRecord[] = [];
  for (let i = 0; i < 60; i++) {
    const here = drop(
      x + (random() - 0.5) * 2 * r * 0.86,
      y + r * 0.5 + random() * (lip * 0.9),
      1.8 + random() * 2.6,
    );
    if (i < 60 * cover) drops.push(...here);
  }
  for (let i = 0; i < 22; i++) {
    const angle = random() * 6.28;
    const q = Math.sqrt(random()) * r * 0.85;
    const here = drop(x + Math.cos(angle) * q, y + Math.sin(angle) * q, 1.6 + random() * 1.8);
    if (i < 22 * cover) drops.push(...here);
  }
  for (let i = 0; i < Math.round(5 * cover); i++)
    drops.push(...drip(x - r * 0.7 + i * r * 0.34, y + lip + r * 0.62 + random() * 20, 5.5));
  return [fill(potOutline(pot), 'dew', 0.22 * cover), ...drops];
}
