/**
 * Service ports from above. Blank caps are plain and round on both kinds; only their true size differs. Coded shapes
 * and letters show only where a scenario says so. A strap keeps a cap beside its port.
 */
import { isThreaded, letterOf, otherBore } from '../../../layout/bores';
import type { BoreMm, PointMm } from '../../../layout/layout';
import type { CapLook, PortFrame } from '../../bayFrame';
import { letter } from '../badge';
import { turn } from '../matrix';
import { across, dome } from '../paints';
import { circle, roundRect, roundSquare } from '../paths';
import { bar, type Drawing, fill, mm, placed, ROUND, repeat, shape, stroke } from '../record';
import { canister, lineShadow, shadow } from '../solids';

const LIP = 20;
const capRadius = (bore: BoreMm): number => Math.max(13, bore * 1.24);

/** A port as it stands: cap on, or bare with its core showing. */
export function port(bore: BoreMm, at: PointMm, frame: PortFrame): Drawing {
  if (frame.cap === 'missing') return [...barePort(bore, at), ...(frame.strap ? hangingCap(bore, at) : [])];
  return [...(frame.strap ? strap(bore, at) : []), ...capOn(frame.cap, bore, at[0], at[1], LIP, 1)];
}

/** The bare fitting: base, neck, core. */
export function barePort(bore: BoreMm, [x, y]: PointMm): Drawing {
  const r = bore * 0.74;
  const metal = isThreaded(bore) ? 'zinc' : 'alu';
  return [
    ...canister(x, y, r + 4, LIP + 4, 'mill', { elevation: 16 }),
    ...canister(x, y - 7, r, 12, metal, { elevation: 6 }),
    ...(isThreaded(bore)
      ? repeat(3, (i) =>
          stroke(
            `M${mm(x - r)} ${y - 5 + i * 4}A${r} ${r} 0 0 0 ${mm(x + r)} ${y - 5 + i * 4}`,
            'zinc-d',
            1.3,
            0.8,
          ),
        )
      : []),
    fill(circle(x, y - 7, r * 0.55), 'iron-d'),
    fill(circle(x, y - 7, r * 0.22), 'zinc-a'),
  ];
}

export function capOn(look: CapLook, bore: BoreMm, x: number, y: number, lip: number, k: number): Drawing {
  const worn = look === 'swapped' ? otherBore(bore) : bore;
  const r = capRadius(worn) * k;
  const square = look !== 'blank' && letterOf(worn) === 'H';
  const mark: Drawing =
    look === 'letter' || look === 'swapped'
      ? letter(letterOf(worn), x, y, r * 1.18, 'alu-b')
      : look === 'blank'
        ? [stroke(circle(x, y, r * 0.36), 'plas-d', 1.8, 0.8)]
        : [];
  return [...(square ? squareCap(x, y, r, lip) : roundCap(x, y, r, lip)), ...mark];
}

function roundCap(x: number, y: number, r: number, lip: number): Drawing {
  const rib = (i: number) => {
    const dx = -r + 3 + (i * (r * 2 - 6)) / 8;
    const wall = Math.sqrt(Math.max(0, r * r - dx * dx));
    return bar(x + dx, y + wall + 3, x + dx, y + lip - 2 + wall, 'plas-h', 1.2, 0.42);
  };
  return [
    ...canister(x, y, r, lip, 'plas', { elevation: 22 }),
    ...repeat(9, rib),
    stroke(circle(x, y, r - 3), 'plas-h', 2, 0.9),
  ];
}

function squareCap(x: number, y: number, r: number, lip: number): Drawing {
  const wall = roundRect(x - r * 0.95, y - r * 0.95, r * 1.9, r * 1.9 + lip, r * 0.38);
  return [
    ...shadow(wall, 22),
    shape(wall, across('plas'), 'plas-d', 2.2),
    shape(roundSquare(x, y, r * 0.95, 0.2), dome('plas'), 'plas-d', 1.6),
    stroke(roundSquare(x, y, r * 0.74, 0.2), 'plas-h', 2, 0.9),
  ];
}

function strap(bore: BoreMm, [x, y]: PointMm): Drawing {
  const r = capRadius(bore);
  const d = `M${mm(x + r - 3)} ${mm(y + 3)}C${mm(x + r + 20)} ${mm(y - 6)} ${mm(x + r + 22)} ${mm(y + 26)} ${mm(x + r - 4)} ${mm(y + LIP + 10)}`;
  const ring = `M${mm(x - r - 1)} ${mm(y + LIP + 6)}A${r + 1} ${r + 1} 0 0 0 ${mm(x + r + 1)} ${mm(y + LIP + 6)}`;
  return [
    ...lineShadow(d, 5, 12),
    stroke(d, 'rub-d', 6.4, 1, ROUND),
    stroke(d, 'rub-h', 3, 1, ROUND),
    stroke(ring, 'rub-d', 6),
    stroke(ring, 'rub-h', 2.4, 0.9),
  ];
}

function hangingCap(bore: BoreMm, [x, y]: PointMm): Drawing {
  const [hx, hy] = [x + 46, y + 34];
  const d = `M${mm(x + 8)} ${mm(y + 18)}C${mm(x + 30)} ${mm(y + 22)} ${mm(x + 24)} ${mm(y + 4)} ${mm(hx)} ${mm(hy - 6)}`;
  return [
    ...lineShadow(d, 5, 14),
    stroke(d, 'rub-d', 6.4, 1, ROUND),
    stroke(d, 'rub-a', 3.4, 1, ROUND),
    ...placed(capOn('blank', bore, hx, hy, 12, 0.92), turn(28, hx, hy)),
  ];
}
