/** The longer jobs, solved. */
import { expect, it } from 'vitest';
import { scenarioById, scenarios } from '../../src/session/scenario/library';
import { holdSolved, isLong } from '../support/holdPlays';
import { played } from '../support/plans';

const ids = scenarios.map(({ data }) => data.id).filter(isLong);

it('are some', () => expect(ids.length).toBeGreaterThan(3));

it.each(ids)('%s is solved by its solution', (id) => {
  const scenario = scenarioById(id);
  holdSolved(played(scenario, scenario.data.plans.solution));
});
