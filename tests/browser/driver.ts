/**
 * A person at the page, for tests: opens a session in words, writes lines as a plan has them, answers cautions, waits for
 * the clock. Everything goes by keyboard.
 */
import type { Page } from 'playwright-core';
import type { PlanLine } from '../../shared/schema/plan';
import { type Opened, type Opening, openPage } from '../support/openPage';

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

export async function begin(page: Page): Promise<void> {
  await page.locator('.brief .btn.pri').press('Enter');
  await page.waitForSelector('.brief', { state: 'detached' });
}

export const stepOf = async (page: Page): Promise<number> =>
  Number(await page.locator('.clock').getAttribute('data-step'));

/** Writes one line and sends it off; a caution is answered by going on. */
export async function write(page: Page, line: string): Promise<void> {
  await page.locator('.cmd input').fill(line);
  await page.locator('.cmd input').press('Enter');
  while ((await page.locator('.caution').count()) > 0) {
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
  }
}

const RUN_STEPS: Readonly<Record<string, number>> = { '10 s': 500, '1 min': 3000, '5 min': 15_000 };

/** Lets the clock run on and waits until it is held again. */
export async function runOn(page: Page, wait: string): Promise<void> {
  const before = await stepOf(page);
  await write(page, `run-on ${wait}`);
  const exact = RUN_STEPS[wait];
  await page.waitForFunction(
    ({ from, steps }) => {
      const clock = document.querySelector<HTMLElement>('.clock');
      const step = Number(clock?.dataset.step);
      return clock?.dataset.running === '' && (steps === null ? step > from : step === from + steps);
    },
    { from: before, steps: exact ?? null },
    { timeout: 60_000 },
  );
}

/** A plan, line by line. */
export async function playThrough(page: Page, lines: readonly PlanLine[]): Promise<void> {
  for (const line of lines) {
    if (line === 'begin') await begin(page);
    else if (typeof line === 'string') await write(page, line);
    else if ('repeat' in line) {
      const { repeat, times } = line as { repeat: PlanLine[]; times: number };
      for (let time = 0; time < times; time++) await playThrough(page, repeat);
    } else {
      const { 'run-on': wait, times = 1 } = line as { 'run-on': string; times?: number };
      for (let time = 0; time < times; time++) await runOn(page, wait);
    }
  }
}

/** Hash of the log as the debrief prints it. */
export async function debriefText(page: Page, what: 'score' | 'log-hash' | 'state-hash'): Promise<string> {
  await page.waitForSelector('.debrief', { timeout: 90_000 });
  return (await page.locator(`[data-testid="${what}"]`).textContent()) ?? '';
}
