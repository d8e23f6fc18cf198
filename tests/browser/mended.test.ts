import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';
import { readSessionFile } from '../../src/session/sessionFile';
import { begin, openSitting, runOn, write } from './driver';

const thing = (page: Page, id: string) => page.locator(`.bay-twin [data-target="${id}"]`).first();
const outcome = (page: Page) => page.locator('.form [role="status"]').textContent();
const focusIsIn = (page: Page, selector: string) =>
  page.evaluate((where) => document.activeElement?.closest(where) !== null, selector);

async function drawnBay(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.waitForSelector('.bay-twin [data-target="coupler:charging"]');
}

async function finish(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Finish the job' }).click();
  await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
}

describe('an open form', () => {
  test('says itself what came of a press, refused or done', async () => {
    const { page } = await openSitting({ scenario: 'warm-at-the-lights', mode: 'practice' });
    await begin(page);
    for (const line of ['door open', 'engine 800']) await write(page, line);
    await page.getByRole('button', { name: 'It is something else…' }).first().click();
    await page.locator('.form summary').first().click();
    await page.locator('.form').getByRole('button', { name: 'Put a new fan relay in' }).click();
    await expect.poll(() => outcome(page)).toMatch(/engine/i);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Write a finding' }).click();
    expect(await outcome(page)).toBe('');
    await page.keyboard.press('Escape');
    await write(page, 'engine 0');
    await page.getByRole('button', { name: 'It is something else…' }).first().click();
    await page.locator('.form summary').first().click();
    await page.locator('.form').getByRole('button', { name: 'Put a new fan relay in' }).click();
    await expect.poll(() => outcome(page)).toContain('A new part is in.');
  });

  test('keeps focus when the focused button goes, so that Escape closes it', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
    await begin(page);
    for (const line of ['wear goggles', 'wear gloves']) await write(page, line);
    await page.getByRole('button', { name: 'Can 1' }).click();
    const mount = page.locator('.form').getByRole('button', { name: 'the charging hose' });
    await expect.poll(() => focusIsIn(page, '.form')).toBe(true);
    await mount.focus();
    await page.keyboard.press('Enter');
    await mount.waitFor({ state: 'detached' });
    await expect.poll(() => focusIsIn(page, '.form')).toBe(true);
    expect(await page.locator('.form').getByRole('button', { name: /purge/ }).count()).toBe(1);
    await page.keyboard.press('Escape');
    await page.waitForSelector('.form', { state: 'detached' });
  });

  test('leads focus from coupling to the valve, so that a second Enter undoes nothing', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
    await begin(page);
    for (const line of ['wear goggles', 'wear gloves', 'wear overall', 'cap port-a off', 'cap port-b off'])
      await write(page, line);
    await page
      .getByRole('button', { name: /charging hose/i })
      .first()
      .click();
    await page.locator('.form .do-row button').last().press('Enter');
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await expect.poll(focused).toBe('Open the coupler');
  });
});

test('a debrief that does not load says so and leads on', { timeout: 120_000 }, async () => {
  const { page, problems } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
  await page.route(/DebriefPage/, (route) => route.fulfill({ status: 404, body: '' }));
  await begin(page);
  await finish(page);
  await page.getByText('A part of the program did not load').waitFor();
  expect(problems.join()).toContain('404');
  problems.length = 0;
  await page.unroute(/DebriefPage/);
  await page.getByRole('button', { name: 'Load the page again' }).click();
  await page.waitForSelector('.debrief', { timeout: 60_000 });
});

test('a drawing that does not load leaves the panels to work with, and says so', async () => {
  const { page, problems } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
  await begin(page);
  await page.route(/bayView/, (route) => route.fulfill({ status: 404, body: '' }));
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.getByText('The drawing of the bay did not load').waitFor();
  expect(problems.join()).toContain('404');
  problems.length = 0;
  await page.locator('.tool', { hasText: 'Goggles' }).click();
  await expect.poll(() => page.locator('.tool', { hasText: 'Goggles' }).textContent()).toContain('worn');
});

