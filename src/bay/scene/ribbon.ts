/**
 * The outline of a band of one width along a way, its first end rounded off, to be filled. For what is drawn anew in every
 * picture: filled it costs a third of the same way stroked, as its corners are few. Ways bend wider than the band is.
 */
import type { PointMm } from '../../layout/layout';
import { Way } from '../ink/way';

/** Where the first end is rounded: shares of the half width along the way and across it. */
const END: readonly PointMm[] = [
  [-0.7, 0.7],
  [-1, 0],
  [-0.7, -0.7],
];

export function ribbon(way: readonly PointMm[], width: number): Way {
  const outline = new Way();
  const half = width / 2;
  const last = way.length - 1;
  const along = way.map((_, i): PointMm => {
    const [a, b] = [way[Math.max(0, i - 1)], way[Math.min(last, i + 1)]];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const far = Math.sqrt(dx * dx + dy * dy) || 1;
    return [(dx / far) * half, (dy / far) * half];
  });
  const to = (i: number, share: number, across: number): void => {
    const [[x, y], [tx, ty]] = [way[i], along[i]];
    outline.lineTo(x + tx * share - ty * across, y + ty * share + tx * across);
  };
  for (let i = last; i >= 0; i--) to(i, 0, 1);
  for (const [share, across] of END) to(0, share, across);
  for (let i = 0; i <= last; i++) to(i, 0, -1);
  outline.closed();
  return outline;
}
