import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { readSessionFile } from '../../src/session/sessionFile';
import { begin, openSitting, runOn, type Sitting, write } from './driver';

const part = (page: Page, name: string) => page.locator(`[data-part="${name}"]`).click();
const pill = (page: Page, words: string) => page.locator('.wi-act', { hasText: words });
const answer = (page: Page) => page.locator('.wi-answer strong');

/** A short job with a look that changes nothing and a blower that does. */
async function finished(mode: 'practice' | 'assessed'): Promise<Sitting> {
  const sitting = await openSitting({ scenario: 'warm-at-the-lights', mode });
  const { page } = sitting;
  await begin(page);
  for (const line of ['door open', 'look fan', 'engine 800', 'ac on']) await write(page, line);
  await runOn(page, '10 s');
  await write(page, 'blower 4');
  await runOn(page, '10 s');
  await page.getByRole('button', { name: 'Finish the job' }).click();
  await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
  await page.waitForSelector('.debrief', { timeout: 90_000 });
  return sitting;
}

describe('the debrief', () => {
  test('shows no score before its part, and keeps what was thought in the file', {
    timeout: 180_000,
  }, async () => {
    const { page } = await finished('assessed');
    expect(await page.locator('.bigsc').count()).toBe(0);
    await part(page, 'thought');
    await page.getByLabel('What surprised you?').fill('The needle stood still.');
    await page.getByRole('button', { name: 'Show why' }).click();
    await page.waitForSelector('.bigsc');
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save session file' }).click();
    const { thought } = readSessionFile(readFileSync(await (await coming).path(), 'utf8'));
    expect(thought).toEqual({ surprised: 'The needle stood still.', otherwise: '' });
    await page.locator('.finds .linkb').first().click();
    await page.waitForSelector('.mo .phd');
    expect(await page.getByRole('button', { name: 'Go on from here' }).count()).toBe(0);
  });

  test('runs a job again without an action, and says where the two part', { timeout: 180_000 }, async () => {
    const { page } = await finished('practice');
    await part(page, 'why');
    await pill(page, 'Blower').focus();
    await page.keyboard.press('Delete');
    await answer(page).waitFor({ timeout: 100_000 });
    expect(await page.locator('.wide-only .trace.other').count()).toBe(4);
    expect(await page.locator('.wide-only .apart-line').count()).toBe(1);
    expect(await page.locator('.wi-act.parts').textContent()).toContain('Blower');
    const told = await page.locator('.wi-answer').textContent();
    await page.getByRole('button', { name: 'Menu' }).first().click();
    await page.keyboard.press('Escape');
    await answer(page).waitFor({ timeout: 2_000 });
    expect(await page.locator('.wi-answer').textContent()).toBe(told);
    await pill(page, 'Blower').focus();
    await page.keyboard.press('Escape');
    expect(await page.locator('.trace.other').count()).toBe(0);
    await pill(page, 'fan').first().focus();
    await page.keyboard.press('Alt+ArrowRight');
    await expect
      .poll(() => answer(page).textContent(), { timeout: 100_000 })
      .toMatch(/no difference|same to the last digit/);
    expect(await page.locator('.wide-only .apart-line').count()).toBe(0);
  });

  test('lets one go on from a moment in practice', { timeout: 180_000 }, async () => {
    const { page } = await finished('practice');
    await page.locator('.mts button', { hasText: 'Engine' }).click();
    await page.getByRole('button', { name: 'Go on from here' }).click();
    await page.waitForSelector('.clock', { timeout: 90_000 });
    expect(await page.locator('.clock').getAttribute('data-step')).toBe('0');
    await write(page, 'engine 1500');
  });
});
