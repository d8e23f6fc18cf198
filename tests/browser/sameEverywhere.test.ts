import { describe, expect, test } from 'vitest';
import type { SessionLog } from '../../src/session/corePort';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';
import { standardRun } from '../../src/session/standardRun';
import { enginesFound, openPage } from '../support/openPage';
import { begin, debriefText, openSitting, write } from './driver';

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

  test.each([1, 240])(
    'a session at ×%i is replayed in one go to the same state',
    { timeout: 120_000 },
    async (lapse) => {
      const { page } = await openSitting({
        scenario: 'warm-at-the-lights',
        mode: 'practice',
        seed: 3,
        lapse,
      });
      await begin(page);
      for (const line of ['door open', 'blower 4', 'engine 900', 'ac on', 'windows open'])
        await write(page, line);
      await page.waitForTimeout(2000);
      await write(page, 'engine 0');
      await write(page, 'finish');
      const stateHash = await debriefText(page, 'state-hash');
      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save session file' }).click();
      const stream = await (await download).createReadStream();
      const chunks: Buffer[] = [];
      for await (const chunk of stream) chunks.push(chunk as Buffer);
      const { log } = JSON.parse(Buffer.concat(chunks).toString('utf8')) as { log: SessionLog };
      expect(log.lastStep).toBeGreaterThan(50);
      const again = openSession(scenarioById('warm-at-the-lights'), { mode: 'practice', seed: 3, log });
      expect(stateHash).toContain(again.stateHash());
    },
  );
});
