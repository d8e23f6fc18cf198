/** How far the picture has to move, CSS pixels, so that the ring of what has focus is seen: into it, and from under things. */
import type { PointMm } from '../../layout/layout';

/** The ring, and a little round it. */
const RING_PX = 8;

type Held = (dx: number, dy: number) => PointMm;

/** How far a span has to go to lie in another; of a longer one its beginning is shown. */
const into = (from: number, to: number, least: number, most: number): number =>
  Math.max(least - from, Math.min(0, most - to));

function ringOf(element: Element): DOMRect {
  const { x, y, width, height } = element.getBoundingClientRect();
  return new DOMRect(x - RING_PX, y - RING_PX, width + 2 * RING_PX, height + 2 * RING_PX);
}

function intoHost(ring: DOMRect, root: Element): PointMm {
  const host = root.getBoundingClientRect();
  return [
    into(ring.left, ring.right, host.left, host.right),
    into(ring.top, ring.bottom, host.top, host.bottom),
  ];
}

export const intoPicture = (element: Element, root: Element): PointMm => intoHost(ringOf(element), root);

/** The shortest way from under a form or a button over the picture, of those it can go without leaving it. */
export function fromUnder(element: Element, root: Element, held: Held): PointMm {
  const ring = ringOf(element);
  let over = document.elementFromPoint(ring.x + ring.width / 2, ring.y + ring.height / 2);
  if (over === null || element.parentElement?.contains(over)) return [0, 0];
  while (over.parentElement && !over.parentElement.contains(root)) over = over.parentElement;
  const { left, right, top, bottom } = over.getBoundingClientRect();
  const ways: PointMm[] = [
    [right - ring.left, 0],
    [left - ring.right, 0],
    [0, bottom - ring.top],
    [0, top - ring.bottom],
  ];
  const goes = ([x, y]: PointMm): boolean => {
    const [toX, toY] = held(x, y);
    const there = new DOMRect(ring.x + x, ring.y + y, ring.width, ring.height);
    return Math.hypot(toX - x, toY - y) < 1 && Math.hypot(...intoHost(there, root)) < 1;
  };
  return ways.filter(goes).sort((a, b) => Math.hypot(...a) - Math.hypot(...b))[0] ?? [0, 0];
}
