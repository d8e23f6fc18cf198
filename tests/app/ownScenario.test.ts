/** A scenario that does not ship: kept by what it says, told as it is written, played and run again as a shipped one. */
import { describe, expect, it, vi } from 'vitest';
import type { ScenarioData } from '../../shared/schema/scenario';
import { findJob } from '../../src/app/findJob';
import { standingOf } from '../../src/app/logStanding';
import { openCore } from '../../src/app/openCore';
import { hashOfOwn, ownId } from '../../src/app/ownId';
import { orderWith } from '../../src/app/ownStore';
import { ownShown, readyOwn } from '../../src/app/readyOwn';
import { toldOf } from '../../src/app/told';
import { toldDebrief } from '../../src/app/toldDebrief';
import { OtherLogError } from '../../src/session/logProblem';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';
import { scenarioOf } from '../../src/session/scenario/scenario';

const store = vi.hoisted(() => ({ shown: new Map<string, unknown>(), whole: new Map<string, unknown>() }));

vi.mock('../../src/app/ownStore', async (original) => ({
  ...(await original<typeof import('../../src/app/ownStore')>()),
  shownOwn: async (hash: string) => store.shown.get(hash) ?? null,
  wholeOwn: async (hash: string) => store.whole.get(hash) ?? null,
  keepOwn: async (hash: string, shown: unknown, whole: unknown) => {
    store.shown.set(hash, structuredClone(shown));
    store.whole.set(hash, structuredClone(whole));
    return true;
  },
}));

const shipped = scenarioById('warm-at-the-lights');
const own: ScenarioData = { ...shipped.data, title: 'Warm in the <b>queue</b>', debrief: 'It was the fan.' };
const { hash } = scenarioOf(own, rubrics);

describe('a scenario of one’s own', () => {
  it('goes by the hash of what it says, and a copy of a shipped one by the name of that', async () => {
    expect(await readyOwn(own)).toBe(ownId(hash));
    expect(hashOfOwn(ownId(hash))).toBe(hash);
    expect(hashOfOwn('own-goal')).toBeNull();
    expect(await readyOwn({ ...shipped.data })).toBe('warm-at-the-lights');
  });

  it('shows a page no answer, no plan and no end before its end', () => {
    const text = JSON.stringify(ownShown(own));
    expect(text).not.toContain(own.debrief);
    for (const { fault } of own.faults) expect(text).not.toContain(fault);
    for (const key of ['plans', 'answer', 'contents', 'teacher']) expect(text).not.toContain(`"${key}":`);
  });

  it('is told as it is written, under its own id, whatever ships under the same name', async () => {
    const job = await findJob(ownId(hash));
    expect(job?.id).toBe(ownId(hash));
    expect(toldOf(ownId(hash)).title).toBe(own.title);
    expect(toldOf('warm-at-the-lights').title).not.toBe(own.title);
    const debrief = { debriefText: own.debrief, findings: [] } as unknown as Parameters<
      typeof toldDebrief
    >[0];
    expect((await toldDebrief(debrief, ownId(hash), 'check-first')).debriefText).toBe(own.debrief);
  });

  it('is played by the worker, and its log says which it was', async () => {
    const request = { scenarioId: ownId(hash), mode: 'assessed', seed: 3, log: null } as const;
    const { core, scenario } = await openCore(request);
    expect(scenario.hash).toBe(hash);
    expect(core.send({ do: 'begin' }).ok).toBe(true);
    core.advance(50, false);
    const log = core.log();
    expect(log).toMatchObject({ scenarioId: 'warm-at-the-lights', scenarioHash: hash });
    const again = await openCore({ ...request, log });
    expect(again.core.stateHash()).toBe(core.stateHash());
    expect(await standingOf(log, ownId(hash))).toBeNull();
    expect(await standingOf(log, log.scenarioId)).toBe('scenario');
    expect(() => openSession(shipped, { mode: 'assessed', seed: 3, log })).toThrow(OtherLogError);
  });

  it('is not found where nothing is kept of it, or where what is kept was changed since', async () => {
    const gone = ownId('0123456789abcdef');
    expect(await findJob(gone)).toBeUndefined();
    const bent = '00000000000000aa';
    store.whole.set(bent, own);
    await expect(openCore({ scenarioId: ownId(bent), mode: 'practice', seed: 1, log: null })).rejects.toThrow(
      RangeError,
    );
    store.shown.set(bent, { ...ownShown(own), engineHash: bent });
    expect(await findJob(ownId(bent))).toBeUndefined();
  });

  it('leaves when sixteen newer ones are kept, unless a session of it is', () => {
    const before = Array.from({ length: 16 }, (_, at) => `h${at}`);
    expect(orderWith('new', before, null)).toEqual({
      staying: [...before.slice(1), 'new'],
      leaving: ['h0'],
    });
    expect(orderWith('new', before, 'h0').leaving).toEqual(['h1']);
    expect(orderWith('h3', before, null)).toEqual({
      staying: [...before.filter((one) => one !== 'h3'), 'h3'],
      leaving: [],
    });
  });
});
