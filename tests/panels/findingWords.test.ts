import { expect, test } from 'vitest';
import { findingWords } from '../../src/panels/findingWords';
import { sayFinding } from '../../src/scoring/sayFinding';
import { writeMetric } from '../../src/session/writeQuantity';

const pressure = { name: 'pressure', source: 'lowSide.gaugePressurePa', value: 500_000, unit: 'Pa' };
const finding = (rule: string, evidence: readonly object[]) =>
  ({ rule, status: 'broken', step: 500, evidence: [...evidence, pressure] }) as never;

test('a pressure nobody could read is not told beside the point, and stays where a hose was on', () => {
  const caps = finding('capsOn', [{ name: 'off', source: 'caps.offCount', value: 2, unit: '1' }]);
  expect(findingWords(caps, writeMetric, false)).toBe('At hand-over at 00:10 (step 500), caps missing: 2.');
  expect(findingWords(caps, writeMetric, true)).toBe(sayFinding(caps));
});

test('a sentence about the pressure keeps it', () => {
  const shut = finding('readShut', []);
  expect(findingWords(shut, writeMetric, true)).toContain('500 kPa');
});
