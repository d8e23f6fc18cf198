/** How far the picture has to move, CSS pixels, so that the ring of what has focus is seen: into it, and from under things. */
import type { PointMm } from '../../layout/layout';

/** The ring, and a little round it. */
const RING_PX = 8;

/** How far a span has to go to lie in another; of a longer one its beginning is shown. */
const into = (from: number, to: number, least: number, most: number): number =>
  Math.max(least - from, Math.min(0, most - to));

function edgesOf(element: Element, round = 0): readonly [number, number, number, number] {
  const { left, top, right, bottom } = element.getBoundingClientRect();
  return [left - round, top - round, right + round, bottom + round];
}

/** Of one that has gone some way already. */
export function intoPicture(element: Element, root: Element, [x, y]: PointMm = [0, 0]): PointMm {
  const [left, top, right, bottom] = edgesOf(element, RING_PX);
  const [l, t, r, b] = edgesOf(root);
  return [into(left + x, right + x, l, r), into(top + y, bottom + y, t, b)];
}

/** The shortest way from under a form or a button over the picture, of those it can go without leaving it. */
export function fromUnder(
  element: Element,
  root: Element,
  held: (dx: number, dy: number) => PointMm,
): PointMm {
  const [left, top, right, bottom] = edgesOf(element, RING_PX);
  let over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
  if (over === null || element.parentElement?.contains(over)) return [0, 0];
  while (over.parentElement && !over.parentElement.contains(root)) over = over.parentElement;
  const [l, t, r, b] = edgesOf(over);
  const ways: PointMm[] = [
    [r - left, 0],
    [l - right, 0],
    [0, b - top],
    [0, t - bottom],
  ];
  const goes = (way: PointMm): boolean => {
    const [x, y] = held(...way);
    return Math.hypot(x - way[0], y - way[1], ...intoPicture(element, root, way)) < 1;
  };
  return ways.filter(goes).sort((a, b) => Math.hypot(...a) - Math.hypot(...b))[0] ?? [0, 0];
}
