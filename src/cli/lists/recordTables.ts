/** Tables of what a rule or a condition may look at: signals, measures, events, and the forms of both. */
import { carsText, flow, named, writtenIn } from './cells';
import { listed } from './listed';
import { listConditions, listDomains, listEvents, listForms, listMeasures, listWatches } from './listRecord';
import { listRules } from './listRules';
import { listSignals } from './listSignals';

const signals = listed(listSignals, {
  id: ({ id }) => id,
  kind: ({ kind }) => named(`list.signalKind.${kind}`, kind),
  written: writtenIn,
  cars: (signal) => ('vehicles' in signal ? carsText(signal.vehicles) : ''),
});

const measures = listed(listMeasures, { id: ({ id }) => id, written: writtenIn });
const events = listed(listEvents, { id: ({ id }) => id, line: ({ condition }) => flow(condition) });
const conditions = listed(listConditions, { id: ({ id }) => id, line: ({ example }) => flow(example) });
const forms = listed(listForms, { id: ({ id }) => id, line: ({ example }) => flow(example) });

const domains = listed(listDomains, {
  id: ({ id }) => id,
  what: ({ id }) => named(`task.rubric.domainName.${id}`),
});

const watches = listed(listWatches, {
  id: ({ id }) => id,
  line: (watch) => flow('when' in watch ? watch.when : { signal: watch.rest }),
});

const rules = listed(listRules, {
  id: ({ id }) => id,
  from: ({ from }) => from,
  domain: ({ domain }) => named(`task.rubric.domainName.${domain}`, domain),
  points: ({ points }) => String(points),
  weight: ({ severity }) => named(`list.severityOf.${severity}`, severity),
  what: ({ id }) => named(`aims.${id}`, named(`rules.${id}.why`)),
});

/** By the word behind `list`. */
export const recordTables = {
  signals,
  rules,
  measures,
  events,
  conditions,
  forms,
  domains,
  watches,
};
