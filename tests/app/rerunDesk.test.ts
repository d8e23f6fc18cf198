/** A finished session tried otherwise in a worker: answers come in parts, give way to later wishes, and are kept. */
import { afterEach, expect, test } from 'vitest';
import type { FromWorker } from '../../src/app/protocol';
import { type RerunDesk, rerunDesk, type Try } from '../../src/app/rerunDesk';
import { tracesOf } from '../../src/app/traces';
import { whatIfTold } from '../../src/app/whatIfTold';
import { whatIf } from '../../src/scoring/whatIf';
import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';
import { numberedCommands } from '../../src/session/whatIf/editLog';
import { liveSession } from '../../src/session/whatIf/openReruns';
import { toEnd } from '../../src/session/whatIf/toEnd';

const scenario = scenarioById('warm-at-the-lights');
const { scenarioId } = scenario.job;

/** Two minutes of work, nearly all of it behind the first deeds. */
const core = openSession(scenario, { mode: 'assessed', seed: 1 });
playPlan(core, [
  'begin',
  'door open',
  'windows open',
  { 'run-on': '10 s' },
  'look fan',
  'engine 1500',
  { 'run-on': '100 s' },
  'finish',
] as never);
const log = core.log();
const lived = toEnd(liveSession(scenario, log));
const without = (deed: string): Try => {
  const found = numberedCommands(log).find(({ command }) => command.do === deed);
  return { edits: [{ kind: 'drop', number: found?.number ?? 0 }], weighed: null };
};
const inOneGo = (tried: Try) => whatIf(scenario, log, tried.edits);

let told: FromWorker[] = [];
const types = (): string[] => told.map(({ type }) => type);
const last = (): FromWorker => told[told.length - 1];
afterEach(() => {
  told = [];
});

/** As a session's worker lends it. */
async function opened(): Promise<RerunDesk> {
  const desk = rerunDesk((message) => told.push(message));
  const { port1, port2 } = new MessageChannel();
  port1.postMessage(lived);
  await desk.open(log, scenarioId, port2);
  port1.close();
  expect(types()).toEqual(['whatIfReady']);
  told = [];
  return desk;
}

test('what has come so far is told before the end, and the end is what it is in one go', async () => {
  const desk = await opened();
  const tried = without('engine');
  await desk.wish({ ...tried, serial: 1 });
  const parts = told.flatMap((one) => (one.type === 'trying' ? [one] : []));
  expect(parts.length).toBeGreaterThan(0);
  const reached = parts.map(({ traces }) => traces[0].seconds.at(-1) ?? 0);
  expect(reached).toEqual([...reached].sort((a, b) => a - b));
  expect(reached[0]).toBeLessThan(100);
  const whole = inOneGo(tried);
  expect(parts.at(-1)?.apartStep).toBe(whole.firstDifferentStep);
  expect(last()).toEqual({
    type: 'tried',
    serial: 1,
    traces: tracesOf(whole.after.record),
    told: whatIfTold(whole),
  });
});

test('an action that did nothing leaves the same car', async () => {
  const desk = await opened();
  await desk.wish({ ...without('look'), serial: 1 });
  expect(last()).toMatchObject({ type: 'tried', told: { sameState: true, firstDifferentStep: null } });
});

test('a later wish takes the place of the one that runs, and each wish is answered alone', async () => {
  const desk = await opened();
  const first = desk.wish({ ...without('engine'), serial: 1 });
  await desk.wish({ ...without('windows'), serial: 2 });
  await first;
  const ends = told.flatMap((one) => (one.type === 'tried' ? [one.serial] : []));
  expect(ends).toEqual([2]);
  expect(last()).toMatchObject({ told: whatIfTold(inOneGo(without('windows'))) });
});

test('what is stopped says nothing more, and goes on to the same end', async () => {
  const desk = await opened();
  const tried = without('engine');
  const running = desk.wish({ ...tried, serial: 1 });
  desk.hold();
  await running;
  expect(types()).not.toContain('tried');
  const before = told.length;
  await new Promise((resume) => setTimeout(resume, 50));
  expect(told.length).toBe(before);
  await desk.wish({ ...tried, serial: 2 });
  expect(last()).toMatchObject({ type: 'tried', serial: 2, told: whatIfTold(inOneGo(tried)) });
});

test('what was run ahead is answered at once, without a part of it', async () => {
  const desk = await opened();
  const tried = without('engine');
  await desk.ahead([tried]);
  expect(types()).toEqual([]);
  await desk.wish({ ...tried, serial: 7 });
  expect(types()).toEqual(['tried']);
  expect(last()).toMatchObject({ serial: 7, told: whatIfTold(inOneGo(tried)) });
});

test('an edit that cannot be made is told as such, and what runs ahead goes on', async () => {
  const desk = await opened();
  const ahead = desk.ahead([without('engine')]);
  await desk.wish({ edits: [{ kind: 'drop', number: 99 }], weighed: null, serial: 3 });
  await ahead;
  expect(types()).toEqual(['notTried']);
  await desk.wish({ ...without('engine'), serial: 4 });
  expect(types()).toEqual(['notTried', 'tried']);
});
