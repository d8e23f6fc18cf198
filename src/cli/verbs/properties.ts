/** `properties`: fluid states for a file of number pairs, from the run-time tables or the equation of state. CSV out. */

import type { PropertyPair } from '../../refrigerant/fluidState';
import { REFRIGERANT_IDS } from '../../refrigerant/fluids';
import { OutOfRangeError } from '../../refrigerant/outOfRangeError';
import {
  INPUT_COLUMNS,
  OUTPUT_COLUMNS,
  type PropertyRow,
  type PropertySource,
  propertyRow,
  stateFinder,
} from '../../refrigerant/propertyRows';
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import { say } from '../../words/words';
import { csvPairs } from '../csvColumns';
import { defineVerb, UsageError } from '../verb';

const SOURCES: readonly PropertySource[] = ['table', 'eos'];

export default defineVerb({
  name: 'properties',
  summary: 'properties.summary',
  options: {
    fluid: { kind: 'text', required: true, example: 'R-134a', summary: 'properties.fluid' },
    given: { kind: 'text', required: true, example: 'p,h', summary: 'properties.given' },
    in: { kind: 'text', required: true, example: 'states.csv', summary: 'properties.in' },
    source: { kind: 'text', example: 'table', summary: 'properties.source' },
  },
  run({ options }, io) {
    const fluid = oneOf<RefrigerantId>('fluid', options.fluid, REFRIGERANT_IDS);
    const pair = oneOf<PropertyPair>('given', options.given, Object.keys(INPUT_COLUMNS) as PropertyPair[]);
    const source = oneOf<PropertySource>('source', options.source ?? 'table', SOURCES);
    const file = options.in;
    const { pairs, lines } = csvPairs(file, io.readFile(file), INPUT_COLUMNS[pair]);
    const find = stateFinder(fluid, source);
    const rows = pairs.map(([first, second], index) => {
      try {
        return csvRow(propertyRow(find(pair, first, second)));
      } catch (error) {
        if (!(error instanceof OutOfRangeError)) throw error;
        throw new UsageError(`${file}:${lines[index]}:1 ${error.message}`);
      }
    });
    io.text(`${[OUTPUT_COLUMNS.join(','), ...rows].join('\n')}\n`);
    return 0;
  },
});

function csvRow(row: PropertyRow): string {
  return OUTPUT_COLUMNS.map((column) => row[column] ?? '').join(',');
}

function oneOf<Value extends string>(option: string, given: string, allowed: readonly Value[]): Value {
  const found = allowed.find((value) => value === given);
  if (found !== undefined) return found;
  const values = { option, given, allowed: allowed.join(' | ') };
  throw new UsageError(say({ id: 'properties.notAllowed', values }));
}
