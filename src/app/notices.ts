/** What is said in the status plate: something that happened, why a hand's attempt came to nothing, why the clock fell back. */
import { writeClock } from '../instruments/displayUnits';
import type { Lapse } from '../panels/sessionModel';
import { STEPS_PER_SECOND } from '../session/clock';
import type { Happening } from '../session/corePort';
import { isWordId, say, word } from '../words/words';
import { plainReason } from './notFetched';
import type { FromWorker } from './protocol';

type NameOf = (id: string) => string;

const named = (params: Readonly<Record<string, string>>, nameOf: NameOf): Record<string, string> =>
  Object.fromEntries(Object.entries(params).map(([key, value]) => [key, nameOf(value)]));

export function refusalWords(
  reason: string,
  params: Readonly<Record<string, string>>,
  nameOf: NameOf,
): string {
  return isWordId(reason) ? say({ id: reason, values: named(params, nameOf) }) : reason;
}

/** Null for what needs no line of its own. */
export function happeningWords(happening: Happening, nameOf: NameOf): string | null {
  const id = `happening.${happening.id}`;
  if (!isWordId(id)) return null;
  const values: Record<string, string> = {};
  if (happening.subject !== undefined) values.subject = nameOf(happening.subject);
  try {
    return say({ id, values });
  } catch {
    return say({ id });
  }
}

export function watchWords(to: Lapse, notable: string | null, step: number): string {
  const id = `happening.watch.${notable ?? ''}`;
  const what = notable !== null && isWordId(id) ? say({ id }) : notable;
  if (what === null) return word('work.clock.heldAfter', { time: writeClock(step / STEPS_PER_SECOND) });
  return to === 0 ? word('work.clock.heldBy', { what }) : word('work.clock.fellBack', { what });
}

/** Why the core gave up. */
export function failureWords({ reason, broken, other }: Extract<FromWorker, { type: 'failed' }>): string {
  if (other !== undefined) return other === 'engine' ? word('app.other.engine') : word('app.other.scenario');
  if (broken === undefined) return plainReason(reason);
  const { number, reason: why, params } = broken;
  const told = isWordId(why) ? say({ id: why, values: params }) : why;
  return word('app.other.broken', { number: String(number), reason: told });
}
