/** Where the end of a hose for a can lies on the mat; the charging hose below the other where both are out. */
import type { Layout, PointMm } from '../../layout/layout';
import type { BayFrame, CanInlet } from '../bayFrame';

/** Between two ends, mm: room for a finger on each. */
const ENDS_APART_MM = 50;

export function freeEndAt(layout: Layout, frame: BayFrame, inlet: CanInlet): PointMm {
  const [x, y] = layout.mat.rest.utility;
  const isSecond = inlet === 'charging' && frame.hoses.some(({ id }) => id === 'utility');
  return [x, isSecond ? y + ENDS_APART_MM : y];
}
