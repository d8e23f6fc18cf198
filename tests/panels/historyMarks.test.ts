import { describe, expect, test } from 'vitest';
import { gaugeHistory } from '../../src/app/gaugeHistory';
import { isNeedleSettling, isProbeSettling } from '../../src/instruments/isSettling';
import {
  LANE_FRAME,
  LANE_WIDTH,
  laneMinutes,
  lanePath,
  laneRange,
  laneX,
  laneY,
  spanTo,
  spread,
} from '../../src/instruments/stripLane';
import { historyMarks } from '../../src/panels/historyMarks';
import type { Happening } from '../../src/session/corePort';

const happening = (step: number, id: string): Happening => ({ step, id }) as unknown as Happening;

describe('the strip of the last minutes', () => {
  test('has the newest second at its right edge and the oldest kept one at its left', () => {
    const span = spanTo(900, 600);
    expect(laneX(900, span)).toBe(LANE_WIDTH - LANE_FRAME.right);
    expect(laneX(300, span)).toBe(LANE_FRAME.left);
    expect(laneMinutes(span)).toEqual([360, 480, 600, 720, 840]);
    expect(spanTo(5, 600)).toEqual({ from: 0, to: 60 });
  });

  test('breaks the curve where nothing was read, and keeps nought in the picture', () => {
    const range = laneRange([30, Number.NaN, 45]);
    expect(range).toEqual({ from: 0, to: 50 });
    const path = lanePath([0, 1, 2, 3], [30, Number.NaN, 45, 45], spanTo(3, 600), range);
    expect(path.match(/M/g)?.length).toBe(2);
    expect(path).toContain(`,${Math.round(10 * laneY(45, range)) / 10}`);
    expect(laneRange([-8])).toEqual({ from: -10, to: 10 });
    expect(laneRange([-1, 143])).toEqual({ from: -50, to: 150 });
  });

  test('marks that would lie over each other stand side by side, and none runs out of the picture', () => {
    const most = LANE_WIDTH - LANE_FRAME.right;
    expect(spread([100, 100, 110, 400], 25)).toEqual([100, 125, 150, 400]);
    expect(spread([most - 5, most], 25)).toEqual([most - 25, most]);
    expect(spread([], 25)).toEqual([]);
  });

  test('numbers what was done in order, only counts the clutch, and leaves the rest out', () => {
    const marks = historyMarks(
      ['engine-started', 'clutch-in', 'noted', 'coupled', 'clutch-out', 'high-pressure-trip'].map(
        (id, i) => ({ ...happening(50 * i, id), said: id }),
      ),
    );
    expect(marks.map(({ kind, number, second }) => [kind, number, second])).toEqual([
      ['engine', 1, 0],
      ['clutch', null, 1],
      ['hose', 2, 3],
      ['clutch', null, 4],
      ['trip', 3, 5],
    ]);
  });
});

describe('what is kept of the last minutes', () => {
  test('forgets what is older than ten minutes, and on going back what has not happened yet', () => {
    const kept = gaugeHistory();
    kept.note([happening(50, 'coupled'), happening(30_000, 'can-opened')]);
    for (const second of [1, 600, 601]) kept.add(50 * second, () => 7);
    expect(kept.happened().map(({ id }) => id)).toEqual(['coupled', 'can-opened']);
    kept.add(50 * 700, () => 7);
    expect(kept.happened().map(({ id }) => id)).toEqual(['can-opened']);
    kept.add(50 * 500, () => 7);
    expect(kept.happened()).toEqual([]);
    expect(kept.of('lowGauge.gaugePressurePa').seconds).toEqual([500]);
  });
});

test('a needle or a probe that still moves is told from one at rest', () => {
  const seconds = [0, 1, 2, 3, 4, 5, 6];
  expect(isNeedleSettling('low', seconds, [0, 0, 0, 0, 0, 90_000, 150_000])).toBe(true);
  expect(
    isNeedleSettling(
      'low',
      seconds,
      seconds.map(() => 150_000),
    ),
  ).toBe(false);
  expect(isNeedleSettling('high', seconds, [0, 0, 0, 0, 0, 9000, 15_000])).toBe(false);
  expect(isNeedleSettling('low', [], [])).toBe(false);
  expect(isProbeSettling(seconds, [300, 300, 299, 298, 297, 296, 295])).toBe(true);
  expect(isProbeSettling(seconds, [300, 299.9, 299.9, 299.9, 299.9, 299.8, 299.8])).toBe(false);
});
