/** Lines of the job card as sentences. A reading is told in the reader's own units; everything else comes as a word id. */
import {
  inWords,
  plainNumber,
  type Written,
  writeMass,
  writePressure,
  writeTemperature,
  writeVacuum,
} from '../instruments/displayUnits';
import type { CardLine } from '../session/corePort';
import { DISPLAY_UNITS, type DisplayUnit, formatNumber, valueInUnit } from '../units/format';
import { isWordId, say, word } from '../words/words';
import type { SessionModel } from './sessionModel';

/** An SI value in the reader's units, by its SI unit; null where the unit is none of ours. */
export function writeValue(
  session: SessionModel,
  value: number,
  unit: string,
  face: 'low' | 'high' = 'low',
): Written | null {
  const units = session.units();
  if (unit === 'Pa') return writePressure(value, units.pressure, face);
  if (unit === 'K') return writeTemperature(value, units.temperature, 1);
  if (unit === 'kg') return writeMass(value, units.mass);
  if (unit === 'Pa abs') return writeVacuum(value, units.pressure);
  if (unit === 'share') return written(value, 'percent', 0.1);
  if (unit === '1') return { number: plainNumber(value), unit: word('work.meter.ofEight') };
  if (unit === 'm3') return written(value, 'mL', 1);
  return null;
}

/** In a unit that nobody chooses. */
function written(value: number, unit: DisplayUnit, step: number): Written {
  return { number: formatNumber(valueInUnit(value, unit), step), unit: DISPLAY_UNITS[unit].symbol };
}

export function cardSentence(session: SessionModel, line: CardLine): string {
  const names: Record<string, string> = {};
  for (const [key, value] of Object.entries(line.params)) names[key] = session.nameOf(value);
  if (line.value !== undefined && line.unit !== undefined) {
    const face = line.params.channel === 'high-gauge' ? 'high' : 'low';
    const written = writeValue(session, line.value, line.unit, face);
    if (written)
      return word('work.card.withReading', {
        sentence: sentenceOf(line.word, names),
        reading: inWords(written),
      });
  }
  return sentenceOf(line.word, names);
}

export function deliverySentence(session: SessionModel, id: string): string {
  return session.facts.deliver.find((one) => one.id === id)?.text ?? id;
}

/** A word by an id that came as data, with whatever of the values it has a place for; the id itself where it is unknown. */
export function sentenceOf(id: string, values: Readonly<Record<string, string>>): string {
  if (!isWordId(id)) return [id, ...Object.values(values)].join(' ');
  return say({ id, values });
}
