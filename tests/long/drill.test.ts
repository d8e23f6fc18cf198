import { expect, test } from 'vitest';
import { drillFigures } from '../layout/drill/drillFigures';

test('10,000 bays: at least 2,000 different traces, and no guess right more than 60 times in 100', {
  timeout: 600_000,
}, () => {
  const figures = drillFigures(10_000);
  expect(figures.traces).toBeGreaterThanOrEqual(2000);
  expect(figures.nearestPartRight).toBeLessThanOrEqual(0.6);
  expect(figures.thickestPipeRight).toBeLessThanOrEqual(0.6);
  expect(figures.capRight).toBeLessThanOrEqual(0.6);
  expect(figures.capSizeRight).toBeLessThanOrEqual(0.6);
  expect(figures.bestByNearestPart).toBeLessThanOrEqual(0.6);
  expect(figures.bestByThickestPipe).toBeLessThanOrEqual(0.6);
  expect(figures.bestByCapSize).toBeLessThanOrEqual(0.6);
  expect(figures.nearestToThickest).toBeLessThanOrEqual(0.6);
});
