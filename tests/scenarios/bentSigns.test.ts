/** A scenario may not score a sign that the model bends. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readYaml } from '../../shared/schema/readYaml';
import type { BentSign } from '../../src/faults/bentSign';
import { checkBentSigns } from '../../src/session/check/checkBentSigns';
import { findingsIn } from '../../src/session/check/findings';
import { scenarioById, scenarios } from '../../src/session/scenario/library';

const lights = scenarioById('warm-at-the-lights');
const file = 'scenarios/warm-at-the-lights.yaml';
const source = readYaml(file, readFileSync(file, 'utf8'));

/** As if the high side of a car whose fan does not turn were bent. */
const bent: BentSign = {
  vehicle: 'sedan',
  fault: 'condenser-fan-dead',
  row: 'condenser fan dead, at idle',
  channel: 'high',
  ambientsC: [32],
  reason: 'for this test',
};

function refused(sign: Partial<BentSign>): readonly string[] {
  const findings = findingsIn(source);
  checkBentSigns(lights.data, lights.rules, findings, [{ ...bent, ...sign }]);
  return findings.list.map(({ code, message }) => `${code} ${message.split(' ')[0]}`);
}

test('a rule of diagnosis that looks at a bent sign is refused, where it stands', () => {
  expect(refused({})).toEqual(['SCN133 provedAtIdle']);
});

test.each<[string, Partial<BentSign>]>([
  ['another car', { vehicle: 'hatchback' }],
  ['another fault', { fault: 'low-charge' }],
  ['another weather', { ambientsC: [21] }],
  ['a sign that no rule looks at', { channel: 'cycling' }],
])('but not for %s', (_, sign) => {
  expect(refused(sign)).toEqual([]);
});

test('no scenario of the library scores one', () => {
  for (const { data, rules } of scenarios) {
    const findings = findingsIn(source);
    checkBentSigns(data, rules, findings);
    expect(findings.list, data.id).toEqual([]);
  }
});
