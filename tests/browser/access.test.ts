/** Every screen and what opens on it is clean at every size, in every theme. A few sessions, looked at as they go on. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeFindings, DESK, expectClean, PHONE } from '../support/cleanScreen';
import { openPage } from '../support/openPage';
import { begin, openSitting, runOn, write } from './driver';

const context = { viewport: DESK, reducedMotion: 'reduce' } as const;
const pressed = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const shut = async (page: Page): Promise<void> => {
  await page.keyboard.press('Escape');
  await page.waitForSelector('.form', { state: 'detached' });
};

test('shelf, menu and help, and the menu in Spanish', { timeout: 480_000 }, async () => {
  const { page } = await openPage({ context });
  await page.waitForSelector('.scn');
  await expectClean(page, 'shelf', 'screen');
  await pressed(page, 'Menu');
  await page.waitForSelector('.menu');
  await expectClean(page, 'menu');
  await pressed(page, 'Help');
  await page.waitForSelector('.helpg');
  await expectClean(page, 'help', 'screen');
  await pressed(page, 'Menu');
  await page.getByRole('radio', { name: 'Español' }).click();
  await page.getByRole('heading', { name: 'Menú' }).waitFor();
  await expectClean(page, 'menu in Spanish');
});

test('the car card with its label, and the drill with its answer', { timeout: 480_000 }, async () => {
  const { page } = await openPage({ path: '?card=1', context });
  await page.waitForSelector('.cc-card', { timeout: 60_000 });
  await expectClean(page, 'card', 'screen');
  await page.getByRole('radio', { name: 'Conversion label' }).click();
  await page.waitForSelector('.cc-sticker');
  await expectClean(page, 'label');
  await page.goto(`${page.url().split('?')[0]}?drill=1&seed=9&level=1`);
  await page.waitForSelector('.drill-things button');
  await expectClean(page, 'drill, question', 'screen');
  await page.locator('.dab button').first().click();
  await page.waitForSelector('.verd');
  await expectClean(page, 'drill, answer');
});

test('the drawn bay, its forms and its close-ups', { timeout: 480_000 }, async () => {
  const { page } = await openSitting({ scenario: 'warm-at-the-lights', mode: 'practice', context }, 'drawn');
  await expectClean(page, 'briefing');
  await begin(page);
  await page.waitForSelector('.bay-twin [data-target]', { state: 'attached' });
  await expectClean(page, 'work', 'screen');
  for (const tool of ['Gauge set', 'Can 1']) {
    await page.locator('.tool', { hasText: tool }).click();
    await page.waitForSelector('.form');
    await expectClean(page, tool);
    await shut(page);
  }
  await page.locator('.ctl .btn').first().click();
  await expectClean(page, 'controls of the car');
  await shut(page);
  await page.locator('.bay-twin [data-target="port-a"]').first().focus();
  await page.keyboard.press('Enter');
  await page.waitForSelector('.form canvas');
  await expectClean(page, 'close-up');
  await shut(page);
  await pressed(page, 'Other entries');
  for (const stage of ['What car it is', 'Sums', 'Handing over'])
    await page.locator('.form summary', { hasText: stage }).click();
  await expectClean(page, 'entries');
  await shut(page);
  await pressed(page, 'Hint');
  await page.waitForSelector('.hintp');
  await page.locator('.hintp .btn').click();
  await expectClean(page, 'hint');
  await page.keyboard.press('Escape');
  for (const theme of ['dark', 'projector']) {
    await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme);
    expect(await axeFindings(page), theme).toEqual([]);
  }
  await page.evaluate(() => document.documentElement.removeAttribute('data-theme'));
  await page.setViewportSize(PHONE);
  await pressed(page, 'Job card');
  await expectClean(page, 'job card on a phone');
  await pressed(page, 'More');
  await page.waitForSelector('.sheetb');
  await expectClean(page, 'decisions on a phone');
});

test('the bay in words, a caution, a stop, a second tab', { timeout: 480_000 }, async () => {
  const { page, context: tabs } = await openSitting({ scenario: 'the-wrong-can', mode: 'practice', context });
  await begin(page);
  await write(page, 'wear goggles');
  await expectClean(page, 'in words', 'screen');
  await pressed(page, 'Service information');
  await expectClean(page, 'papers');
  await shut(page);
  await pressed(page, 'Write a finding');
  await expectClean(page, 'finding');
  await shut(page);
  await page.locator('.cmd input').fill('open-loop compressor');
  await page.locator('.cmd input').press('Enter');
  await page.waitForSelector('.caution');
  await expectClean(page, 'caution');
  while ((await page.locator('.caution').count()) > 0) await page.locator('.caution .btn').last().click();
  await page.locator('.dlg').waitFor();
  await expectClean(page, 'stopped');
  await page.keyboard.press('Escape');
  await page.waitForSelector('.dlg', { state: 'detached' });
  await write(page, 'wear gloves');
  await page.waitForTimeout(300);
  const second = await tabs.newPage();
  await second.goto(page.url());
  await second.getByText(/state [0-9a-f]{16}/).waitFor({ timeout: 30_000 });
  await expectClean(second, 'going on');
  await second.keyboard.press('Enter');
  await second.waitForSelector('.clock');
  await expectClean(second, 'in another tab');
});

test('see-inside, the debrief and what would have been', { timeout: 480_000 }, async () => {
  const { page } = await openSitting({ scenario: 'warm-at-the-lights', mode: 'practice', context });
  await begin(page);
  for (const line of ['door open', 'blower 4']) await write(page, line);
  await runOn(page, '10 s');
  await pressed(page, 'Drawn bay');
  await pressed(page, 'See inside');
  await page.waitForSelector('.phd');
  await expectClean(page, 'see-inside', 'screen');
  await page.getByRole('button', { name: 'Bay', exact: true }).click();
  await pressed(page, 'Finish the job');
  await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
  await page.waitForSelector('.debrief', { timeout: 90_000 });
  for (const part of ['happened', 'thought', 'why']) {
    await page.locator(`[data-part="${part}"]`).click();
    await expectClean(page, `debrief, ${part}`, 'screen');
  }
  await page.locator('.wi-act').nth(1).focus();
  await page.keyboard.press('Delete');
  await page.locator('.wi-answer strong').waitFor({ timeout: 60_000 });
  await expectClean(page, 'what if');
  for (const view of ['Table', 'Diagram']) {
    await page.getByRole('radio', { name: view }).click();
    await expectClean(page, `debrief, ${view}`);
  }
  await page.locator('[data-part="next"]').click();
  await expectClean(page, 'debrief, next');
});
