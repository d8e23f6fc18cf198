/** What a trace of the browser says of its frames: the main thread's own time for each. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds; `tdur` is processor time, which a busy machine does not stretch. */
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: {
    readonly name?: string;
    readonly chrome_mojo_event_info?: { readonly mojo_interface_tag?: string };
  };
}

/** Messages of whoever drives the browser. */
const DRIVER = 'blink.mojom.DevToolsSession';
const TASK = 'ThreadControllerImpl::RunTask';

/**
 * Milliseconds of each frame, of the page that shows the first: from one task that runs animation callbacks to the next. What
 * whoever drives the browser asks of the page is no part of it.
 */
export function frameTimes(events: readonly TraceEvent[]): number[] {
  const key = ({ pid, tid }: TraceEvent): string => `${pid}:${tid}`;
  const threads = new Set(
    events.filter((e) => e.name === 'thread_name' && e.args?.name === 'CrRendererMain').map(key),
  );
  const fired = events.filter((e) => e.name === 'FireAnimationFrame' && e.ph === 'X' && threads.has(key(e)));
  if (fired.length === 0) return [];
  const main = key(fired[0]);
  const ours = events.filter((e) => e.ph === 'X' && key(e) === main).sort((a, b) => a.ts - b.ts);
  const asked = ours.filter((e) => e.args?.chrome_mojo_event_info?.mojo_interface_tag === DRIVER);
  const holds = (task: TraceEvent, { ts }: TraceEvent): boolean =>
    ts >= task.ts && ts < task.ts + (task.dur ?? 0);
  const shows = ours.filter((e) => e.name === 'FireAnimationFrame');
  const times: number[] = [];
  let [nextAsked, nextShow] = [0, 0];
  for (const task of ours.filter((e) => e.name === TASK)) {
    while (nextAsked < asked.length && asked[nextAsked].ts < task.ts) nextAsked++;
    while (nextShow < shows.length && shows[nextShow].ts < task.ts) nextShow++;
    if (nextShow < shows.length && holds(task, shows[nextShow])) times.push(0);
    if (times.length === 0 || (nextAsked < asked.length && holds(task, asked[nextAsked]))) continue;
    times[times.length - 1] += (task.tdur ?? task.dur ?? 0) / 1000;
  }
  return times.slice(0, -1);
}

/** What `part` of the values, 0 to 1, are not over; NaN of none. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}
