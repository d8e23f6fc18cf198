/** The written line of the bay in words: help, and what is left of a line that was refused. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { cutOff } from '../support/cutOff';
import { begin, openSitting, write } from './driver';

const JOB = { scenario: 'weighed-in', mode: 'practice', seed: 7 } as const;
const timeout = 90_000;

const typed = (page: Page): Promise<string> => page.locator('.cmd input').inputValue();
const spoken = (page: Page) => page.locator('.cmd [role="status"]');

describe.each([
  ['en-GB', 'help', 'orders, listed below', 'wear goggles'],
  ['es-MX', 'ayuda', 'órdenes, en la lista', 'en inglés'],
])('in %s', (locale, asked, says, note) => {
  test('lists the orders and keeps no refused text before the next', { timeout }, async () => {
    const context = { locale, viewport: { width: 390, height: 844 } } as const;
    const { page } = await openSitting({ ...JOB, context }, 'words');
    await begin(page);
    expect(await page.locator('#words-note').textContent()).toContain(note);
    await write(page, 'waer goggles');
    await page.locator('.cmd', { hasText: '"wear"' }).waitFor();
    await page.keyboard.type(asked);
    expect(await typed(page)).toBe(asked);
    await page.keyboard.press('Enter');
    expect(await typed(page)).toBe('');
    await page.locator('.cmds code', { hasText: 'wear <goggles | gloves | overall>' }).waitFor();
    await expect.poll(() => spoken(page).textContent(), { timeout: 10_000 }).toContain(says);
    expect(await page.evaluate(cutOff)).toEqual([]);
    await write(page, 'wear goggles');
    await expect.poll(() => spoken(page).textContent(), { timeout: 10_000 }).not.toContain(says);
    expect(await typed(page)).toBe('');
  });
});
