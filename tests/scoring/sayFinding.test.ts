import { expect, test } from 'vitest';
import { sayFinding } from '../../src/scoring/sayFinding';
import { writeMetric } from '../../src/session/writeQuantity';

const pressure = { name: 'pressure', source: 'lowSide.gaugePressurePa', value: 500_000, unit: 'Pa' };
const finding = (rule: string, evidence: readonly object[]) =>
  ({ rule, status: 'broken', step: 500, evidence: [...evidence, pressure] }) as never;

test('a pressure nobody could read is not told beside the point, and stays where a hose was on', () => {
  const caps = finding('capsOn', [{ name: 'off', source: 'caps.offCount', value: 2, unit: '1' }]);
  expect(sayFinding(caps, writeMetric, false)).toBe('At hand-over at 00:10, caps missing: 2.');
  expect(sayFinding(caps)).toBe('At hand-over at 00:10, caps missing: 2; the low side stood at 500 kPa.');
});

test('a sentence about the pressure keeps it', () => {
  expect(sayFinding(finding('startAfterCutIn', []), writeMetric, false)).toContain('500 kPa');
});
