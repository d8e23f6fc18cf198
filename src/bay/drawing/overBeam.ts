/**
 * The end of a refrigerant line that crosses the radiator support on top: drawn again over the beam from just behind it
 * to the condenser, with a rubber sleeve where it rises and an iron clip on the beam, so every line can be followed.
 */
import { stationAt } from '../../layout/course';
import type { Shell } from '../../layout/layout';
import { down } from './paints';
import { roundRect } from './paths';
import { type Drawing, shape } from './record';
import { pathOf, type Run } from './run';
import { BEAM_HEIGHT } from './shell/beam';
import { bolt, lineShadow } from './solids';
import { collar, tube } from './tubes';

/** How far behind the beam the line starts to rise. */
const RISE_MM = 20;
const SCAN_MM = 2;

export function overBeam(run: Run, shell: Shell): Drawing {
  const { from, to, edge } = frontStretch(run, shell.beam - RISE_MM);
  const d = pathOf(run, from, to);
  const clip = stationAt(run.course, nearestToY(run, from, to, shell.beam + BEAM_HEIGHT / 2));
  const half = run.width * 0.5 + 6;
  return [
    ...lineShadow(d, run.width, 16),
    ...tube(d, run.width, 'alu', 'round'),
    ...collar(stationAt(run.course, edge), 26, run.width + 6, 'rub', [-0.2, 0.2]),
    shape(roundRect(clip.x - half, shell.beam + 13, half * 2 + 16, 20, 5), down('iron'), 'iron-d', 1.8),
    ...bolt(clip.x + half + 7, shell.beam + 23, 5),
  ];
}

/** The stretch in front of `y` that holds the line's front end, and the length at which it begins. */
function frontStretch(
  run: Run,
  y: number,
): { readonly from: number; readonly to: number; readonly edge: number } {
  const { lengthMm } = run.course;
  const startsInFront = stationAt(run.course, 0).y > y;
  let edge = startsInFront ? 0 : lengthMm;
  const step = startsInFront ? SCAN_MM : -SCAN_MM;
  while (edge + step >= 0 && edge + step <= lengthMm && stationAt(run.course, edge + step).y >= y)
    edge += step;
  return startsInFront ? { from: 0, to: edge, edge } : { from: edge, to: lengthMm, edge };
}

function nearestToY(run: Run, from: number, to: number, y: number): number {
  let best = from;
  for (let along = from; along <= to; along += SCAN_MM) {
    if (Math.abs(stationAt(run.course, along).y - y) < Math.abs(stationAt(run.course, best).y - y))
      best = along;
  }
  return best;
}
