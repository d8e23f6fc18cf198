/** The page in Spanish: chosen in the menu or by the browser, one language fetched, and nothing of it cut off. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { cutOff } from '../support/cutOff';
import { openPage } from '../support/openPage';
import { begin, openSitting, write } from './driver';

const SIZES = [
  { width: 1366, height: 768 },
  { width: 1024, height: 600 },
  { width: 390, height: 844 },
] as const;

/** Most tools of all. */
const BUSIEST = 'from-twelve';
/** Goggles, gloves and overall stand before the tools, each of which opens a form. */
const WORN = 3;

const expectWhole = async (page: Page, where: string): Promise<void> =>
  expect(await page.evaluate(cutOff), where).toEqual([]);

describe.each(SIZES)('in Spanish at $width x $height nothing is cut off', (viewport) => {
  const context = { viewport, locale: 'es-MX', reducedMotion: 'reduce' } as const;
  const isNarrow = viewport.width < 700;

  test('on shelf, menu, help, drill and card', { timeout: 90_000 }, async () => {
    const { page } = await openPage({ context });
    await page.waitForSelector('.scn');
    await expectWhole(page, 'shelf');
    await page.getByRole('button', { name: 'Menú' }).click();
    await page.waitForSelector('.menu');
    await expectWhole(page, 'menu');
    await page.getByRole('button', { name: 'Ayuda', exact: true }).first().click();
    await page.waitForSelector('.helpg');
    await expectWhole(page, 'help');
    const home = page.url().split('?')[0];
    await page.goto(`${home}?drill=1&seed=4&level=2`);
    await page.waitForSelector('.drillp');
    await expectWhole(page, 'drill');
    await page.locator('.dab .btn').first().click();
    await expectWhole(page, 'drill, answered');
    await page.goto(`${home}?card=1`);
    await page.waitForSelector('.cc-card', { timeout: 30_000 });
    await expectWhole(page, 'card');
  });

  test('on the work screen and in its forms', { timeout: 120_000 }, async () => {
    const { page } = await openSitting({ scenario: BUSIEST, mode: 'practice', context }, 'drawn');
    await expectWhole(page, 'briefing');
    await begin(page);
    await page.waitForSelector('[data-target]', { state: 'attached' });
    await expectWhole(page, 'work');
    const tools = await page.locator('.tool').count();
    for (let tool = WORN; tool < tools; tool++) {
      await page.locator('.tool').nth(tool).click();
      await page.locator('.form').waitFor();
      await expectWhole(page, `form of tool ${tool}`);
      await page.keyboard.press('Escape');
    }
    if (isNarrow) await page.getByRole('button', { name: 'Hoja', exact: true }).click();
    await page.getByRole('button', { name: 'Otras anotaciones' }).click();
    for (const stage of await page.locator('.form summary').all()) await stage.click();
    await expectWhole(page, 'entries');
    await page.keyboard.press('Escape');
  });

  test('in words, in see-inside, in the debrief', { timeout: 120_000 }, async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', context });
    await begin(page);
    await write(page, 'door open');
    await write(page, 'wear goggles');
    await expectWhole(page, 'in words');
    await page.getByRole('button', { name: 'Puesto dibujado' }).click();
    await page.getByRole('button', { name: isNarrow ? 'Por dentro' : 'Ver por dentro' }).click();
    await page.waitForSelector('.phd', { state: 'attached' });
    await expectWhole(page, 'see-inside');
    await page.getByRole('button', { name: 'Puesto', exact: true }).click();
    await page.getByRole('button', { name: isNarrow ? 'Más' : 'Terminar el trabajo', exact: true }).click();
    if (isNarrow) await page.locator('.sheetb').getByRole('button', { name: 'Terminar el trabajo' }).click();
    await page.locator('.form').getByRole('button', { name: 'Terminar el trabajo' }).click();
    await page.waitForSelector('.debrief');
    await expectWhole(page, 'debrief');
    for (const step of await page.locator('.steps button').all()) {
      await step.click();
      await expectWhole(page, `debrief, ${await step.textContent()}`);
    }
  });
});

describe('the language of the page', () => {
  test('is chosen in the menu, kept, and does not touch what was done', { timeout: 90_000 }, async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', seed: 7 }, 'words');
    await begin(page);
    await write(page, 'door open');
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
    const before = await page.locator('.clock').getAttribute('data-step');
    await page.getByRole('button', { name: 'Menu' }).click();
    await page.getByRole('radio', { name: 'Español' }).click();
    await page.getByRole('heading', { name: 'Ajustes' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Español');
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    await page.getByRole('button', { name: 'Volver adonde estaba' }).click();
    await page.waitForSelector('.cmd');
    expect(await page.locator('.clock').getAttribute('data-step')).toBe(before);
    expect(await page.locator('body').textContent()).toContain('Puerta del taller abierta');
    await page.goto(page.url().split('?')[0]);
    await page.getByRole('heading', { name: '¿Qué coche toca hoy?' }).waitFor();
  });

  test('is the only one that is fetched', { timeout: 90_000 }, async () => {
    const fetched: string[] = [];
    const { page, context } = await openPage({ path: '', context: { locale: 'es-ES' } });
    context.on('request', (request) => fetched.push(request.url()));
    await page.goto(`${page.url().split('?')[0]}?scenario=weighed-in&mode=explore&seed=1`);
    await begin(page);
    const texts = fetched.filter((url) => /\/(words|told|after|law)-[a-z]{2}-/.test(url));
    expect(texts.length).toBeGreaterThan(2);
    expect(texts.filter((url) => !/\/\w+-es-/.test(url))).toEqual([]);
  });
});
