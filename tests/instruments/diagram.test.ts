import { describe, expect, test } from 'vitest';
import { saturationOf } from '../../src/app/saturationOf';
import { foldedTime } from '../../src/instruments/foldedTime';
import { arrowsAlong, strokesOf } from '../../src/instruments/loop/flowArrows';
import { firstCell, levelsAlong, phaseOf } from '../../src/instruments/loop/phases';
import { besides, endsOf, pointOf, SPOTS } from '../../src/instruments/loop/spots';
import {
  cyclePath,
  domePath,
  isotherm,
  phX,
  phY,
  pressureMarks,
  qualityLine,
  vapourLine,
} from '../../src/instruments/phGeometry';
import { clusterPins } from '../../src/instruments/pinPlaces';
import { refrigerant } from '../../src/refrigerant/fluids';

const line = saturationOf('R-134a');

describe('the pressure-enthalpy diagram', () => {
  test('has a logarithmic pressure and a linear enthalpy', () => {
    expect(phY(100_000) - phY(1_000_000)).toBeCloseTo(phY(200_000) - phY(2_000_000), 0);
    expect(phX(250_000) - phX(200_000)).toBeCloseTo(phX(450_000) - phX(400_000), 0);
    expect(phY(5_000_000)).toBeLessThan(phY(100_000));
  });

  test('has marks of its own for each unit, from the foot of the axis to its top', () => {
    for (const unit of ['psi', 'kPa', 'bar'] as const) {
      const places = pressureMarks(unit).map(({ pressurePa }) => phY(pressurePa));
      expect([...places].sort((a, b) => b - a)).toEqual(places);
      expect(Math.abs(places[0] - phY(100_000))).toBeLessThan(5);
      expect(Math.abs(places[5] - phY(5_000_000))).toBeLessThan(5);
    }
    expect(pressureMarks('psi')[3].pressurePa).toBeCloseTo(150 * 6894.757, 0);
  });

  test('draws the dome from the liquid line over the top to the vapour line', () => {
    const path = domePath(line);
    expect(
      path.startsWith(`M${phX(line.liquidEnthalpyJPerKg[line.pressurePa.findIndex((p) => p >= 90_000)])}`),
    ).toBe(true);
    expect(path).toContain('Q');
    expect(path).not.toContain('NaN');
  });

  test('puts the ends of a temperature line on the dome', () => {
    const stretch = isotherm(line, 293.15);
    const i = line.temperatureK.findIndex((t) => Math.abs(t - 293.15) < 0.5);
    expect(stretch).toEqual({
      y: phY(line.pressurePa[i]),
      left: phX(line.liquidEnthalpyJPerKg[i]),
      right: phX(line.vapourEnthalpyJPerKg[i]),
    });
    expect(isotherm(line, 900)).toBeNull();
  });

  test('puts each state point where its own pressure and enthalpy say', () => {
    const points = [
      [300_000, 410_000],
      [1_300_000, 450_000],
      [1_300_000, 270_000],
      [300_000, 270_000],
    ].map(([pressurePa, enthalpyJPerKg]) => ({ pressurePa, enthalpyJPerKg, temperatureK: 300 }));
    const path = cyclePath(points);
    for (const point of points)
      expect(path).toContain(`${phX(point.enthalpyJPerKg)},${phY(point.pressurePa)}`);
  });
});

describe('lines of the diagram', () => {
  const i = line.pressurePa.findIndex((pressure) => pressure >= 100_000);

  test('a share of vapour lies between the edges of the dome in that share', () => {
    const [liquid, vapour] = [line.liquidEnthalpyJPerKg[i], line.vapourEnthalpyJPerKg[i]];
    const foot = `M${phX(liquid + 0.4 * (vapour - liquid))},${phY(line.pressurePa[i])}`;
    expect(qualityLine(line, 0.4).startsWith(foot)).toBe(true);
  });

  test('a temperature leaves the dome at its vapour edge and goes on where the tables have it', () => {
    const [first, ...rest] = vapourLine(line, 313.15).slice(1).split('L');
    expect(Math.abs(Number(first.split(',')[0]) - (isotherm(line, 313.15)?.right ?? 0))).toBeLessThan(0.6);
    const isobar = refrigerant('R-134a').isobar();
    isobar.setPressurePa(100_000);
    const foot = `${phX(isobar.enthalpyFromTemperatureJPerKg(313.15))},${phY(100_000)}`;
    expect(rest[rest.length - 1]).toBe(foot);
  });
});

