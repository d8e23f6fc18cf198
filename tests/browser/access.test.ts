import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openPage } from '../support/openPage';
import { begin, debriefText, openSitting, write } from './driver';

/** What axe finds on the screen as it stands, by rule and place. */
async function findings(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary}`),
  );
}

const SIZES = [
  { width: 1366, height: 768 },
  { width: 1024, height: 600 },
  { width: 390, height: 844 },
] as const;

/** Nothing is cut off at the side, no text is smaller than 12 px, no target smaller than 24 px. */
async function measures(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    if (document.documentElement.scrollWidth > window.innerWidth + 1)
      found.push(`sideways ${document.documentElement.scrollWidth}`);
    for (const element of document.querySelectorAll<HTMLElement>(
      'button, p, span, td, th, li, dt, dd, label, h1, h2, h3',
    )) {
      if (
        element.offsetParent === null ||
        element.closest('.bay-host, .vh, .bdg') ||
        !element.textContent?.trim()
      )
        continue;
      const size = Number.parseFloat(getComputedStyle(element).fontSize);
      if (size < 11.9) found.push(`${element.className} ${size} px: ${element.textContent.slice(0, 20)}`);
    }
    for (const button of document.querySelectorAll<HTMLElement>('button, select, input:not([type=radio])')) {
      const box = button.getBoundingClientRect();
      if (box.width === 0 || button.closest('.bay-host, .skip')) continue;
      if (Math.min(box.width, box.height) < 23.9)
        found.push(`target ${Math.round(box.width)}x${Math.round(box.height)}: ${button.textContent}`);
    }
    return found;
  });
}

async function expectClean(page: Page): Promise<void> {
  expect(await findings(page)).toEqual([]);
  expect(await measures(page)).toEqual([]);
}

describe.each(SIZES)('at $width x $height', (viewport) => {
  test('the shelf, menu and help are clean', async () => {
    const { page } = await openPage({ context: { viewport, reducedMotion: 'reduce' } });
    await page.waitForSelector('.scn');
    await expectClean(page);
    await page.getByRole('button', { name: 'Menu' }).click();
    await page.waitForSelector('.menu');
    await expectClean(page);
    await page.getByRole('button', { name: 'Help', exact: true }).first().click();
    await page.waitForSelector('.helpg');
    await expectClean(page);
  });

  test('the car card and its label are clean', { timeout: 60_000 }, async () => {
    const { page } = await openPage({ path: '?card=1', context: { viewport, reducedMotion: 'reduce' } });
    await page.waitForSelector('.cc-card', { timeout: 30_000 });
    await expectClean(page);
    await page.getByRole('radio', { name: 'Conversion label' }).click();
    await page.waitForSelector('.cc-sticker');
    await expectClean(page);
  });

  test('the work screen and its forms are clean', { timeout: 120_000 }, async () => {
    const { page } = await openSitting(
      { scenario: 'warm-at-the-lights', mode: 'practice', context: { viewport, reducedMotion: 'reduce' } },
      'drawn',
    );
    await expectClean(page);
    await begin(page);
    await page.waitForSelector('[data-target]', { state: 'attached' });
    await expectClean(page);
    for (const tool of ['Gauge set', 'Can 1', 'Air probe']) {
      await page.locator('.tool', { hasText: tool }).click();
      await page.waitForSelector('.form');
      await expectClean(page);
      await page.keyboard.press('Escape');
    }
    await page.locator('.ctl .btn').first().click();
    await expectClean(page);
    await page.keyboard.press('Escape');
    if (viewport.width < 700) await page.getByRole('button', { name: 'Job card' }).click();
    await page.getByRole('button', { name: 'Other entries' }).click();
    for (const stage of ['What car it is', 'Sums', 'Handing over']) {
      await page.locator('.form summary', { hasText: stage }).click();
      await expectClean(page);
    }
    await page.keyboard.press('Escape');
  });

  test('a caution, the papers and findings are clean', { timeout: 120_000 }, async () => {
    const { page } = await openSitting({
      scenario: 'warm-at-the-lights',
      mode: 'practice',
      context: { viewport, reducedMotion: 'reduce' },
    });
    await begin(page);
    await write(page, 'door shut');
    await page.locator('.cmd input').fill('engine 900');
    await page.locator('.cmd input').press('Enter');
    await page.waitForSelector('.caution');
    await expectClean(page);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Service information' }).first().click();
    await expectClean(page);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Write a finding' }).click();
    await expectClean(page);
    await page.keyboard.press('Escape');
    await expectClean(page);
  });

  test('see-inside and the debrief are clean', { timeout: 120_000 }, async () => {
    const { page } = await openSitting({
      scenario: 'warm-at-the-lights',
      mode: 'practice',
      context: { viewport, reducedMotion: 'reduce' },
    });
    await begin(page);
    await write(page, 'door open');
    await page.getByRole('button', { name: 'Drawn bay' }).click();
    await page.getByRole('button', { name: viewport.width < 700 ? 'Inside' : 'See inside' }).click();
    await page.waitForSelector('.phd');
    await expectClean(page);
    await page.getByRole('button', { name: 'Bay', exact: true }).click();
    await page.getByRole('button', { name: viewport.width < 700 ? 'More' : 'Finish the job' }).click();
    if (viewport.width < 700)
      await page.locator('.sheetb').getByRole('button', { name: 'Finish the job' }).click();
    await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
    await debriefText(page, 'score');
    await expectClean(page);
    await page.getByRole('radio', { name: 'Table' }).click();
    await expectClean(page);
    await page.getByRole('radio', { name: 'Diagram' }).click();
    await expectClean(page);
    for (const part of ['thought', 'why', 'next']) {
      await page.locator(`[data-part="${part}"]`).click();
      await expectClean(page);
    }
  });
});

test('dark and projector keep their contrast', { timeout: 120_000 }, async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' }, 'drawn');
  await begin(page);
  await page.waitForSelector('[data-target]', { state: 'attached' });
  for (const theme of ['dark', 'projector']) {
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);
    expect(await findings(page)).toEqual([]);
  }
});
