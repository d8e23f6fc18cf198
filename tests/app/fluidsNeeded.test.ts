/** A page fetches only the tables it needs, and needs those of what is on the bench too. */
import { expect, test } from 'vitest';
import { fluidsNeeded } from '../../src/app/fluidsNeeded';
import { scenarioById, scenarios } from '../../src/session/scenario/library';

test('a car that is to be converted needs the tables of both', () => {
  expect([...fluidsNeeded(scenarioById('from-twelve').data)].sort()).toEqual(['R-12', 'R-134a']);
});

test('most cars need one', () => {
  expect(fluidsNeeded(scenarioById('warm-at-the-lights').data)).toEqual(['R-134a']);
});

test('what every bench holds is among them', () => {
  for (const { data } of scenarios)
    expect(fluidsNeeded(data), data.id).toContain(data.bench.refrigerant ?? data.contents.refrigerant);
});
