/**
 * The decision whose words stand in a text most. Who names a refusal means it more than who names charging, so each counts
 * twice: common practice, no source. Phrases in the languages that scenarios are told in.
 */
import type { Choice } from '../choice';

const NOT = [
  'do not charge',
  'not to charge',
  'not to be charged',
  'nothing is added',
  'no gas',
  'leave the charge',
  'no cargar',
  'no cargues',
  'no se carga',
] as const;
const ELSEWHERE = ['refer', 'licensed', 'licence', 'specialist', 'especialista', 'con licencia'] as const;
const CHARGE = ['charge', 'top up', 'weigh', 'can in', 'cargar', 'recarga'] as const;
const REFUSAL = 2;

const timesIn = (text: string, phrases: readonly string[]): number =>
  phrases.reduce((sum, phrase) => sum + text.split(phrase).length - 1, 0);

export function decisionInText(text: string): Choice['decision'] {
  const not = timesIn(text, NOT);
  const elsewhere = REFUSAL * timesIn(text, ELSEWHERE);
  const charge = timesIn(text, CHARGE) - not;
  if (elsewhere > Math.max(REFUSAL * not, charge)) return 'refer';
  return REFUSAL * not >= charge ? 'do-not-charge' : 'charge';
}
