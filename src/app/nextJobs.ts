/**
 * What to take next, from what was lost: the same car again until it is passed, then the same job assessed, and jobs that
 * practise the parts in which most was lost. Those passed before come last. Which job practises what is our own judgement.
 */
import type { DebriefData, NextJob } from '../panels/debriefModel';
import { PASS_MARK } from '../scoring/passMark';
import type { Mode } from '../session/corePort';
import { word } from '../words/words';
import { bestOf } from './bestResults';
import { shelfFacts } from './scenarioFacts';

export const DRILL = 'drill';

/** By part of the score. */
export const PRACTISED_BY: Readonly<Record<string, readonly string[]>> = {
  safety: ['drill-hose-in-the-belt', 'drill-can-on-high', 'two-caps-two-lies'],
  finding: [DRILL, 'two-caps-two-lies', 'no-label-at-all'],
  connecting: ['two-caps-two-lies', 'drill-hose-in-the-belt', 'weighed-in'],
  charging: ['weighed-in', 'drill-can-on-high', 'eighty-percent', 'one-can-too-many'],
  diagnosis: ['leaves', 'nothing-clicks', 'warm-at-the-lights', 'same-needle-right', 'stuck'],
};

export interface NextWays {
  readonly onStart: (scenarioId: string, mode: Mode) => void;
  readonly onDrill: () => void;
}

const MOST = 3;

export function nextJobs(scenarioId: string, data: DebriefData, { onStart, onDrill }: NextWays): NextJob[] {
  const facts = shelfFacts();
  const again = (title: string, mode: Mode): NextJob => ({
    title,
    minutes: null,
    onOpen: () => onStart(scenarioId, mode),
  });
  const same = data.passed && data.scored;
  const first = same
    ? again(word('debrief.next.assessed'), 'assessed')
    : again(word('debrief.next.again'), 'practice');
  const others = idsFor(scenarioId, data).flatMap((id): NextJob[] => {
    if (id === DRILL) return [{ title: word('debrief.next.drill'), minutes: null, onOpen: onDrill }];
    const job = facts.find((one) => one.id === id);
    return job ? [{ title: job.title, minutes: job.minutes, onOpen: () => onStart(id, 'practice') }] : [];
  });
  return same && data.mode === 'assessed' ? others.slice(0, MOST) : [first, ...others.slice(0, MOST - 1)];
}

/** The part in which most was lost first; what was not passed yet before what was. */
export function idsFor(scenarioId: string, { domains, findings, scored }: DebriefData): string[] {
  const isCritical = (id: string): number =>
    Number(findings.some(({ domain, kind }) => domain === id && kind === 'critical'));
  const byLoss = [...domains].sort(
    (a, b) => isCritical(b.id) - isCritical(a.id) || b.possible - b.earned - (a.possible - a.earned),
  );
  const lost = scored ? byLoss.filter(({ earned, possible }) => possible - earned >= 0.5) : [];
  const ids = [...(lost.length > 0 ? lost : byLoss).flatMap(({ id }) => PRACTISED_BY[id] ?? [])];
  const open = [...new Set(ids)].filter((id) => id !== scenarioId);
  const isPassed = (id: string): number => Number((bestOf(id)?.score ?? 0) >= PASS_MARK);
  return open.sort((a, b) => isPassed(a) - isPassed(b));
}
