/** Tables of what a file may hold and name: scenarios and what ships for them, keys, units, waits, codes. */
import { between } from '../../../shared/schema/quantity';
import type { QuantityKind } from '../../units/unitTable';
import { word } from '../../words/words';
import { joined, named, placeNamed } from './cells';
import { commandTable } from './commandTable';
import { listCodes, listTemplates } from './listAuthoring';
import { listed } from './listed';
import { listKeys, listUnits, listWaits } from './listFile';
import { listJurisdictions } from './listJurisdictions';
import { listPapers, listRubrics, listTasks } from './listLibrary';
import { listScenarios } from './listScenarios';

const scenarios = listed(listScenarios, {
  id: ({ id }) => id,
  what: ({ title }) => title,
  car: ({ vehicle }) => vehicle,
  level: ({ level }) => String(level),
  minutes: ({ minutes }) => String(minutes),
  tasks: ({ tasks }) => joined(tasks),
});

const rubrics = listed(listRubrics, {
  id: ({ id }) => id,
  rules: ({ rules }) => joined(rules),
});

const papers = listed(listPapers, {
  id: ({ id }) => id,
  what: ({ id, title }) => title ?? named(`name.sheet.${id}`, placeNamed(id)),
  scenario: ({ scenario }) => scenario ?? word('list.told.everyScenario'),
});

const tasks = listed(listTasks, {
  id: ({ id }) => id,
  rules: ({ rules }) => joined(rules),
  scenarios: ({ scenarios: ids }) => joined(ids),
});

type Place = ReturnType<typeof listJurisdictions>[number];
const acts = ({ acts: all }: Place): string =>
  all
    .map(({ title, who, rule }) => `${title}: ${joined(who) || word('list.told.nobody')} (${rule})`)
    .join('\n');

const jurisdictions = listed(listJurisdictions, {
  id: ({ id }) => id,
  what: ({ title }) => title,
  who: acts,
});

type Key = ReturnType<typeof listKeys>[number];

/** What may stand behind a key. */
function mayStand({ is, of = [], least, most }: Key): string {
  if (is === 'quantity') return between(of[0] as QuantityKind, { min: Number(least), max: Number(most) });
  if (is === 'choice') return of.map(String).join(', ');
  const name = named(`list.is.${is}`, is);
  if (is === 'text' && most !== undefined) return word('list.told.letters', { name, most: String(most) });
  if (least === undefined || most === undefined) return name;
  return word('list.told.number', { name, least: String(least), most: String(most) });
}

const keys = listed(listKeys, {
  id: ({ id }) => id,
  must: ({ required }) => (required ? word('list.told.yes') : ''),
  may: mayStand,
});

const units = listed(listUnits, { id: ({ id }) => id, units: ({ units: all }) => joined(all) });
const waits = listed(listWaits, { id: ({ id }) => id, line: ({ id }) => `{ run-on: ${id} }` });
const templates = listed(listTemplates, {
  id: ({ id }) => id,
  what: ({ title }) => title,
  notes: ({ note }) => note,
});
const codes = listed(listCodes, { id: ({ id }) => id, what: ({ means }) => means });

/** By the word behind `list`. */
export const fileTables = {
  scenarios,
  commands: commandTable,
  rubrics,
  tasks,
  papers,
  jurisdictions,
  keys,
  units,
  waits,
  templates,
  codes,
};
