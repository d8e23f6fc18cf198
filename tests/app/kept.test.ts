/** What is done with a session this browser kept, and which result is the best. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isBetter } from '../../src/app/bestResults';
import { standingOf } from '../../src/app/logStanding';
import { failureWords } from '../../src/app/notices';
import { openCore } from '../../src/app/openCore';
import { keptOf, sameLog } from '../../src/app/savedSession';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';
import { word } from '../../src/words/words';

const log = openSession(scenarioById('warm-at-the-lights'), { mode: 'practice', seed: 4 }).log();
const other = '0123456789abcdef';
const last = { score: 80, reported: 80, logHash: other, stateHash: other, engineHash: other };

describe('a kept session', () => {
  it('is run again only by the engine and in the scenario it was played with', async () => {
    expect(await standingOf(log, log.scenarioId)).toBeNull();
    expect(await standingOf({ ...log, engineHash: other }, log.scenarioId)).toBe('engine');
    expect(await standingOf({ ...log, scenarioHash: other }, log.scenarioId)).toBe('scenario');
    expect(await standingOf(log, 'gone')).toBe('scenario');
  });

  it('that cannot be run is refused in words', async () => {
    const { scenarioId, mode, seed } = log;
    const open = (given: typeof log) => openCore({ scenarioId, mode, seed, log: given });
    await expect(open({ ...log, engineHash: other })).rejects.toMatchObject({
      other: 'engine',
    });
    await expect(open({ ...log, scenarioHash: other })).rejects.toMatchObject({ other: 'scenario' });
    expect(failureWords({ type: 'failed', reason: '', other: 'engine' })).toMatch(/another version/);
    expect(failureWords({ type: 'failed', reason: '', other: 'scenario' })).toMatch(/been changed/);
    const odd = [{ step: 0, command: { do: 'finish' } }] as const;
    const broken = { number: 1, reason: 'session.refused.notBegun' };
    await expect(open({ ...log, commands: odd })).rejects.toMatchObject(broken);
    expect(failureWords({ type: 'failed', reason: '', broken: { ...broken, params: {} } })).toMatch(
      /action 1 .* not begun/,
    );
  });

  it('comes with the score it had', () => {
    expect(keptOf({ log, last })).toEqual({ log, last });
    expect(keptOf({ log })).toEqual({ log, last: null });
    expect(keptOf(log)).toEqual({ log, last: null });
    expect(keptOf({ last })).toBeNull();
    expect(keptOf('x')).toBeNull();
    expect(keptOf({ log: { ...log, commands: null }, last })).toBeNull();
    expect(keptOf({ ...log, commands: [{ step: 0 }] })).toBeNull();
    expect(keptOf({ ...log, lastStep: 'late' })).toBeNull();
  });

  it('keeps its score only as long as nothing more was done', () => {
    expect(sameLog(log, { ...log })).toBe(true);
    expect(sameLog(log, { ...log, lastStep: 1 })).toBe(false);
  });
});

describe('the best result', () => {
  it('is an assessed one, whatever practice reached', () => {
    expect(isBetter({ score: 100, mode: 'practice' }, { score: 60, mode: 'assessed' })).toBe(false);
    expect(isBetter({ score: 60, mode: 'assessed' }, { score: 100, mode: 'practice' })).toBe(true);
    expect(isBetter({ score: 61, mode: 'assessed' }, { score: 60, mode: 'assessed' })).toBe(true);
    expect(isBetter({ score: 60, mode: 'practice' }, { score: 60, mode: 'practice' })).toBe(false);
    expect(isBetter({ score: 0, mode: 'practice' }, null)).toBe(true);
  });
});

describe('what is said of practice', () => {
  it('is the same on the shelf and in the readme: the best score is kept until an assessed one', () => {
    const kept = 'your best score is kept until an assessed one takes its place';
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8').replace(/\s+/g, ' ');
    expect(word('shelf.practice')).toContain(kept);
    expect(readme).toContain(kept);
    expect(readme).not.toContain('without record');
    expect(isBetter({ score: 40, mode: 'assessed' }, { score: 90, mode: 'practice' })).toBe(true);
    expect(isBetter({ score: 90, mode: 'practice' }, { score: 40, mode: 'assessed' })).toBe(false);
  });
});