describe('a session that is kept', () => {
  test('is not offered to go on with once finished; its address shows the debrief', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', seed: 3 });
    const address = page.url();
    await begin(page);
    await finish(page);
    await page.waitForSelector('.debrief', { timeout: 60_000 });
    await page.goto(address.split('?')[0]);
    await page.waitForSelector('.scn .best');
    expect(await page.getByRole('button', { name: 'Go on' }).count()).toBe(0);
    await page.goto(address);
    await page.waitForSelector('.debrief', { timeout: 60_000 });
  });

  test('is saved from its card as a file that runs again to its hashes', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', seed: 4 });
    await begin(page);
    await write(page, 'wear goggles');
    await page.waitForTimeout(300);
    await page.reload();
    await page.locator('.rcard progress').waitFor();
    await page.getByText('You left this at').waitFor();
    await page.getByText(/state [0-9a-f]{16}/).waitFor();
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save session file' }).click();
    const { log, last } = readSessionFile(readFileSync(await (await coming).path(), 'utf8'));
    const core = openSession(scenarioById('weighed-in'), { mode: 'practice', seed: 4, log });
    expect([core.logHash(), core.stateHash()]).toEqual([last.logHash, last.stateHash]);
  });
});

describe('two tabs', () => {
  test('work on two cars at once', async () => {
    const { page, context } = await openSitting({ scenario: 'weighed-in', mode: 'practice', seed: 5 });
    await begin(page);
    const second = await context.newPage();
    await second.goto(page.url().replace('weighed-in', 'warm-at-the-lights'));
    await begin(second);
    await second.getByRole('button', { name: 'Gloves' }).click();
    await expect
      .poll(() => second.getByRole('button', { name: 'Gloves' }).getAttribute('aria-pressed'))
      .toBe('true');
  });

  test('on one car: the second says so, and may work once the first is gone', async () => {
    const { page, context } = await openSitting({ scenario: 'weighed-in', mode: 'practice', seed: 6 });
    await begin(page);
    await write(page, 'wear goggles');
    await page.waitForTimeout(300);
    const second = await context.newPage();
    await second.goto(page.url());
    await second.getByRole('button', { name: 'Just look' }).waitFor();
    expect(await second.locator('h1').textContent()).toContain('in another tab');
    await page.close();
    await second.getByRole('button', { name: /^Go on from/ }).waitFor();
  });
});

test('what a run-on has lived is kept as soon as it ends', async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', seed: 5 });
  await begin(page);
  await write(page, 'wear goggles');
  await runOn(page, '10 s');
  await page.waitForTimeout(300);
  await page.reload();
  await page.getByRole('button', { name: 'Go on from 00:10' }).waitFor();
});

describe('focus', () => {
  test('stands in the bay behind the door, and F6 goes on from there', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' }, 'drawn');
    await begin(page);
    await expect.poll(() => focusIsIn(page, '#main')).toBe(true);
    await page.keyboard.press('F6');
    expect(await focusIsIn(page, '.bench')).toBe(true);
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await page.keyboard.press('F6');
    expect(await focusIsIn(page, '[data-region]')).toBe(true);
  });

  test('goes to a caution, stays in it, and no coupler is on before it is answered', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
    await begin(page);
    for (const line of ['door open', 'cap port-b off']) await write(page, line);
    await drawnBay(page);
    await thing(page, 'coupler:charging').focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Space');
    await page.waitForSelector('[role="alertdialog"]');
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    await expect.poll(focused).toBe('Put goggles and gloves on');
    for (const key of ['Tab', 'Tab', 'Tab', 'F6']) {
      await page.keyboard.press(key);
      expect(await focusIsIn(page, '[role="alertdialog"]')).toBe(true);
    }
    expect(await thing(page, 'coupler:charging').getAttribute('aria-label')).toMatch(/on the mat/);
    await page.keyboard.press('Escape');
    await page.waitForSelector('[role="alertdialog"]', { state: 'detached' });
    expect(await page.locator('.form').count()).toBe(0);
    await expect
      .poll(() => thing(page, 'coupler:charging').getAttribute('aria-label'))
      .toMatch(/on the 13 mm port.*shut/);
  });
});

