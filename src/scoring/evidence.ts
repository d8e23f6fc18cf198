/** What a sentence quotes: numbers of the record at one row, or measures of the whole, with their SI unit. */
import type { Rule } from '../../shared/schema/rubric';
import { ConditionError } from '../session/conditions/compileCondition';
import { measureList } from '../session/record/measures';
import type { SessionRecord } from '../session/record/record';

export interface Evidence {
  /** Placeholder in the sentence. */
  readonly name: string;
  /** Signal or measure. */
  readonly source: string;
  readonly value: number;
  readonly unit: string;
}

export function quoteRow(record: SessionRecord, { quotes }: Rule, row: number): Evidence[] {
  const width = record.signals.length;
  return Object.entries(quotes).map(([name, source]) => {
    const index = record.signals.findIndex(({ id }) => id === source);
    if (index >= 0)
      return { name, source, value: record.values[row * width + index], unit: record.signals[index].unit };
    const found = measureList.find(({ id }) => id === source);
    if (!found) throw new ConditionError(`"${source}" is neither a signal nor a measure`);
    return { name, source, value: record.measures[found.id], unit: found.unit };
  });
}
