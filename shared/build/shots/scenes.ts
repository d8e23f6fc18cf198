/** Every screen, and how to get there. A car is shown with its hoses on and its engine running, by its own plan. */
import type { Page } from 'playwright-core';
import type { PlanLine } from '../../schema/plan.ts';
import { atWork, type Work } from './atWork.ts';
import { planOf } from './planOf.ts';
import type { Further, Scene } from './scene.ts';

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
const LONG = { timeout: 120_000 };

const at = (
  name: string,
  query: string,
  reach?: (page: Page) => Promise<void>,
  more?: Partial<Scene>,
): Scene => ({
  name,
  async reach(page, address) {
    await page.goto(address + query);
    await page.waitForSelector('h1');
    await reach?.(page);
  },
  ...more,
});

const press = (selector: string) => (page: Page) => page.locator(selector).first().click();
const named = (name: string) => (page: Page) =>
  page.getByRole('button', { name, exact: false }).first().click();
const chosen = (name: string) => (page: Page) => page.getByRole('radio', { name, exact: true }).click();
/** Away with what lies over the screen, then on. */
const afterEsc = (reach: (page: Page) => Promise<void>) => async (page: Page) => {
  await page.keyboard.press('Escape');
  await page.waitForTimeout(300);
  await reach(page);
};
const lookAt = (target: string) => async (page: Page) => {
  await page.locator(`.bay-twin [data-target="${target}"]`).focus();
  await page.keyboard.press('Enter');
};

/** Lines of a plan up to the first reading after the engine is on, or the car is. */
function untilRead(lines: readonly PlanLine[]): PlanLine[] {
  const on = lines.findIndex((line) => typeof line === 'string' && /^(engine [1-9]|ac on)/.test(line));
  const read = lines.findIndex(
    (line, index) => index > on && typeof line === 'string' && /^note-/.test(line),
  );
  return lines.slice(0, read < 0 ? on + 1 : read + 1);
}

const working = (name: string, work: Partial<Work> = {}, more: Partial<Scene> = {}): Scene => ({
  name,
  reach: (page, home) =>
    atWork(page, home, { scenario: JOB, lines: untilRead(planOf(JOB, 'solution')), ...work }),
  ...more,
});
const justBegun = (name: string, scenario: string, more: Partial<Scene> = {}): Scene =>
  working(name, { scenario, lines: ['begin'] }, more);

/** What lies over the running job, one after the other. */
const OVER_THE_JOB: readonly Further[] = [
  { name: 'finding', reach: named('Write a finding') },
  { name: 'entries', reach: afterEsc(named('Other entries')) },
  { name: 'cause', reach: afterEsc(named('It is something else')) },
  { name: 'hint', reach: afterEsc(press('.dec .btn.qt')) },
  { name: 'closer-port', reach: afterEsc(lookAt('port-b')) },
  { name: 'closer-label', reach: afterEsc(lookAt('label')) },
  { name: 'can', reach: afterEsc(named('Can 1')) },
  { name: 'car', reach: afterEsc(press('.ctl .btn')) },
  { name: 'curves', reach: afterEsc(named('Last ten minutes')) },
  { name: 'finish', reach: afterEsc(named('Finish the job')) },
  { name: 'clock', reach: afterEsc(named('Run on')) },
  { name: 'inside', reach: afterEsc(named('See inside')) },
  { name: 'menu-over-job', reach: named('Menu') },
];

const part = (name: string) => press(`[data-part="${name}"]`);
const DEBRIEF: readonly Further[] = [
  { name: 'debrief-thought', reach: part('thought') },
  { name: 'debrief-why', reach: part('why') },
  {
    name: 'what-if',
    shows: '.wi',
    async reach(page) {
      await page.locator('.wi-act').nth(4).focus();
      await page.keyboard.press('Delete');
      await page.locator('.wi-answer strong').waitFor(LONG);
    },
  },
  { name: 'debrief-moment', reach: press('.finds .linkb') },
  { name: 'debrief-next', reach: part('next') },
  { name: 'menu-over-debrief', reach: named('Menu') },
];

const debrief = (name: string, plan: 'solution' | 'careless' | 'nothing', more: Partial<Scene>): Scene => ({
  name,
  async reach(page, home) {
    await atWork(page, home, {
      scenario: 'the-label-lies',
      lines: planOf('the-label-lies', plan),
      mode: plan === 'careless' ? 'assessed' : 'practice',
      form: 'words',
    });
    await page.waitForSelector('.debrief', LONG);
  },
  ...more,
});

