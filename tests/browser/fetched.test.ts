/**
 * What a session really fetches until work can begin is what `npm run size` counts, and within what the shelf and the bay
 * may take. What comes while nothing else is to do is held back until that has been counted.
 */
import { gzipSync } from 'node:zlib';
import type { BrowserContext, Response } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { appFiles, type Part } from '../../shared/build/appSize';
import { begin } from '../support/atThePage';
import { openPage } from '../support/openPage';

declare global {
  interface Window {
    heldBack: (() => void)[];
  }
}

/** The van has the most to draw. */
const SESSION = '?scenario=the-rear-unit&mode=practice&seed=1&lapse=0';
const MOST_BYTES = { shelf: 60_000, bay: 330_000 };
/** Of what comes when nothing else is to do. */
const RESTS = ['OpenForm', 'DebriefPage', 'tellDebrief', 'rerunDoor', 'WordsPage', 'InsidePage'];
/** The count takes the largest of each kind, a session the ones of its car. */
const SHARE_OFF = 0.05;

/** Bytes of what has come since it was asked last, gzipped. */
function meter(context: BrowserContext): () => Promise<number> {
  let came: Response[] = [];
  // a question whether anybody answers brings nothing
  context.on('response', (response) => response.request().method() !== 'HEAD' && came.push(response));
  return async () => {
    const bodies = await Promise.all(came.map((response) => response.body()));
    came = [];
    return bodies.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0);
  };
}

test('the bytes of shelf and bay are those that are counted', { timeout: 120_000 }, async () => {
  const counted = appFiles(inject('folder'));
  const sum = (part: Part): number =>
    counted.filter((file) => file.part === part).reduce((total, { gzipBytes }) => total + gzipBytes, 0);
  const { page, context } = await openPage();
  const cdp = await context.newCDPSession(page);
  await cdp.send('Network.enable');
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: true });
  await context.addInitScript(() => {
    window.heldBack = [];
    window.requestIdleCallback = (idle) =>
      window.heldBack.push(() => idle({ didTimeout: false, timeRemaining: () => 0 }));
  });
  await page.waitForLoadState('networkidle');
  const fetched = meter(context);
  await page.reload({ waitUntil: 'networkidle' });
  const shelf = await fetched();
  await page.evaluate((search) => {
    history.pushState(null, '', search);
    dispatchEvent(new PopStateEvent('popstate'));
  }, SESSION);
  await page.waitForSelector('.brief .btn.pri', { timeout: 60_000 });
  await begin(page);
  await page.waitForSelector('.bay-twin [data-target="coupler:low"]', { timeout: 60_000 });
  await page.waitForLoadState('networkidle');
  const bay = await fetched();
  expect(Math.abs(shelf / sum('shelf') - 1)).toBeLessThan(SHARE_OFF);
  expect(Math.abs(bay / sum('bay') - 1)).toBeLessThan(SHARE_OFF);
  expect(shelf).toBeLessThanOrEqual(MOST_BYTES.shelf);
  expect(bay).toBeLessThanOrEqual(MOST_BYTES.bay);
  await page.waitForFunction(() => window.heldBack.length > 0, null, { timeout: 30_000 });
  const names: string[] = [];
  context.on('response', (response) => names.push(response.url()));
  await page.evaluate(() => {
    for (const idle of window.heldBack) idle();
  });
  const isLater = (part: string): boolean =>
    counted.some(({ file, part: of }) => of === 'later' && file.includes(`${part}-`));
  for (const part of RESTS) {
    expect(isLater(part)).toBe(true);
    await expect.poll(() => names.some((name) => name.includes(`${part}-`)), { timeout: 30_000 }).toBe(true);
  }
});
