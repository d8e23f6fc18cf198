/** The network goes once a page stands: nobody is thrown out of what is there, and a part that comes late is asked for again. */
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openPage } from '../support/openPage';
import { begin, openSitting } from './driver';

const RAW = /TypeError|Failed to fetch|dynamically/;
/** What comes when nothing else is to do stays away. */
const keepBack = (): void => {
  window.requestIdleCallback = () => 0;
};

/** Later than the page goes by what it heard last. */
const HEARD_MS = 2500;

async function cutOff(context: BrowserContext, page: Page): Promise<void> {
  await page.waitForTimeout(HEARD_MS);
  await context.setOffline(true);
}

const said = async (page: Page): Promise<string> => (await page.locator('body').textContent()) ?? '';

describe('in the bay', () => {
  test('a form that does not come says so in its place and comes when it is asked for again', async () => {
    const { page, context, problems } = await openSitting(
      { scenario: 'weighed-in', mode: 'practice', before: keepBack },
      'drawn',
    );
    await begin(page);
    await page.waitForSelector('.bay-host canvas');
    await cutOff(context, page);
    await page.getByRole('button', { name: 'Service information' }).first().click();
    const form = page.getByRole('dialog', { name: 'This form did not load' });
    await form.waitFor();
    expect(await page.locator('.bay-host').isVisible()).toBe(true);
    expect(await said(page)).not.toMatch(RAW);
    await form.getByRole('button', { name: 'Try again' }).click();
    await form.waitFor();
    await form.press('Escape');
    await form.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Service information' }).first().click();
    await form.waitFor();
    await context.setOffline(false);
    await form.getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('dialog', { name: 'Service information' }).waitFor();
    problems.length = 0;
  });

  test('see-inside that does not come leads back to the bay, and comes when it is asked for again', async () => {
    const { page, context, problems } = await openSitting(
      { scenario: 'weighed-in', mode: 'practice', before: keepBack },
      'drawn',
    );
    await begin(page);
    await cutOff(context, page);
    const open = () => page.getByRole('button', { name: 'See inside' }).first().click();
    await open();
    await page.getByText('A part of the program did not load').waitFor();
    expect(await said(page)).not.toMatch(RAW);
    expect(await page.getByRole('button', { name: 'Load the page again' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Back to the bay' }).click();
    await page.waitForSelector('.bay-host');
    await open();
    await page.getByText('A part of the program did not load').waitFor();
    await context.setOffline(false);
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('button', { name: 'Bay', exact: true }).waitFor();
    problems.length = 0;
  });

  test('what is needed later is there once nothing else is to do', { timeout: 90_000 }, async () => {
    const { page, context, problems } = await openSitting(
      { scenario: 'weighed-in', mode: 'practice' },
      'drawn',
    );
    const came: string[] = [];
    context.on('requestfinished', (request) => came.push(request.url()));
    await begin(page);
    await expect.poll(() => came.some((url) => url.includes('followSound')), { timeout: 30_000 }).toBe(true);
    await page.waitForLoadState('networkidle');
    await cutOff(context, page);
    await page.getByRole('button', { name: 'Service information' }).first().click();
    await page.getByRole('dialog', { name: 'Service information' }).press('Escape');
    await page.getByRole('button', { name: 'See inside' }).first().click();
    await page.getByRole('button', { name: 'Bay', exact: true }).click();
    await page.getByRole('button', { name: 'In words' }).click();
    await page.locator('.cmd input').fill('finish');
    await page.locator('.cmd input').press('Enter');
    await page.waitForSelector('.debrief', { timeout: 60_000 });
    expect(problems).toEqual([]);
  });
});

test('at the shelf a job that does not come leaves the shelf standing, and says so', async () => {
  const { page, context, problems } = await openPage();
  await page.waitForSelector('.scn');
  await page.waitForLoadState('networkidle');
  await cutOff(context, page);
  const start = page.locator('.detail .btn.pri');
  await start.click();
  await page.getByRole('status').filter({ hasText: 'The job could not be fetched' }).waitFor();
  expect(await page.locator('.scn').count()).toBeGreaterThan(0);
  expect(await said(page)).not.toMatch(RAW);
  await context.setOffline(false);
  await start.click();
  await page.waitForSelector('.brief .btn.pri', { timeout: 30_000 });
  problems.length = 0;
});