const atStarts = (page: Page) => page.locator('.ws-starts').waitFor(LONG);
const WORKSHOP: readonly Further[] = [
  {
    name: 'workshop-text',
    async reach(page) {
      await named('One fault')(page);
      await page.getByText('No errors, no advice').waitFor(LONG);
    },
  },
  {
    name: 'workshop-suspects',
    shows: '.ws-car',
    async reach(page) {
      await page.waitForTimeout(8000);
      await chosen('Suspects')(page);
      await page.getByText('Suspects and what they show').waitFor({ timeout: 240_000 });
    },
  },
  {
    name: 'workshop-proof',
    shows: '.ws-car',
    async reach(page) {
      await chosen('Proof')(page);
      await chosen('Quick')(page);
      await named('Prove it')(page);
      await page.locator('.wc-made [role="status"]').waitFor({ timeout: 420_000 });
    },
  },
];

const CAUTION: readonly Further[] = [
  {
    name: 'caution',
    async reach(page) {
      await page.locator('.cmd input').fill('open-loop compressor');
      await page.locator('.cmd input').press('Enter');
      await page.waitForSelector('.caution');
    },
  },
];

/** A machine that is not made for what is in the car: the careless way of a job, up to the stop. */
const stopped: Scene = {
  name: 'stopped',
  async reach(page, home) {
    const lines = planOf('the-label-lies', 'careless');
    const on = lines.indexOf('run recovery-machine on');
    await atWork(page, home, { scenario: 'the-label-lies', lines: lines.slice(0, on + 1), form: 'words' });
    await page.locator('.cmd input').fill('run-on 10 s');
    await page.locator('.cmd input').press('Enter');
    await page.waitForSelector('.dlg');
  },
};

const SPANISH = { settings: { language: 'es' }, lightOnly: true } as const;
const PROJECTOR = { settings: { look: 'projector' }, lightOnly: true } as const;
const LARGE = { large: true, lightOnly: true } as const;
const cars = Object.entries(CARS);

export const scenes: readonly Scene[] = [
  at('shelf', ''),
  at('menu', '', named('Menu')),
  at('help', '', named('Help')),
  at('car-card', '?card=1', (page) => page.locator('.cc-sheet').first().waitFor(LONG), {
    then: [{ name: 'conversion-label', reach: chosen('Conversion label') }],
  }),
  at('drill', '?drill=1&seed=3&level=2', undefined, {
    then: [{ name: 'drill-answer', reach: named('Low side') }],
  }),
  at('briefing', `?scenario=${JOB}&mode=practice&seed=1&lapse=0`, async (page) => {
    await page.waitForSelector('.brief .btn.pri');
  }),
  ...cars.map(
    ([vehicle, scenario]): Scene =>
      working(
        `bay-${vehicle}`,
        { scenario, lines: untilRead(planOf(scenario, 'solution')) },
        scenario === JOB ? { then: OVER_THE_JOB } : {},
      ),
  ),
  ...cars.map(([vehicle, scenario]): Scene => justBegun(`found-${vehicle}`, scenario)),
  working('assessed', { mode: 'assessed' }),
  working('words', { form: 'words' }, { then: CAUTION }),
  stopped,
  debrief('debrief-well', 'solution', { then: DEBRIEF }),
  debrief('debrief-careless', 'careless', { then: [{ name: 'why-careless', reach: part('why') }] }),
  debrief('debrief-nothing', 'nothing', { then: [{ name: 'why-nothing', reach: part('why') }] }),
  at('workshop', '?workshop=1', atStarts, { then: WORKSHOP }),
  at('shelf-es', '', undefined, SPANISH),
  justBegun('found-es', CARS.van, SPANISH),
  debrief('debrief-es', 'careless', { ...SPANISH, then: [{ name: 'why-es', reach: part('why') }] }),
  at('workshop-es', '?workshop=1', atStarts, SPANISH),
  at('shelf-projector', '', undefined, PROJECTOR),
  working('bay-projector', {}, PROJECTOR),
  at('shelf-large', '', undefined, LARGE),
  justBegun('found-large', JOB, LARGE),
  working('bay-large', {}, LARGE),
  debrief('debrief-large', 'careless', LARGE),
  at('workshop-large', '?workshop=1', atStarts, LARGE),
];
