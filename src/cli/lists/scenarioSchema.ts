/** shared/schema/scenario.schema.json: the form of a scenario with the ids there are. `says` is what the page for authors says of each key. */
import { scenarioJsonSchema } from '../../../shared/schema/jsonSchema';
import { faultIds } from '../../faults/registry';
import { layoutOf } from '../../layout/layouts';
import { vehicleIds } from '../../loop/car/vehicles';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { rubrics } from '../../session/scenario/rubrics';
import { listTasks } from './listLibrary';

export function scenarioSchemaText(says: ReadonlyMap<string, string>): string {
  const ports = [...new Set(vehicleIds.flatMap((id) => layoutOf(id).ports.map((port) => port.id)))].sort();
  const rules = [...rubrics.values()].flatMap((rubric) => rubric.rules.map(({ id }) => id));
  const ids = {
    vehicle: vehicleIds,
    'faults[].fault': faultIds,
    'found.caps[].port': ports,
    'found.covers[].port': ports,
    'answer.causes[]': [NOTHING_WRONG, ...faultIds],
    'rubric.use[]': [...rubrics.keys()].sort(),
    'rubric.drop[]': [...new Set(rules)].sort(),
    'tasks[]': listTasks().map(({ id }) => id),
  };
  return `${JSON.stringify(scenarioJsonSchema({ ids, says }), null, 1)}\n`;
}