test('a press on a coupler opens no valve; the port is named by its place until it is traced', async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
  await begin(page);
  for (const line of [
    'wear goggles',
    'wear gloves',
    'door open',
    'cap port-b off',
    'couple charging port-b side-middle,fender,mat',
  ])
    await write(page, line);
  await drawnBay(page);
  await expect.poll(() => thing(page, 'coupler:charging').getAttribute('aria-label')).toMatch(/shut$/);
  const box = await thing(page, 'coupler:charging').boundingBox();
  if (!box) throw new Error('no coupler');
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await expect.poll(() => page.locator('.form h2').textContent()).toBe('13 mm port, middle left');
  await page.waitForSelector('.form .close-up canvas');
  expect(await thing(page, 'coupler:charging').getAttribute('aria-label')).toMatch(/shut$/);
  await page.locator('.form').getByRole('button', { name: 'Open the coupler valve' }).click();
  await expect.poll(() => thing(page, 'coupler:charging').getAttribute('aria-label')).toMatch(/open$/);
  await page
    .locator('.form')
    .getByRole('button', { name: /Follow the line/ })
    .click();
  await expect.poll(() => page.locator('.form h2').textContent()).toContain('suction line');
});

test.each(['weighed-in', 'warm-at-the-lights'])(
  'an assessed session in words names nothing that tells the loop: %s',
  async (scenario) => {
    const { page } = await openSitting({ scenario });
    expect(await page.locator('.brief').textContent()).toContain('Wear goggles');
    await begin(page);
    const text = ((await page.locator('main').textContent()) ?? '').toLowerCase();
    for (const telling of ['suction line', 'discharge line', 'accumulator', 'drier', 'orifice'])
      expect(text).not.toContain(telling);
    await page.locator('.cmd input').fill('couple gauge-low port-b side-middle,fender,mat');
    await page.locator('.cmd input').press('Enter');
    await page.waitForTimeout(200);
    expect(await page.locator('.caution').count()).toBe(0);
    await page.getByRole('button', { name: 'Finish the job' }).click();
    expect(await page.locator('.form').textContent()).not.toContain('The label is not written.');
  },
);

test('before the job is finished, practice says what still stands; a loose gauge is zeroed under its face', async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
  await begin(page);
  for (const line of ['door open', 'engine 800', 'cap port-b off']) await write(page, line);
  await drawnBay(page);
  await page.locator('.inst').getByRole('button', { name: 'Zero the gauge' }).first().click();
  await page.locator('.bay .status', { hasText: 'zeroed' }).waitFor();
  await page.getByRole('button', { name: 'Finish the job' }).click();
  const said = await page.locator('.form').textContent();
  for (const line of ['engine is running', 'cap is off', 'label is not written'])
    expect(said).toContain(line);
  expect(said).not.toContain('hose is on the car');
});

test('a tool keeps its button and its focus while the clock runs', async () => {
  const { page } = await openSitting({ scenario: 'filled-in-a-hurry', mode: 'practice', lapse: 1 }, 'drawn');
  await begin(page);
  const tools = page.locator('.tool');
  const before = await tools.elementHandles();
  expect(before.length).toBeGreaterThan(10);
  const last = before[before.length - 1];
  await last.focus();
  await page.waitForTimeout(500);
  for (const button of before) expect(await button.evaluate((element) => element.isConnected)).toBe(true);
  expect(await last.evaluate((element) => element === document.activeElement)).toBe(true);
});

test('an arrow key leads past what a car can do without doing it; Enter does it', async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' }, 'drawn');
  await begin(page);
  await page.locator('.ctl .btn').first().click();
  const blower = page.locator('.form').getByRole('radiogroup', { name: 'Blower', exact: true });
  const chosen = () => blower.locator('[aria-checked="true"]').textContent();
  await blower.getByRole('radio').first().waitFor();
  const [first, , third] = await blower.getByRole('radio').allTextContents();
  expect(await chosen()).toBe(first);
  await blower.getByRole('radio').first().focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  expect(await chosen()).toBe(first);
  await page.keyboard.press('Enter');
  await expect.poll(chosen).toBe(third);
  await page.keyboard.press('Tab');
  const holdsFocus = () => blower.evaluate((element) => element.contains(document.activeElement));
  await expect.poll(holdsFocus).toBe(false);
});
