/**
 * A live strip chart on canvas (uPlot): a fixed span of seconds that moves with the job clock, one sample a second.
 * Colours are read from the page's own tokens.
 */
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';

export interface Strip {
  /** A sample at job time `seconds`; a second already drawn is left as it was. NaN leaves a gap. */
  add(seconds: number, values: readonly number[]): void;
  dispose(): void;
}

const HEIGHT_PX = 110;

const token = (name: string): string => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

function options(width: number, count: number): uPlot.Options {
  const axis = { stroke: () => token('--ink2'), font: '12px sans-serif', grid: { stroke: () => token('--line'), width: 0.8 }, ticks: { show: false } };
  return {
    width,
    height: HEIGHT_PX,
    legend: { show: false },
    cursor: { show: false },
    padding: [8, 6, 0, 0],
    scales: { x: { time: false }, y: { range: (_, low, high) => [Math.min(low, 0), Math.max(high, low + 10)] } },
    axes: [
      { ...axis, size: 22, values: (_, marks) => marks.map((mark) => `${Math.round(mark / 60)} min`), space: 70 },
      { ...axis, size: 38, space: 28 },
    ],
    series: [{}, ...Array.from({ length: count }, () => ({ stroke: () => token('--ink'), width: 2, spanGaps: false, points: { show: false } }))],
  };
}

export function makeStrip(host: HTMLElement, count: number, spanS: number): Strip {
  const data: (number | null)[][] = Array.from({ length: count + 1 }, () => []);
  const plot = new uPlot(options(Math.max(120, host.clientWidth), count), data as uPlot.AlignedData, host);
  const watcher = new ResizeObserver(() => plot.setSize({ width: Math.max(120, host.clientWidth), height: HEIGHT_PX }));
  watcher.observe(host);
  return {
    add(seconds, values) {
      const second = Math.floor(seconds);
      const times = data[0];
      const last = times.length > 0 ? (times[times.length - 1] as number) : -1;
      if (second === last) return;
      if (second < last) for (const column of data) column.length = 0;
      times.push(second);
      values.forEach((value, i) => data[i + 1].push(Number.isFinite(value) ? value : null));
      while ((times[0] as number) < second - spanS) for (const column of data) column.shift();
      plot.setData(data as uPlot.AlignedData, false);
      plot.setScale('x', { min: Math.max(0, second - spanS), max: Math.max(second, 60) });
    },
    dispose() {
      watcher.disconnect();
      plot.destroy();
    },
  };
}
