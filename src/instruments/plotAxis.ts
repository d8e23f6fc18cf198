/** The time axis that all plots of one session share: folded where nobody did anything and every lane stands still. */
import { foldedTime, type TimeAxis } from './foldedTime';
import { isFlat } from './isFlat';
import type { Lane } from './TimePlot';

export function plotAxis(lanes: readonly Lane[], actionsS: readonly number[], endS: number): TimeAxis {
  return foldedTime(endS, actionsS, (fromS, toS) =>
    lanes.every(
      (lane) => isFlat(lane, fromS, toS) && (!lane.other || isFlat({ ...lane, ...lane.other }, fromS, toS)),
    ),
  );
}
