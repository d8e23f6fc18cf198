/** Puts a label in the picture: whole, clear of the buttons in the corners and of the line above, on no other label. */
import type { PointMm } from '../../layout/layout';

/** Middle and half size, CSS pixels. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** Buttons and the line stand above; on a narrow picture the buttons stand below. */
const NARROW_PX = 480;
const CLEAR_PX = { wide: [50, 4], narrow: [36, 58] } as const;
const GAP_PX = 3;

export function placeClear(element: HTMLElement, [left, top]: PointMm, others: readonly Box[]): Box {
  const host = element.parentElement ?? element;
  const halves = { halfWidth: element.offsetWidth / 2, halfHeight: element.offsetHeight / 2 };
  const box = clearBox({ x: left, y: top, ...halves }, host.clientWidth, host.clientHeight, others);
  element.style.left = `${box.x.toFixed(0)}px`;
  element.style.top = `${box.y.toFixed(0)}px`;
  return box;
}

/** Where it would lie on others it goes up until it does not. */
export function clearBox(box: Box, width: number, height: number, others: readonly Box[]): Box {
  const [above, below] = CLEAR_PX[width < NARROW_PX ? 'narrow' : 'wide'];
  const x = Math.max(box.halfWidth + GAP_PX, Math.min(width - box.halfWidth - GAP_PX, box.x));
  let y = Math.max(above + box.halfHeight, Math.min(height - below - box.halfHeight, box.y));
  for (const other of [...others].sort((a, b) => b.y - a.y))
    if (overlaps({ ...box, x, y }, other)) y = other.y - other.halfHeight - box.halfHeight - GAP_PX;
  return { ...box, x, y };
}

const overlaps = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) < a.halfWidth + b.halfWidth && Math.abs(a.y - b.y) < a.halfHeight + b.halfHeight;
