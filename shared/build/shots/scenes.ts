/** Every screen, and how to get there. A car is shown with its hoses on and its engine running, by its own plan. */
import type { Page } from 'playwright-core';
import { begin, playThrough } from '../../../tests/support/atThePage.ts';
import type { PlanLine } from '../../schema/plan.ts';
import { planOf } from './planOf.ts';

export interface Scene {
  readonly name: string;
  readonly reach: (page: Page, address: string) => Promise<void>;
}

type Form = 'drawn' | 'words';
type Mode = 'explore' | 'practice' | 'assessed';

/** One of each kind of car; its plan is played until the first reading that is taken with the engine on. */
const CARS = {
  pickup: 'leaves-and-a-slipping-hub',
  hatchback: 'cold-spot',
  sedan: 'click-click',
  van: 'warm-in-the-front',
  compact: 'leaves',
  electric: 'fan-that-thinks',
} as const;
const JOB = CARS.hatchback;

const at = (name: string, query: string, further?: (page: Page) => Promise<void>): Scene => ({
  name,
  async reach(page, address) {
    await page.goto(address + query);
    await page.waitForSelector('h1');
    await further?.(page);
  },
});

const press = (selector: string) => (page: Page) => page.locator(selector).first().click();
const named = (name: string) => (page: Page) =>
  page.getByRole('button', { name, exact: false }).first().click();

const address = (scenario: string, mode: Mode): string => `?scenario=${scenario}&mode=${mode}&seed=1&lapse=0`;

async function setForm(page: Page, bay: Form): Promise<void> {
  await page.evaluate(
    (form) => localStorage.setItem('portside-settings', JSON.stringify({ bay: form })),
    bay,
  );
}

/** Opens a job; `lines` are played in words before the form asked for is shown. */
async function atWork(
  page: Page,
  home: string,
  {
    scenario,
    lines,
    mode = 'practice',
    form = 'drawn',
  }: {
    readonly scenario: string;
    readonly lines: readonly PlanLine[];
    readonly mode?: Mode;
    readonly form?: Form;
  },
): Promise<void> {
  await page.goto(home);
  await setForm(page, lines.length > 1 ? 'words' : form);
  await page.goto(home + address(scenario, mode));
  await page.waitForSelector('.brief .btn.pri');
  if (lines.length > 1) await playThrough(page, lines);
  else await begin(page);
  if (lines.length > 1 && form === 'drawn') {
    await page.waitForTimeout(2500);
    await setForm(page, form);
    await page.reload();
    await page.locator('.rsum').waitFor({ timeout: 60_000 });
    await page.locator('.rcard .btn.pri:not([aria-disabled="true"])').press('Enter');
    await page.waitForSelector('.clock');
  }
  await page.waitForTimeout(2000);
}

/** Lines of a plan up to the first reading after the engine is on, or the car is. */
function untilRead(lines: readonly PlanLine[]): PlanLine[] {
  const on = lines.findIndex((line) => typeof line === 'string' && /^(engine [1-9]|ac on)/.test(line));
  const read = lines.findIndex(
    (line, index) => index > on && typeof line === 'string' && /^note-/.test(line),
  );
  return lines.slice(0, read < 0 ? on + 1 : read + 1);
}

const working = (
  name: string,
  further?: (page: Page) => Promise<void>,
  mode: Mode = 'practice',
  form: Form = 'drawn',
): Scene => ({
  name,
  async reach(page, home) {
    await atWork(page, home, { scenario: JOB, lines: untilRead(planOf(JOB, 'solution')), mode, form });
    await further?.(page);
  },
});

const debrief = (name: string, scenario: string, plan: 'solution' | 'careless' | 'nothing'): Scene => ({
  name,
  async reach(page, home) {
    await atWork(page, home, { scenario, lines: planOf(scenario, plan), form: 'words' });
    await page.waitForSelector('.debrief', { timeout: 120_000 });
  },
});

export const scenes: readonly Scene[] = [
  at('shelf', ''),
  at('menu', '', named('Menu')),
  at('help', '', named('Help')),
  at('car-card', '?card=1'),
  at('drill', '?drill=1&seed=3&level=2'),
  at('briefing', address(JOB, 'practice')),
  ...Object.entries(CARS).map(
    ([vehicle, scenario]): Scene => ({
      name: `bay-${vehicle}`,
      reach: (page, home) => atWork(page, home, { scenario, lines: untilRead(planOf(scenario, 'solution')) }),
    }),
  ),
  ...Object.entries(CARS).map(
    ([vehicle, scenario]): Scene => ({
      name: `found-${vehicle}`,
      reach: (page, home) => atWork(page, home, { scenario, lines: ['begin'] }),
    }),
  ),
  working('inside', named('See inside')),
  working('finding', named('Write a finding')),
  working('cause', named('It is something else')),
  working('assessed', undefined, 'assessed'),
  working('words', undefined, 'practice', 'words'),
  working('hint', press('.dec .btn.qt')),
  debrief('debrief-well', 'the-label-lies', 'solution'),
  debrief('debrief-careless', 'the-label-lies', 'careless'),
  debrief('debrief-nothing', 'the-label-lies', 'nothing'),
];
