/**
 * A live strip chart on canvas (uPlot): a fixed span of seconds that moves with the job clock, one sample a second.
 * Colours are read from the page's own tokens.
 */
import uPlot from 'uplot';
import { writeClock } from './displayUnits';
import 'uplot/dist/uPlot.min.css';

export interface Strip {
  /** The curve up to job time `second`; NaN leaves a gap. */
  show(second: number, seconds: readonly number[], values: readonly number[]): void;
  dispose(): void;
}

const HEIGHT_PX = 110;

const token = (name: string): string =>
  getComputedStyle(document.documentElement).getPropertyValue(name).trim();

function options(width: number): uPlot.Options {
  const axis = {
    stroke: () => token('--ink2'),
    font: '12px sans-serif',
    grid: { stroke: () => token('--line'), width: 0.8 },
    ticks: { show: false },
  };
  return {
    width,
    height: HEIGHT_PX,
    legend: { show: false },
    cursor: { show: false },
    padding: [8, 20, 0, 0],
    scales: {
      x: { time: false },
      y: { range: (_, low, high) => [Math.min(low, 0), Math.max(high, low + 10)] },
    },
    axes: [
      { ...axis, size: 22, values: (_, marks) => marks.map((mark) => writeClock(mark)), space: 64 },
      { ...axis, size: 38, space: 28 },
    ],
    series: [{}, { stroke: () => token('--ink'), width: 2, spanGaps: false, points: { show: false } }],
  };
}

export function makeStrip(host: HTMLElement, spanS: number): Strip {
  const widthNow = (): number => Math.max(120, host.clientWidth);
  const plot = new uPlot(options(widthNow()), [[], []], host);
  const watcher = new ResizeObserver(() => plot.setSize({ width: widthNow(), height: HEIGHT_PX }));
  watcher.observe(host);
  let shown = '';
  return {
    show(second, seconds, values) {
      const key = `${second} ${seconds.length} ${values[0]}`;
      if (key === shown) return;
      shown = key;
      const column = values.map((value) => (Number.isFinite(value) ? value : null));
      plot.batch(() => {
        plot.setData([[...seconds], column], true);
        plot.setScale('x', { min: Math.max(0, second - spanS), max: Math.max(second, 60) });
      });
    },
    dispose() {
      watcher.disconnect();
      plot.destroy();
    },
  };
}
