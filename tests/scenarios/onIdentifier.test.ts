/** A mixture shows on no gauge of a mild day; `check` lets it pass only where an identifier lies on the bench. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readScenario } from '../../src/scoring/readScenario';
import { checkPhysics } from '../../src/session/check/checkPhysics';
import { rubrics } from '../../src/session/scenario/rubrics';

const file = 'scenarios/no-label-at-all.yaml';
const text = readFileSync(file, 'utf8');

function codesWith(tool: 'identifier' | 'detector'): string[] {
  const { formed, ready } = readScenario(file, text, rubrics);
  if (!formed || !ready) throw new Error('cannot be played');
  const { data, findings } = formed;
  checkPhysics({ ...data, bench: { ...data.bench, tools: [tool] } }, ready.plant, findings);
  return findings.list.map(({ code }) => code);
}

it('is told by an identifier, and by nothing else', () => {
  expect(codesWith('identifier')).toEqual([]);
  expect(codesWith('detector')).toEqual(['SCN212']);
});
