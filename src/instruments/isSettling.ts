/** Whether a reading is still on its way: by how much it has moved in the last seconds. */
import type { FaceKind } from './gaugeScale';

/** Moved by more than a fiftieth of what the face shows, Pa [guess]. */
const GAUGE_PA: Readonly<Record<FaceKind, number>> = { low: 20_000, high: 70_000 };
const GAUGE_S = 2;
/** As much as a reader's eye follows on the display [guess]. */
const PROBE_K = 0.4;
const PROBE_S = 5;

function moved(seconds: readonly number[], values: readonly number[], withinS: number): number {
  const last = values.length - 1;
  if (last < 1) return 0;
  const from = seconds.findLastIndex((second) => second <= seconds[last] - withinS);
  return from < 0 ? 0 : Math.abs(values[last] - values[from]);
}

export const isNeedleSettling = (
  face: FaceKind,
  seconds: readonly number[],
  values: readonly number[],
): boolean => moved(seconds, values, GAUGE_S) > GAUGE_PA[face];

export const isProbeSettling = (seconds: readonly number[], values: readonly number[]): boolean =>
  moved(seconds, values, PROBE_S) > PROBE_K;
