/** `list KIND`: ids with what they are, out of the registries. */
import { nearest } from '../../words/nearest';
import { word } from '../../words/words';
import { listCodes, listTemplates } from '../lists/listAuthoring';
import { listParts, listPlaces, listRoutes, listZones } from '../lists/listCar';
import { listCommands } from '../lists/listCommands';
import { listFaults } from '../lists/listFaults';
import { listKeys, listUnits, listWaits } from '../lists/listFile';
import { listJurisdictions } from '../lists/listJurisdictions';
import { listPapers, listRubrics, listTasks } from '../lists/listLibrary';
import {
  listConditions,
  listDomains,
  listEvents,
  listForms,
  listMeasures,
  listWatches,
} from '../lists/listRecord';
import { listRules } from '../lists/listRules';
import { listScenarios } from '../lists/listScenarios';
import { listSignals } from '../lists/listSignals';
import { listTools } from '../lists/listTools';
import { listPorts, listVehicles } from '../lists/listVehicles';
import { defineVerb, UsageError } from '../verb';

const LISTS: Readonly<Record<string, () => unknown>> = {
  vehicles: listVehicles,
  faults: listFaults,
  scenarios: listScenarios,
  tools: listTools,
  commands: listCommands,
  signals: listSignals,
  ports: listPorts,
  rules: listRules,
  rubrics: listRubrics,
  measures: listMeasures,
  events: listEvents,
  conditions: listConditions,
  forms: listForms,
  domains: listDomains,
  watches: listWatches,
  tasks: listTasks,
  parts: listParts,
  places: listPlaces,
  zones: listZones,
  routes: listRoutes,
  papers: listPapers,
  jurisdictions: listJurisdictions,
  keys: listKeys,
  units: listUnits,
  waits: listWaits,
  templates: listTemplates,
  codes: listCodes,
};

export default defineVerb({
  name: 'list',
  summary: 'verbs.list.summary',
  options: { json: { kind: 'flag', summary: 'cli.json' } },
  operands: [{ name: 'KIND', required: true }],
  run({ operands: [kind] }, io) {
    if (!Object.hasOwn(LISTS, kind)) throw new UsageError(unknown(kind));
    io.json(LISTS[kind]());
    return 0;
  },
});

function unknown(kind: string): string {
  const known = Object.keys(LISTS);
  const near = nearest(kind, known);
  return word('verbs.list.unknown', { kind, known: near === undefined ? known.join(', ') : near });
}
