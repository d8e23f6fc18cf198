/** Plays a plan by hand at the drawn page: every command through its door, every wait through the clock's menu. */
import type { PlanLine } from '../../../shared/schema/plan';
import type { WordId } from '../../../src/words/words';
import { stepOf } from '../atThePage';
import { doors, type Job } from './doors';
import type { Hands } from './hands';
import { said } from './ways';

export async function playByHand(hands: Hands, lines: readonly PlanLine[], job: Job): Promise<void> {
  for (const line of lines) {
    if (line === 'begin') continue;
    if (typeof line === 'string') await through(hands, line, job);
    else if ('repeat' in line) {
      const { repeat, times } = line as { repeat: PlanLine[]; times: number };
      for (let time = 0; time < times; time++) await playByHand(hands, repeat, job);
    } else {
      const { 'run-on': how, times = 1 } = line as { 'run-on': string; times?: number };
      for (let time = 0; time < times; time++) await wait(hands, how);
    }
  }
}

async function through(hands: Hands, line: string, job: Job): Promise<void> {
  const words = line.split(' ');
  const door = doors[words[0]];
  if (!door) throw new Error(`nobody knows the door to "${line}"`);
  try {
    await door(hands, words, job);
  } catch (error) {
    throw new Error(`"${line}": ${error instanceof Error ? error.message : String(error)}`, { cause: error });
  }
}

const RUNS: Readonly<Record<string, WordId>> = {
  '10 s': 'work.clock.run10s',
  '1 min': 'work.clock.run1min',
  '5 min': 'work.clock.run5min',
  'until something happens': 'work.clock.runNotable',
};

/** Lets the clock run on by its menu, and waits until it is held. */
async function wait(hands: Hands, how: string): Promise<void> {
  const { page } = hands;
  await hands.close();
  const before = await stepOf(page);
  await hands.press(page.locator('.clock .ro'));
  await hands.press(page.getByRole('menuitem', { name: said(RUNS[how]) }));
  await page.waitForFunction(
    (from) => {
      const clock = document.querySelector<HTMLElement>('.clock');
      return clock?.dataset.running === '' && Number(clock.dataset.step) > from;
    },
    before,
    { timeout: 90_000 },
  );
}
