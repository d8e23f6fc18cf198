/** What a trace of the browser says of its frames: the main thread's own time between one animation frame and the next. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds; `tdur` is processor time, which a busy machine does not stretch. */
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Two animation callbacks nearer than this belong to one frame, µs. */
const ONE_FRAME_US = 3000;

/** Milliseconds of each frame, of the process that has the most of them. */
export function frameTimes(events: readonly TraceEvent[]): number[] {
  const key = ({ pid, tid }: TraceEvent): string => `${pid}:${tid}`;
  const threads = new Set(
    events.filter((e) => e.name === 'thread_name' && e.args?.name === 'CrRendererMain').map(key),
  );
  const fired = events.filter((e) => e.name === 'FireAnimationFrame' && e.ph === 'X' && threads.has(key(e)));
  if (fired.length === 0) return [];
  const main = key(fired[0]);
  const starts = fired
    .filter((e) => key(e) === main)
    .map(({ ts }) => ts)
    .sort((a, b) => a - b)
    .filter((ts, i, all) => i === 0 || ts - all[i - 1] > ONE_FRAME_US);
  const tasks = events
    .filter((e) => e.name === 'ThreadControllerImpl::RunTask' && e.ph === 'X' && key(e) === main)
    .sort((a, b) => a.ts - b.ts);
  let next = tasks.findIndex(({ ts }) => ts >= starts[0]);
  return starts.slice(1).map((end) => {
    let us = 0;
    for (; next >= 0 && next < tasks.length && tasks[next].ts < end; next++)
      us += tasks[next].tdur ?? tasks[next].dur ?? 0;
    return us / 1000;
  });
}

export function share(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}
