/**
 * A person at the page, for tests: opens a session in the form asked for. Everything goes by keyboard.
 */
import type { Page } from 'playwright-core';
import { type Opened, type Opening, openPage } from '../support/openPage';

export { begin, playThrough, runOn, stepOf, write } from '../support/atThePage';

export interface Sitting extends Opened {
  readonly page: Page;
}

export interface SittingOptions extends Opening {
  readonly scenario: string;
  readonly mode?: 'explore' | 'practice' | 'assessed';
  readonly seed?: number;
  readonly lapse?: number;
  /** Runs in the page before anything of it. */
  readonly before?: () => void;
}

/** Opens a session in the form asked for; the job has not begun. */
export async function openSitting(
  options: SittingOptions,
  bay: 'drawn' | 'words' = 'words',
): Promise<Sitting> {
  const { scenario, mode = 'assessed', seed = 1, lapse = 0, before, ...opening } = options;
  const opened = await openPage({ ...opening, path: '' });
  if (before) await opened.context.addInitScript(before);
  await opened.page.evaluate(
    (form) => localStorage.setItem('portside-settings', JSON.stringify({ bay: form })),
    bay,
  );
  await opened.page.goto(
    `${opened.page.url().split('?')[0]}?scenario=${scenario}&mode=${mode}&seed=${seed}&lapse=${lapse}`,
  );
  await opened.page.waitForSelector('.brief .btn.pri');
  return opened;
}

/** Hash of the log as the debrief prints it. */
export async function debriefText(page: Page, what: 'score' | 'log-hash' | 'state-hash'): Promise<string> {
  await page.waitForSelector('.debrief', { timeout: 90_000 });
  return (await page.locator(`[data-testid="${what}"]`).textContent()) ?? '';
}
