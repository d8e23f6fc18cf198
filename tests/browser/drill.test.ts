import AxeBuilder from '@axe-core/playwright';
import { describe, expect, test } from 'vitest';
import { canEnlarge, enlargeText } from '../support/enlargeText';
import { openPage } from '../support/openPage';

const SIZES = [
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
] as const;

describe.each(SIZES)('the port drill at $width x $height', (viewport) => {
  test('is followed and answered from the keyboard, says why, and goes on to another bay', async () => {
    const { page } = await openPage({ path: '?drill=1&seed=9&level=1', context: { viewport } });
    await page.waitForSelector('.drill-things button');
    const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].target}`)).toEqual([]);

    // from a port along the loop until a part decides
    await page.locator('.dnext button').first().press('Enter');
    for (let i = 0; i < 20 && (await page.getByText('This part decides.').count()) === 0; i++) {
      const fresh = page.locator('.dnext button:not(.cur)', { hasNotText: 'Port' });
      await fresh.last().press('Enter');
    }
    expect(await page.getByText('This part decides.').count()).toBe(1);
    expect(await page.locator('.drill-things [aria-pressed="true"]').count()).toBeGreaterThan(2);

    const question = await page.locator('#drill-question').textContent();
    await page.locator('.dab button').first().press('Enter');
    await page.waitForSelector('.verd');
    expect(await page.evaluate(() => document.activeElement?.closest('.verd') !== null)).toBe(true);
    expect(await page.locator('.drs li').count()).toBeGreaterThanOrEqual(4);
    const kept = await page.evaluate(() => JSON.parse(localStorage.getItem('portside-drill') ?? '{}'));
    expect(kept.repetition.answered).toBe(1);

    await page.getByRole('button', { name: 'Next bay' }).press('Enter');
    await page.waitForSelector('.dab');
    expect(question).not.toBe('');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('drill-question');
    expect(await page.locator('.dtrace').getByText('Start at a port.').count()).toBe(1);
  });
});

describe.each([
  { how: 'a page at twice its size', viewport: { width: 683, height: 384 }, times: 1 },
  { how: 'text at twice its size', viewport: { width: 1366, height: 768 }, times: 2 },
])('the port drill with $how', ({ viewport, times }) => {
  test('keeps its drawing clear of what stands above and below it', async () => {
    const { page } = await openPage({ path: '?drill=1&seed=9&level=1', context: { viewport } });
    await page.waitForSelector('.drill-things button');
    if (times !== 1) {
      if (!canEnlarge(page)) return;
      await enlargeText(page, times);
    }
    for (const what of ['.top .mark', '.dab button']) await page.locator(what).first().click({ trial: true });
    const drawing = await page.locator('.dhost').boundingBox();
    const header = await page.locator('.top').boundingBox();
    expect(drawing?.y).toBeGreaterThanOrEqual((header?.y ?? 0) + (header?.height ?? Number.NaN));
  });
});

test('a press on the drawing follows what lies there, and arrow keys move to the neighbour', async () => {
  const { page } = await openPage({
    path: '?drill=1&seed=9&level=1',
    context: { viewport: { width: 1366, height: 768 } },
  });
  const port = page.locator('.drill-things button').first();
  await port.waitFor();
  const box = await port.boundingBox();
  if (!box) throw new Error('the port has no place');
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  expect(await port.getAttribute('aria-pressed')).toBe('true');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-pressed'))).toBe('true');
  await page.keyboard.press('ArrowUp');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-pressed'))).toBe('false');
});
