/** The second stage of a score, on two short sessions: one that proves what it names, and one that is right by luck. */
import { describe, expect, it } from 'vitest';
import { NOTHING_WRONG } from '../../src/plant/faultBook';
import { sayFinding } from '../../src/scoring/sayFinding';
import { score } from '../../src/scoring/score';
import { isWeighable, type Weighed, weigh } from '../../src/scoring/weigh';
import { scenarioById } from '../../src/session/scenario/library';
import { plantOptions } from '../../src/session/scenario/plantOptions';
import { ensembleFor } from '../../src/suspects/causes';
import { isFoundThere } from '../../src/suspects/foundThere';
import { buildGhost } from '../../src/suspects/ghost';
import { atRest, everyReading, type Lived, live, runAndRead, withFault } from '../suspects/sessions';

/** Enough to doubt, and quick. */
const FEW = [
  NOTHING_WRONG,
  'low-charge',
  'air-in-loop',
  'weak-compressor',
  'condenser-fan-dead',
  'condenser-air-blocked',
];
const few = ensembleFor('sedan').filter(({ cause }) => FEW.includes(cause));
const CAUSE = 'condenser-fan-dead';
const named = [`diagnose ${CAUSE} sure`, 'finish'];
const fanDead = withFault(CAUSE);

function weighed({ record, scenario }: Lived): Weighed {
  const made = weigh(record, scenario, few);
  if (!made) throw new Error('nothing was weighed');
  return made;
}

const proven = live(fanDead, [...runAndRead(...everyReading), ...named]);
const lucky = live(fanDead, [
  ...atRest,
  'note-reading low-gauge',
  'note-reading low-gauge',
  'note-reading low-gauge',
  ...named,
]);
const byProof = weighed(proven);
const byLuck = weighed(lucky);
const of = (made: Weighed, id: 'right' | 'justified' | 'efficient' | 'noiseless') =>
  made.record.measures[`diagnosis.${id}`];

describe('a diagnosis, weighed', () => {
  it('that is right and proven has all four', () => {
    expect(of(byProof, 'right')).toBe(1);
    expect(of(byProof, 'justified')).toBe(1);
    expect(of(byProof, 'efficient')).toBeGreaterThan(0.8);
    expect(of(byProof, 'noiseless')).toBe(1);
    expect(byProof.record.measures['diagnosis.leftCount']).toBe(1);
  });

  it('that is right by luck is right and not proven, and a needle read three times is two tests too many', () => {
    expect(of(byLuck, 'right')).toBe(1);
    expect(of(byLuck, 'justified')).toBeLessThan(0.25);
    expect(of(byLuck, 'noiseless')).toBeLessThanOrEqual(0.8);
    expect(byLuck.record.measures['diagnosis.leftCount']).toBeGreaterThan(2);
  });

  it('asks for points only once it is weighed', () => {
    const rule = (record: Lived['record']) =>
      score(record, fanDead).findings.find((finding) => finding.rule === 'causeProven');
    expect(score(lucky.record, fanDead).weighed).toBe(false);
    expect(rule(lucky.record)).toMatchObject({ status: 'idle', possible: 0 });
    expect(score(byLuck.record, fanDead).weighed).toBe(true);
    expect(rule(byLuck.record)).toMatchObject({ status: 'broken', severity: 'serious', possible: 6 });
    expect(rule(byProof.record)).toMatchObject({ status: 'kept', earned: 6 });
  });

  it('says in words how many causes were left, and tells no shares', () => {
    const told = score(byLuck.record, fanDead).findings.filter(({ rule }) => rule.startsWith('cause'));
    const sentences = told.map((finding) => sayFinding(finding)).join(' ');
    expect(sentences).toContain(`left open when you named one: ${byLuck.story.at(-1)?.left.length}`);
    expect(sentences).not.toMatch(/NaN|bit|%/);
  });

  it('shows a list of suspects that shrinks to the one that was named', () => {
    const counts = byProof.story.map(({ left }) => left.length);
    expect(counts[0]).toBe(FEW.length);
    expect(counts.at(-1)).toBe(1);
    expect(byProof.story.at(-1)?.left[0]).toEqual({ causes: [CAUSE], standing: 'proven' });
  });

  it('of a leak asks for bubbles, a glow or more than one tick, at the place it names', () => {
    const leaking = withFault('leak-condenser', 0.5);
    const any = buildGhost(plantOptions(leaking.data, 1), { cause: NOTHING_WRONG, severity: 0 });
    const seen = (id: string, subject: string, quantity = 1) => ({ id, subject, quantity, row: 3, step: 3 });
    const found = (cause: string, ...events: ReturnType<typeof seen>[]) =>
      isFoundThere({ events }, 4, any, { cause });
    const tick = (at: string, ticks: number) => seen('detector-ticked', at, ticks);
    expect(found('leak-condenser', seen('bubbles-seen', 'condenser'))).toBe(true);
    expect(found('leak-condenser', seen('bubbles-seen', 'suction'))).toBe(false);
    expect(found('leak-condenser', tick('condenser', 1))).toBe(false);
    expect(found('leak-condenser', tick('condenser', 1), tick('suction', 1))).toBe(false);
    expect(found('leak-condenser', tick('condenser', 1), tick('condenser', 1))).toBe(true);
    expect(found('leak-condenser', tick('condenser', 2))).toBe(true);
    expect(found('leak-evaporator', tick('evaporator-drain', 3))).toBe(true);
    const late = { ...tick('condenser', 5), row: 4 };
    expect(found('leak-condenser', late)).toBe(false);
    const port = { cause: 'leak-core', site: 'port-b' };
    expect(isFoundThere({ events: [tick('port-a', 4)] }, 4, any, port)).toBe(false);
    expect(isFoundThere({ events: [tick('port-b', 4)] }, 4, any, port)).toBe(true);
  });

  it('of two, each counts by itself: one leak seen is half of two', () => {
    const { record, scenario } = lucky;
    const both = { ...scenario, answer: { ...scenario.answer, hidden: ['leak-condenser', 'leak-core'] } };
    const named = (subject: string) => ({ id: 'diagnosed', subject, row: record.steps.length - 1, step: 0 });
    const saw = { id: 'bubbles-seen', subject: 'condenser', quantity: 3, row: 0, step: 0 };
    const claims = [saw, named('leak-condenser'), named('leak-core')];
    const made = weigh({ ...record, events: [...record.events, ...claims] }, both, few);
    expect(made?.record.measures['diagnosis.justified']).toBeLessThan(0.8);
    expect(made?.record.measures['diagnosis.justified']).toBeGreaterThanOrEqual(0.5);
  });

  it('is nothing where the loop came empty, or nobody named a cause', () => {
    expect(isWeighable(scenarioById('weighed-in'))).toBe(false);
    const mute = weighed(live(fanDead, [...atRest, 'note-reading low-gauge', 'finish']));
    for (const id of ['right', 'justified', 'efficient', 'noiseless'] as const) expect(of(mute, id)).toBe(0);
  });
});
