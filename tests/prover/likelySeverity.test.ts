/** Where between two severities a cause looks best, and how well a car fits. */
import { expect, test } from 'vitest';
import type { Probe } from '../../src/prover/forecast/probe';
import type { Seen } from '../../src/prover/know/doubtOf';
import { fitOf } from '../../src/prover/know/fitOf';
import { likelySeverity } from '../../src/prover/know/likelySeverity';

const ATMOSPHERE_PA = 101_325;
const probe = (unit: Probe['unit'], tool: Probe['tool']): Probe => ({
  id: `${unit}.${tool}`,
  channel: unit,
  stage: 'running',
  tool,
  unit,
  fold: 'mean',
  truth: '',
  seen: '',
  minutes: 1,
});
const seen = (of: Probe, value: number): Seen => ({ probe: of, value, signal: '', steps: [50] });
const VENT = probe('K', 'thermometer');
const CLUTCH = probe('look', 'eyes');
const anywhere = (): boolean => true;

test('the place is where what lies between two shows what was seen, though the ends are far off', () => {
  const lived = [
    { severity: 0.9, shows: [300] },
    { severity: 0, shows: [280] },
    { severity: 0.5, shows: [290] },
  ];
  const likely = likelySeverity(lived, [seen(VENT, 292.5)], ATMOSPHERE_PA, anywhere);
  expect(likely?.severity).toBeCloseTo(0.6, 10);
  expect(likely?.fit).toBeCloseTo(0, 10);
});

test('a look is as the nearer has it, and a place that was lived is none', () => {
  const lived = [
    { severity: 0, shows: [1] },
    { severity: 0.8, shows: [2] },
  ];
  const likely = likelySeverity(lived, [seen(CLUTCH, 2)], ATMOSPHERE_PA, (severity) => severity < 0.65);
  expect(likely?.severity).toBeGreaterThanOrEqual(0.4);
  expect(likely?.severity).toBeLessThan(0.65);
  expect(likelySeverity(lived, [seen(CLUTCH, 2)], ATMOSPHERE_PA, () => false)).toBeNull();
});

test('no thermometer speaks louder than its furthest, and an identifier louder than a thermometer', () => {
  const off = (of: Probe, by: number): number => fitOf([seen(of, 0)], [by], ATMOSPHERE_PA);
  expect(off(VENT, 0)).toBeCloseTo(0, 12);
  expect(off(VENT, 1.6)).toBeCloseTo(-2, 10);
  expect(off(VENT, 40)).toBe(off(VENT, 80));
  expect(off(probe('1', 'identifier'), 0.5)).toBeLessThan(off(VENT, 80));
});

test('a look that differs speaks nineteen to one', () => {
  const right = fitOf([seen(CLUTCH, 1)], [1], ATMOSPHERE_PA);
  expect(Math.exp(right - fitOf([seen(CLUTCH, 1)], [0], ATMOSPHERE_PA))).toBeCloseTo(19, 8);
});
