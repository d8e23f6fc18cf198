/** What ships passes its own check, physics and plans included. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checkScenario } from '../../src/scoring/checkScenario';
import { rubrics } from '../../src/session/scenario/rubrics';

const files = readdirSync('scenarios')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => `scenarios/${name}`);

it.each(files)('%s has no error', (file) => {
  const problems = checkScenario(file, readFileSync(file, 'utf8'), rubrics);
  expect(problems.filter(({ level }) => level === 'error')).toEqual([]);
});
