/** Readings of the suspects' table are written as their reader wants them. */
import { expect, test } from 'vitest';
import type { DisplayUnits } from '../../src/instruments/displayUnits';
import type { TestOf } from '../../src/prover/apartTable';
import { shownReading } from '../../src/workshop/proof/shownReading';

const IMPERIAL: DisplayUnits = { pressure: 'psi', temperature: 'degF', mass: 'oz' };
const METRIC: DisplayUnits = { pressure: 'kPa', temperature: 'degC', mass: 'g' };
const of = (id: string, unit: string): TestOf => ({
  id,
  unit,
  tool: 'any',
  state: 'running',
  costMinutes: 1,
  isOnBench: true,
});

test.each([
  ['high-gauge.running', 'Pa', 1_420_000, '206 psi', '1,420 kPa'],
  ['low-gauge.running', 'Pa', 286_000, '41 psi', '285 kPa'],
  ['air@centre-vent.running', 'K', 283.15, '50 °F', '10 °C'],
  ['recovery-scale.rest', 'kg', 0.454, '16.0 oz', '454 g'],
  ['gas-air.rest', '1', 0.03, '3 %', '3 %'],
  ['clutch.turning.running', 'look', 2, 'seen 2', 'seen 2'],
  ['low-gauge.running', 'Pa', null, '–', '–'],
] as const)('%s in %s: %s is %s or %s', (id, unit, value, imperial, metric) => {
  const look = (seen: number): string => `seen ${seen}`;
  expect(shownReading(of(id, unit), value, IMPERIAL, look)).toBe(imperial);
  expect(shownReading(of(id, unit), value, METRIC, look)).toBe(metric);
});
