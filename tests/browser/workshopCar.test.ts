/** The workshop's right side: the running car follows the text, an own scenario is played and left, a proof is stopped. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { DESK, expectClean } from '../support/cleanScreen';
import { openPage } from '../support/openPage';

const context = { viewport: DESK, reducedMotion: 'reduce' } as const;

const lines = (page: Page): Promise<string[]> => page.locator('.wc-says li').allTextContents();

async function atCar(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'One fault' }).click();
  await page.locator('.wc-says li').first().waitFor({ timeout: 90_000 });
}

describe('the running car', () => {
  test('shows the fault, follows the text, and keeps its last picture while the text is wrong', {
    timeout: 300_000,
  }, async () => {
    const { page } = await openPage({ path: '?workshop=1', context });
    await atCar(page);
    expect((await lines(page))[0]).toMatch(/^High side: .* a sound car shows \d+ psi\.$/);
    await page.locator('.wc-bar').waitFor({ state: 'detached', timeout: 120_000 });
    expect(await page.locator('.wc-chart').count()).toBe(2);
    await expectClean(page, 'the running car');

    const before = await lines(page);
    await page.getByLabel('Fault 1').selectOption({ label: 'radiator fan turning slowly' });
    await expect.poll(() => lines(page), { timeout: 90_000 }).not.toEqual(before);

    await page.locator('.cm-line', { hasText: /^vehicle:/ }).click();
    await page.keyboard.press('Home');
    await page.keyboard.type('x');
    await page.getByText('of the last text without errors').waitFor({ timeout: 15_000 });
    expect(await page.locator('.wc-gauge').count()).toBe(2);
    expect(await page.getByRole('button', { name: 'Play as trainee' }).isDisabled()).toBe(true);
  });
});

describe('a scenario of one’s own', () => {
  test('is played from the workshop, found again after a reload, and told at its end as it is written', {
    timeout: 300_000,
  }, async () => {
    const { page } = await openPage({ path: '?workshop=1', context });
    await atCar(page);
    const kept = await page.evaluate(() => localStorage.getItem('portside-workshop'));
    await page.getByRole('combobox', { name: 'Played in' }).selectOption('explore');
    const pages = await page.evaluate(() => history.length);
    await page.getByRole('button', { name: 'Play as trainee' }).dblclick();
    const start = page.locator('.brief .btn.pri');
    await start.waitFor();
    expect(page.url()).toMatch(/scenario=own-[0-9a-f]{16}&mode=explore/);
    expect(await page.evaluate(() => history.length)).toBe(pages + 1);
    // what was begun is not lost to whoever reloads in the same moment
    await start.evaluate((button: HTMLElement) => {
      button.click();
      setTimeout(() => location.reload(), 10);
    });
    await page.getByText('Fine until it stands, explore').waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: /^Go on from/ }).click();
    await page.getByRole('button', { name: 'Finish the job' }).click();
    await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
    await page.waitForSelector('.debrief', { timeout: 120_000 });
    expect(await page.title()).toContain('Fine until it stands');

    await page.getByRole('button', { name: 'Back to the workshop' }).click();
    await page.locator('.wc-says li').first().waitFor({ timeout: 90_000 });
    const draft = (text: string | null): string => JSON.parse(text ?? '{}').text;
    expect(draft(await page.evaluate(() => localStorage.getItem('portside-workshop')))).toBe(draft(kept));
    expect(await page.getByRole('button', { name: 'Back to the workshop' }).count()).toBe(0);
  });

  test('that this browser does not keep is said to be gone', { timeout: 60_000 }, async () => {
    const { page } = await openPage({ path: '?scenario=own-0123456789abcdef&mode=practice&seed=1' });
    await page.getByText('not kept in this browser').waitFor({ timeout: 30_000 });
  });
});

describe('a proof', () => {
  test('whose program cannot be fetched says so', { timeout: 120_000 }, async () => {
    const { page, context: tabs } = await openPage({ path: '?workshop=1', context });
    await tabs.route(/prove\.worker/, (route) => route.abort());
    await atCar(page);
    await page.getByRole('radio', { name: 'Proof' }).click();
    await page.getByRole('button', { name: 'Prove it' }).click();
    await page.getByRole('alert').filter({ hasText: 'could not be fetched' }).waitFor({ timeout: 15_000 });
    expect(await page.getByRole('button', { name: 'Prove it' }).isEnabled()).toBe(true);
  });

  test('says how far it is and can be stopped; the page goes on', { timeout: 240_000 }, async () => {
    const { page } = await openPage({ path: '?workshop=1', context });
    await atCar(page);
    await page.getByRole('radio', { name: 'Proof' }).click();
    await expectClean(page, 'before a proof');
    await page.getByRole('button', { name: 'Prove it' }).click();
    await page.getByText(/^\d+ of (at most )?\d+ parts are done/).waitFor({ timeout: 90_000 });
    await page.getByText(/^Now.*: .*(every suspect is lived through|bay \d)/).waitFor({ timeout: 20_000 });
    // nor is it lost under the menu
    await page.getByRole('button', { name: 'Menu' }).click();
    await page.getByRole('button', { name: 'Back to where you were' }).click();
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.locator('.wc-progress').waitFor({ state: 'detached' });
    expect(await page.locator('.wc-sheet').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Prove it' }).isEnabled()).toBe(true);
  });
});
