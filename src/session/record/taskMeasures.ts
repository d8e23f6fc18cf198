/**
 * Measures of what was found out, reckoned, converted, put away and told: how much of it is wrong, against the car and the
 * bench as they are.
 */
import type { PlantEvent } from '../../plant/commandSpecs';

/** What they look at: the last row and everything that happened. */
interface Seen {
  last(signal: string): number;
  readonly events: readonly PlantEvent[];
}

/** With this much in it a can is not empty. */
const NOT_EMPTY_KG = 0.005;
const NOTES = ['loop-noted', 'gas-noted', 'clutch-noted'] as const;

const lastOf = ({ events }: Seen, id: string): PlantEvent | undefined =>
  events.filter((event) => event.id === id).at(-1);
/** 0 right, 1 wrong; NaN where nothing was written. */
const noteWrong = (seen: Seen, id: string): number => 1 - (lastOf(seen, id)?.quantity ?? Number.NaN);
const isOn = (seen: Seen, signal: string): boolean => seen.last(signal) === 1;

/** Cans that were opened and are not empty. */
function usedCans(seen: Seen): string[] {
  const opened = seen.events.filter(({ id }) => id === 'can-opened').map(({ subject = '' }) => subject);
  return [...new Set(opened)].filter((can) => seen.last(`can.${can}.netKg`) > NOT_EMPTY_KG);
}

function sumsWrong({ events }: Seen): number {
  const bySum = new Map(
    events.filter(({ id }) => id === 'summed').map(({ subject, quantity }) => [subject, quantity]),
  );
  return [...bySum.values()].filter((right) => right === 0).length;
}

/** Furthest of the marked cans from what is in it. */
function markErrorKg(seen: Seen): number {
  const cans = seen.events.filter(({ id }) => id === 'can-marked').map(({ subject = '' }) => subject);
  if (cans.length === 0) return Number.NaN;
  return Math.max(
    ...cans.map((can) => Math.abs(seen.last(`can.${can}.markedKg`) - seen.last(`can.${can}.netKg`))),
  );
}

/** Told, and not so. */
function falseTold(seen: Seen): number {
  const remain = seen.last('faults.remainingCount') > 0;
  const proven = isOn(seen, 'charge.proven');
  const leaking = isOn(seen, 'loop.leaking');
  const said = (told: string): boolean => isOn(seen, `told.${told}`);
  return [
    said('all-proven') && (remain || leaking || !proven),
    said('charge-not-proven') && proven,
    said('fault-remains') && !remain && !leaking,
    said('do-not-run') && !remain && !leaking,
    said('goes-to-licensed') && !isOn(seen, 'decision.refer'),
  ].filter(Boolean).length;
}

/** So, and not told. Who sends a car on, or says not to run it, has said that it is not right. */
function unsaid(seen: Seen): number {
  const said = (...told: string[]): boolean => told.some((one) => isOn(seen, `told.${one}`));
  const warned = said('do-not-run', 'goes-to-licensed', 'fault-remains');
  return [
    !isOn(seen, 'charge.proven') && !said('charge-not-proven', 'do-not-run', 'goes-to-licensed'),
    isOn(seen, 'loop.leaking') && !warned && !said('leak-not-found'),
    seen.last('faults.remainingCount') > 0 && !warned && !said('charge-not-proven'),
    isOn(seen, 'decision.refer') && !said('goes-to-licensed'),
  ].filter(Boolean).length;
}

export const taskMeasures = {
  'findings.loopWrongCount': { unit: '1', of: (seen: Seen) => noteWrong(seen, 'loop-noted') },
  'findings.gasWrongCount': { unit: '1', of: (seen: Seen) => noteWrong(seen, 'gas-noted') },
  'findings.clutchWrongCount': { unit: '1', of: (seen: Seen) => noteWrong(seen, 'clutch-noted') },
  'findings.wrongCount': {
    unit: '1',
    of: (seen: Seen) => NOTES.filter((id) => noteWrong(seen, id) === 1).length,
  },
  'sums.wrongCount': { unit: '1', of: sumsWrong },
  'cans.markErrorKg': { unit: 'kg', of: markErrorKg },
  'cans.unmarkedCount': {
    unit: '1',
    of: (seen: Seen) => usedCans(seen).filter((can) => !isOn(seen, `can.${can}.marked`)).length,
  },
  'cans.unstoredCount': {
    unit: '1',
    of: (seen: Seen) => usedCans(seen).filter((can) => !isOn(seen, `can.${can}.stored`)).length,
  },
  'oil.errorKg': {
    unit: 'kg',
    of: (seen: Seen) => Math.abs(seen.last('oil.inLoopKg') - seen.last('oil.dueKg')),
  },
  'oil.wrongRatio': { unit: '1', of: (seen: Seen) => seen.last('oil.wrongRatio') },
  'conversion.oldKg': { unit: 'kg', of: (seen: Seen) => seen.last('conversion.oldKg') },
  'conversion.oldPortsCount': { unit: '1', of: (seen: Seen) => seen.last('conversion.oldPortsCount') },
  'conversion.oldWrongCount': { unit: '1', of: (seen: Seen) => seen.last('conversion.oldWrongCount') },
  'conversion.labelWrongCount': { unit: '1', of: (seen: Seen) => seen.last('conversion.labelWrongCount') },
  'handOver.falseCount': { unit: '1', of: falseTold },
  'handOver.unsaidCount': { unit: '1', of: unsaid },
} as const;
