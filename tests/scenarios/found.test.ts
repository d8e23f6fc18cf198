/** Caps and covers that a scenario names are those of its car. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readScenario } from '../../src/scoring/readScenario';
import { rubrics } from '../../src/session/scenario/rubrics';

const file = 'scenarios/warm-at-the-lights.yaml';
const text = readFileSync(file, 'utf8');
const told = (found: string): string[] =>
  readScenario(file, text.replace('vehicle: sedan', `vehicle: sedan\nfound: ${found}`), rubrics)
    .problems.filter(({ code }) => code === 'SCN126' || code === 'SCN122')
    .map(({ message }) => message);

it('a cap of a port the car has not, a cover where there is none, and a port named twice are told', () => {
  expect(told('{ caps: [{ port: port-z, is: missing }] }')).toEqual([expect.stringContaining('port-z')]);
  expect(told('{ covers: [{ port: port-a, is: "off" }] }')).toEqual([expect.stringContaining('no cover')]);
  expect(told('{ caps: [{ port: port-a, is: own }, { port: port-a, is: missing }] }')).toHaveLength(1);
  expect(told('{ caps: [{ port: port-a, is: misleading }] }')).toEqual([]);
});
