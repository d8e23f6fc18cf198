import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { begin, openSitting, runOn, write } from './driver';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Middle of a thing of the bay, in the window. */
async function spotOf(page: Page, target: string): Promise<Spot> {
  const box = await page.locator(`[data-target="${target}"]`).boundingBox();
  if (!box) throw new Error(`${target} is not in the bay`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function carry(page: Page, from: Spot, way: readonly Spot[]): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (const { x, y } of way) {
    await page.mouse.move(x, y, { steps: 12 });
    await page.waitForTimeout(350);
  }
  await page.mouse.up();
}

async function readyBay(scenario: string): Promise<Page> {
  const { page } = await openSitting({ scenario, mode: 'practice' }, 'drawn');
  await begin(page);
  await page.waitForSelector('[data-target="coupler:charging"]', { state: 'attached' });
  await page.locator('.tool', { hasText: 'Goggles' }).click();
  await page.locator('.tool', { hasText: 'Gloves' }).click();
  return page;
}

describe('hoses carried by hand', () => {
  test('a coupler let go over a wrong fitting falls, and the page says why', async () => {
    const page = await readyBay('weighed-in');
    const high = await spotOf(page, 'port-a');
    await page.mouse.click(high.x, high.y);
    await page.getByRole('button', { name: 'Take the cap off' }).click();
    await page.keyboard.press('Escape');
    await carry(page, await spotOf(page, 'coupler:charging'), [high]);
    await expect.poll(() => page.locator('.stw .status').textContent()).toMatch(/wider than the coupler/);
    expect(await page.locator('.tool', { hasText: 'Charge hose' }).textContent()).toContain('ready');
  });

  test('a hose led through the turning fan ends as caught in the debrief', { timeout: 90_000 }, async () => {
    const { page } = await openSitting({ scenario: 'warm-at-the-lights' });
    await begin(page);
    const lines = [
      'wear goggles',
      'wear gloves',
      'door open',
      'replace fan',
      'cap port-b off',
      'blower 4',
      'engine 900',
      'ac on',
    ];
    for (const line of lines) await write(page, line);
    await runOn(page, '10 s');
    await page.getByRole('button', { name: 'Drawn bay' }).click();
    await page.waitForSelector('[data-target="coupler:charging"]', { state: 'attached' });
    const fan = await spotOf(page, 'fan');
    const port = await spotOf(page, 'port-b');
    await carry(page, await spotOf(page, 'coupler:high'), [
      fan,
      { x: fan.x, y: port.y - 120 },
      { x: port.x + 60, y: port.y - 60 },
      port,
    ]);
    const hose = page.locator('.tool', { hasText: 'Gauge set' });
    await expect.poll(() => hose.textContent(), { timeout: 5000 }).toContain('coupled');
    await page.getByRole('button', { name: 'Run on' }).click();
    await page.getByRole('menuitem', { name: /^10 s/ }).click();
    await expect.poll(() => hose.textContent(), { timeout: 10_000 }).toContain('caught');
    await page.getByRole('button', { name: 'Finish the job' }).click();
    await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
    await page.waitForSelector('.debrief', { timeout: 60_000 });
    expect(await page.locator('[data-rule="caught"]').textContent()).toMatch(/a hose was caught/);
  });
});
