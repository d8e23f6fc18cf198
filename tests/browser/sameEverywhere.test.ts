import { describe, expect, test } from 'vitest';
import { score } from '../../src/scoring/score';
import type { SessionLog } from '../../src/session/corePort';
import { openSession } from '../../src/session/openSession';
import { recordOf } from '../../src/session/recordOf';
import { scenarioById } from '../../src/session/scenario/library';
import { standardRun } from '../../src/session/standardRun';
import { enginesFound, openPage } from '../support/openPage';
import { begin, debriefText, openSitting, write } from './driver';

/** An orifice tube and an expansion valve; the clock as on the wall, and as fast as it goes. */
const LIVED = [
  { name: 'warm-at-the-lights', lapse: 1 },
  { name: 'warm-at-the-lights', lapse: 240 },
  { name: 'weighed-in', lapse: 240 },
] as const;

describe('one log, one state', () => {
  test.each(enginesFound())(
    'the page of hashes says in %s what the command line says',
    { timeout: 180_000 },
    async (engine) => {
      const { page } = await openPage({ engine, path: 'hash' });
      await page.waitForSelector('.hash-list', { timeout: 150_000 });
      const rows = await page.locator('.hash-list li').evaluateAll((items) =>
        items.map((item) => ({
          minute: Number((item as HTMLElement).dataset.minute),
          stateHash: (item as HTMLElement).dataset.hash,
        })),
      );
      expect(rows).toEqual(standardRun());
    },
  );

  test.each(enginesFound().flatMap((engine) => LIVED.map((lived) => ({ engine, ...lived }))))(
    '$name lived in $engine at ×$lapse is the same when its log is run in one go: state, log and score',
    { timeout: 120_000 },
    async ({ engine, lapse, name }) => {
      const scenario = scenarioById(name);
      const sitting = { scenario: name, mode: 'practice', seed: 3, lapse, engine } as const;
      const { page } = await openSitting({ ...sitting, before: keepLastLog });
      await begin(page);
      for (const line of ['door open', 'blower 4', 'engine 900', 'ac on', 'windows open'])
        await write(page, line);
      await page.waitForTimeout(2000);
      for (const line of ['engine 0', 'decide do-not-charge', 'finish']) await write(page, line);
      const told = {
        stateHash: await debriefText(page, 'state-hash'),
        logHash: await debriefText(page, 'log-hash'),
        score: await debriefText(page, 'score'),
      };
      const log = await page.evaluate(() => (window as unknown as { lastLog: SessionLog }).lastLog);
      expect(log.lastStep).toBeGreaterThan(50);
      const again = openSession(scenario, { mode: 'practice', seed: 3, log });
      expect(told.stateHash).toContain(again.stateHash());
      expect(told.logHash).toContain(again.logHash());
      const { reported } = score(recordOf(scenario, log), scenario);
      expect(told.score).toContain(String(reported));
    },
  );
});

/** Runs in the page before anything of it: keeps the last log that the core told, as the page itself sees it. */
function keepLastLog(): void {
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener('message', ({ data }: MessageEvent<{ type: string; log?: unknown }>) => {
        if (data.type === 'log') (window as unknown as { lastLog: unknown }).lastLog = data.log;
      });
    }
  };
}
