/** Opens a job; `lines` are played in words before the form asked for is shown. */
import type { Page } from 'playwright-core';
import { begin, playThrough } from '../../../tests/support/atThePage.ts';
import type { PlanLine } from '../../schema/plan.ts';

export interface Work {
  readonly scenario: string;
  readonly lines: readonly PlanLine[];
  readonly mode?: 'explore' | 'practice' | 'assessed';
  readonly form?: 'drawn' | 'words';
}

export async function atWork(page: Page, home: string, work: Work): Promise<void> {
  const { scenario, lines, mode = 'practice', form = 'drawn' } = work;
  const isPlayed = lines.length > 1;
  await page.goto(home);
  await setForm(page, isPlayed ? 'words' : form);
  await page.goto(`${home}?scenario=${scenario}&mode=${mode}&seed=1&lapse=0`);
  await page.waitForSelector('.brief .btn.pri');
  if (isPlayed) await playThrough(page, lines);
  else await begin(page);
  if (isPlayed && form === 'drawn') {
    await page.waitForTimeout(2500);
    await setForm(page, form);
    await page.reload();
    await page.locator('.rsum').waitFor({ timeout: 60_000 });
    await page.locator('.rcard .btn.pri:not([aria-disabled="true"])').press('Enter');
    await page.waitForSelector('.clock');
  }
  await page.waitForTimeout(2000);
}

const setForm = (page: Page, bay: 'drawn' | 'words'): Promise<void> =>
  page.evaluate((form) => {
    const kept = JSON.parse(localStorage.getItem('portside-settings') ?? '{}');
    localStorage.setItem('portside-settings', JSON.stringify({ ...kept, bay: form }));
  }, bay);
