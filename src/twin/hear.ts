/** Happenings, refusals and card lines as words. */
import type { CardLine, Happening } from '../session/corePort';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { isWordId, say } from '../words/words';
import { nameOf } from './nameOf';

type Params = Readonly<Record<string, string>>;

const named = (params: Params): Record<string, string> =>
  Object.fromEntries(Object.entries(params).map(([key, value]) => [key, nameOf(value)]));

/** Throws `RangeError` where a reason has no sentence: a refusal nobody can read is a fault of ours. */
export function sayRefusal(reason: string, params: Params): string {
  if (!isWordId(reason)) throw new RangeError(`no word "${reason}"`);
  return say({ id: reason, values: named(params) });
}

/** Why a line could not be read: what was typed, and what may be typed, stand as they are typed. */
export function sayUnread(reason: string, params: Params): string {
  if (!isWordId(reason)) throw new RangeError(`no word "${reason}"`);
  return say({ id: reason, values: params });
}

/** Null for what makes no sight or sound of its own. */
export function sayHappening({ id, subject }: Happening): string | null {
  const word = `happening.${id}`;
  if (!isWordId(word)) return null;
  return TELLS_SUBJECT.has(id)
    ? say({ id: word, values: named({ subject: subject ?? '' }) })
    : say({ id: word });
}

const TELLS_SUBJECT = new Set([
  ...['worn', 'removed', 'device-started', 'device-stopped', 'opened-to-air'],
  ...['temperature-set', 'can-stored', 'port-converted', 'port-disabled', 'oil-filled'],
]);

export function sayCardLine(
  { word, params, value, unit }: CardLine,
  write: WriteQuantity = writeMetric,
): string {
  if (!isWordId(word)) throw new RangeError(`no word "${word}"`);
  const text = say({ id: word, values: named(params) });
  if (value !== undefined && unit === '1')
    return `${text}: ${say({ id: 'session.card.ofEight', values: { level: String(value) } })}`;
  return value === undefined || unit === undefined
    ? text
    : `${text}: ${write({ source: word, value, unit })}`;
}
