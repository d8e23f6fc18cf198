/** Hands at a page whose session is open in words: begins, writes lines as a plan has them, answers cautions, waits. */
import type { Page } from 'playwright-core';
import type { PlanLine } from '../../shared/schema/plan';

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
