import { describe, expect, test } from 'vitest';
import { saturationOf } from '../../src/app/saturationOf';
import { foldedTime } from '../../src/instruments/foldedTime';
import { coilPasses, phaseAt } from '../../src/instruments/loopPhases';
import { cyclePath, domePath, isotherm, phX, phY, pressureMarks } from '../../src/instruments/phGeometry';
import { clusterPins } from '../../src/instruments/pinPlaces';

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

describe('phases along the loop', () => {
  test('a coil that boils dry half way is wet first and vapour after', () => {
    const inlet = { pressurePa: 300_000, enthalpyJPerKg: 260_000, temperatureK: 273 };
    const outlet = { pressurePa: 300_000, enthalpyJPerKg: 520_000, temperatureK: 300 };
    const passes = coilPasses(line, inlet, outlet, 4);
    expect(passes.map(({ phase }) => phase)).toEqual(['mixture', 'mixture', 'vapour', 'vapour']);
    expect(passes[0].liquidFrom).toBeGreaterThan(passes[0].liquidTo);
    expect(phaseAt(line, outlet)).toBe('vapour');
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
