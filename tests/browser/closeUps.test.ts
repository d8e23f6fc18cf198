/** Looking closer: every kind of picture opens beside what it shows, axe finds nothing in its form, Escape puts it away. */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { begin, openSitting } from './driver';

const KINDS = ['port-b', 'label', 'drier', 'condenser', 'compressor', 'txv', 'suction'] as const;

async function findings(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).include('.form').setLegacyMode(true).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
}

/** Share of the form's width that its picture fills, and whether the form lies over the thing it is about. */
const stands = (page: Page, target: string): Promise<readonly [fills: number, covers: boolean]> =>
  page.evaluate((id) => {
    const form = document.querySelector('.form')?.getBoundingClientRect();
    const picture = document.querySelector('.close-up canvas')?.getBoundingClientRect();
    const thing = document.querySelector(`.bay-twin [data-target="${id}"]`)?.getBoundingClientRect();
    if (!form || !picture || !thing) return [0, true] as const;
    const middle = thing.left + thing.width / 2;
    return [picture.width / form.width, middle > form.left && middle < form.right] as const;
  }, target);

test('each kind of close-up', { timeout: 120_000 }, async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'assessed' }, 'drawn');
  await begin(page);
  await page.waitForSelector('.bay-twin [data-target="label"]', { state: 'attached' });
  for (const target of KINDS) {
    await page.locator(`.bay-twin [data-target="${target}"]`).focus();
    await page.keyboard.press('Enter');
    await page.waitForSelector('.close-up canvas');
    const [fills, covers] = await stands(page, target);
    expect(fills, target).toBeGreaterThan(0.85);
    expect(covers, target).toBe(false);
    expect(await findings(page), target).toEqual([]);
    await page.keyboard.press('Escape');
    await page.waitForSelector('.form', { state: 'detached' });
  }
  await page.locator('.tool', { hasText: 'Can 1' }).click();
  await page.waitForSelector('.close-up canvas');
  expect(await findings(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.locator('.bay-lens').click();
  await page.waitForSelector('.bay-inset canvas');
  await page.keyboard.press('Escape');
  await page.waitForSelector('.bay-inset', { state: 'hidden' });
});

/** What the close-up shows, as text. */
const pictured = (page: Page): Promise<string> =>
  page.evaluate(() => document.querySelector<HTMLCanvasElement>('.close-up canvas')?.toDataURL() ?? '');

test('a cap that is off is off in the picture too', { timeout: 120_000 }, async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' }, 'drawn');
  await begin(page);
  await page.locator('.bay-twin [data-target="port-b"]').focus();
  await page.keyboard.press('Enter');
  await page.waitForSelector('.close-up canvas');
  const capped = await pictured(page);
  await page.locator('.form button', { hasText: 'Take the cap off' }).click();
  await page.waitForSelector('.form button:has-text("Put the cap on")');
  await expect.poll(() => pictured(page), { timeout: 5_000 }).not.toBe(capped);
  const bare = await pictured(page);
  await page.locator('.form button', { hasText: 'Put the cap on' }).click();
  await expect.poll(() => pictured(page), { timeout: 5_000 }).not.toBe(bare);
});

test('what is pressed stays where it is when the word on the last act has gone', {
  timeout: 120_000,
}, async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' }, 'drawn');
  await begin(page);
  for (const tool of ['Goggles', 'Gloves', 'Can 1']) await page.locator('.tool', { hasText: tool }).click();
  await page.locator('.form button', { hasText: 'the charging hose' }).click();
  await page.locator('.form button', { hasText: 'Take it off the hose' }).waitFor();
  await page.locator('.form .form-outcome p').waitFor();
  const topPx = (): Promise<number> =>
    page.evaluate(() => document.querySelector('.form .step-field')?.getBoundingClientRect().top ?? 0);
  await page.evaluate(() => document.querySelector('.form .fb')?.scrollTo(0, 10_000));
  const before = await topPx();
  await page.locator('.form .form-outcome p').waitFor({ state: 'detached' });
  expect(await topPx()).toBeCloseTo(before, 0);
});
