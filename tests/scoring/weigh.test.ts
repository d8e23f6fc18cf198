/** The second stage of a score, on two short sessions: one that proves what it names, and one that is right by luck. */
import { describe, expect, it } from 'vitest';
import { NOTHING_WRONG } from '../../src/plant/faultBook';
import { sayFinding } from '../../src/scoring/sayFinding';
import { score } from '../../src/scoring/score';
import { isWeighable, type Weighed, weigh } from '../../src/scoring/weigh';
import { scenarioById } from '../../src/session/scenario/library';
import { ensembleFor } from '../../src/suspects/causes';
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

  it('is nothing where the loop came empty, or nobody named a cause', () => {
    expect(isWeighable(scenarioById('weighed-in'))).toBe(false);
    const mute = weighed(live(fanDead, [...atRest, 'note-reading low-gauge', 'finish']));
    for (const id of ['right', 'justified', 'efficient', 'noiseless'] as const) expect(of(mute, id)).toBe(0);
  });
});
