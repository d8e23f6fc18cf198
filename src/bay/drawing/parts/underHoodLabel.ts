/** The printed label on the beam. Paper keeps its colours in both themes; what it says comes from the car. */
import type { Part } from '../../../layout/layout';
import type { Drawing } from '../record';
import { partDrawing } from './partDrawing';

export function underHoodLabel(part: Part, [heading, line]: readonly [string, string]): Drawing {
  const said: Readonly<Record<string, string>> = { '{heading}': heading, '{line}': line };
  return partDrawing(part, 'body').map((record) =>
    'text' in record ? { ...record, text: said[record.text] ?? record.text } : record,
  );
}
