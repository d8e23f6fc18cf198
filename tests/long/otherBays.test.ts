/** Every shipped scenario is solved by its solution in other bays as well: other errors of the instruments, other weather. */
import { describe, expect, it } from 'vitest';
import { scenarios } from '../../src/session/scenario/library';
import { played } from '../support/plans';

describe.each(scenarios.map((scenario) => [scenario.data.id, scenario] as const))('%s', (_, scenario) => {
  it.each([2, 3])('is solved in bay %i', (seed) => {
    const { score, refused } = played(scenario, scenario.data.plans.solution, 'assessed', seed);
    expect(refused).toEqual([]);
    expect(score.score).toBeGreaterThanOrEqual(95);
  });
});
