/** How a scenario file is written: its keys with what may stand there, units by kind of quantity, what a plan waits for. */
import { conditionSchema } from '../../../shared/schema/condition';
import { describeKeys } from '../../../shared/schema/describeKeys';
import { planLinesSchema } from '../../../shared/schema/plan';
import { ruleSchema } from '../../../shared/schema/rubric';
import { scenarioSchema } from '../../../shared/schema/scenario';
import { WAITS } from '../../../shared/schema/waits';
import { KINDS } from '../../units/unitTable';

const ELSEWHERE = new Map([
  [conditionSchema, 'condition'],
  [ruleSchema, 'rule'],
  [planLinesSchema, 'plan'],
] as [typeof conditionSchema, string][]);

export const listKeys = () => describeKeys(scenarioSchema, ELSEWHERE);

export const listUnits = () =>
  Object.entries(KINDS).map(([id, { si, units }]) => ({ id, si, units: Object.keys(units) }));

export const listWaits = () => WAITS.map((id) => ({ id, line: { 'run-on': id } }));