describe('phases along the loop', () => {
  test('a film of liquid is seen, a full cell is liquid, a dry one is vapour', () => {
    expect([0, 0.01, 0.5, 1].map(phaseOf)).toEqual(['vapour', 'mixture', 'mixture', 'liquid']);
    const levels = levelsAlong([0.25, 0.01, 0]);
    expect(levels).toEqual([0.5, 0.3, 0.05, 0]);
  });

  test('a coil that boils dry half way is dry from there on', () => {
    expect(firstCell([0.4, 0.2, 0, 0], 'vapour')).toBe(2);
    expect(firstCell([0.4, 0.2, 0.1, 0.1], 'vapour')).toBeNull();
  });
});

describe('places of the loop', () => {
  test('each stretch runs from the point before it to the point behind it, and all close the round', () => {
    for (const spot of SPOTS) {
      const ends = endsOf(spot);
      if (ends === null) expect(pointOf(spot)).not.toBeNull();
      else expect(ends).toEqual([pointOf(besides(spot, -1)), pointOf(besides(spot, 1))]);
    }
  });
});

describe('arrows of flow', () => {
  const way = [
    [0, 0],
    [100, 0],
    [100, 60],
  ] as const;
  const round = (stands: readonly { x: number; y: number; turnDeg: number }[]): number[][] =>
    stands.map(({ x, y, turnDeg }) => [x, y, turnDeg].map(Math.round));

  test('stand on the way, point along it, and come round to where they began', () => {
    expect(round(arrowsAlong(way, 0))).toEqual([
      [40, 0, 0],
      [100, 20, 90],
    ]);
    expect(round(arrowsAlong(way, 160))).toEqual(round(arrowsAlong(way, 0)));
    expect(round(arrowsAlong(way, 10))[0]).toEqual([50, 0, 0]);
  });

  test('are none without flow and never fewer with more of it', () => {
    expect([0, Number.NaN, 0.005, 0.02, 0.05].map(strokesOf)).toEqual([0, 0, 1, 2, 3]);
  });
});

describe('the folded time axis', () => {
  const flat = () => true;
  test('runs from 0 to 1 and never back', () => {
    const axis = foldedTime(3600, [60, 120, 3000, 3300], flat);
    let last = -1;
    for (let seconds = 0; seconds <= 3600; seconds += 5) {
      const share = axis.share(seconds);
      expect(share).toBeGreaterThanOrEqual(last);
      last = share;
    }
    expect(axis.share(0)).toBe(0);
    expect(axis.share(3600)).toBeCloseTo(1, 9);
  });

  test('squeezes a long wait in which nothing moved, and only such a one', () => {
    expect(foldedTime(3600, [60, 3000], flat).folds).toEqual([{ fromS: 105, toS: 2955 }]);
    expect(foldedTime(3600, [60, 3000], () => false).folds).toEqual([]);
    expect(foldedTime(300, [10, 290], flat).folds).toEqual([{ fromS: 55, toS: 245 }]);
    expect(foldedTime(200, [10, 190], flat).folds).toEqual([]);
  });

  test('keeps its marks out of the folds', () => {
    const { marks, folds } = foldedTime(3600, [60, 3000], flat);
    for (const mark of marks) expect(folds.some(({ fromS, toS }) => mark > fromS && mark < toS)).toBe(false);
  });
});

describe('pins over a plot', () => {
  test('stand in order, none over another, none outside', () => {
    const placed = clusterPins([70, 71, 72, 400, 780, 781], 48, 800);
    for (let i = 1; i < placed.length; i++) {
      const [before, here] = [placed[i - 1], placed[i]];
      expect(here.x - here.width / 2).toBeGreaterThan(before.x + before.width / 2);
    }
    expect(placed.map(({ from, to }) => [from, to])).toEqual([
      [0, 2],
      [3, 3],
      [4, 5],
    ]);
    expect(placed[1].x).toBe(400);
    for (const { x, width } of placed) expect(x + width / 2).toBeLessThanOrEqual(800);
  });
});
