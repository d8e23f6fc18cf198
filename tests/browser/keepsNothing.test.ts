/** A browser that refuses to keep a job says so in the bay, as soon as it refuses, and not again once that has been read. */
import { expect, test } from 'vitest';
import { begin, openSitting } from './driver';

const SAID = /^This browser refuses to keep what you do here/;

const refusals: readonly (readonly [string, () => void])[] = [
  [
    'no text is taken',
    () => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    },
  ],
  [
    'no store is opened',
    () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    },
  ],
  [
    'the store takes nothing',
    () => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    },
  ],
];

test.each(refusals)('%s', { timeout: 60_000 }, async (_, before) => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', before }, 'drawn');
  expect(await page.getByText(SAID).count()).toBe(0);
  await begin(page);
  const note = page.getByRole('status').filter({ hasText: SAID });
  await note.waitFor({ timeout: 10_000 });
  await note.getByRole('button', { name: 'Understood' }).press('Enter');
  await page.getByRole('button', { name: 'In words' }).click();
  await page.waitForSelector('.txt');
  expect(await page.getByText(SAID).count()).toBe(0);
});

test('where all is kept nothing is said', async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' }, 'drawn');
  await begin(page);
  await expect
    .poll(() => page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name)))
    .toContain('portside');
  expect(await page.getByText(SAID).count()).toBe(0);
});
