import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { begin, openSitting, write } from './driver';

async function atTheCar(lapse = 0): Promise<Page> {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', lapse }, 'drawn');
  await begin(page);
  return page;
}

const speed = (page: Page) => page.locator('.clock [role="radio"][aria-checked="true"]').textContent();

describe('an answer pressed twice', () => {
  test('is written once; pressed again later, again', async () => {
    const page = await atTheCar();
    const charge = page.getByRole('button', { name: 'Charge it', exact: true });
    const written = page.locator('.fnd li');
    await charge.dblclick();
    const stop = page.getByRole('button', { name: 'Stop here' });
    await stop.click();
    await expect.poll(() => stop.getAttribute('aria-pressed')).toBe('true');
    expect(await written.count()).toBe(2);
    await page.waitForTimeout(1000);
    await charge.click();
    await expect.poll(() => written.count()).toBe(3);
  });
});

describe('the clock', () => {
  test('held by Space goes on as fast as it ran', async () => {
    const page = await atTheCar();
    await page.getByRole('radio', { name: '×10' }).click();
    await page.keyboard.press('Space');
    await expect.poll(() => speed(page)).toBe('held');
    await page.keyboard.press('Space');
    await expect.poll(() => speed(page)).toBe('×10');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Space');
    await page.keyboard.press('Space');
    await expect.poll(() => speed(page)).toBe('×1');
  });

  test('goes back to ×1 where one writes, says so, and is not raised again by closing', async () => {
    const page = await atTheCar();
    await page.getByRole('radio', { name: '×60' }).click();
    await page.getByRole('button', { name: 'Something else' }).click();
    await page.locator('.form', { hasText: 'Back to ×1' }).waitFor();
    expect(await speed(page)).toBe('×1');
    await page.keyboard.press('Escape');
    await page.locator('.form').waitFor({ state: 'detached' });
    expect(await speed(page)).toBe('×1');
  });
});

test('before a job is finished, a can on its hose and open valves are told', async () => {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
  await begin(page);
  for (const line of ['wear goggles', 'wear gloves', 'tap can-1 charging', 'can-valve can-1 4'])
    await write(page, line);
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.getByRole('button', { name: 'Finish the job' }).click();
  await expect
    .poll(() => page.locator('.form').textContent())
    .toMatch(/on its hose, its valve 1\/4 turn open/);
});
