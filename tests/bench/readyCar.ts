/** A session at work: briefing read, hands and bay ready, a can on its hose, engine and air conditioning on; in words. */
import type { Page } from 'playwright-core';
import { begin, write } from '../support/atThePage';

const LINES = [
  ...['wear goggles', 'wear gloves', 'door open', 'cap port-a off', 'cap port-b off'],
  ...['tap can-1 charging', 'blower 4', 'engine 1500', 'ac on'],
];

/** `where`: the address with its session. */
export async function readyCar(page: Page, where: string): Promise<void> {
  await page.addInitScript(() => localStorage.setItem('portside-settings', '{"bay":"words"}'));
  await page.goto(where);
  await begin(page);
  for (const line of LINES) await write(page, line);
}

/** From the words to the drawing, until hands can work in it. No handle is kept: it would hold the bay it belongs to. */
export async function showDrawn(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.locator('.bay-twin [data-target="coupler:high"]').waitFor();
}

export async function showInside(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'See inside' }).first().click();
  await page.locator('.inside .flow-arrow').first().waitFor();
}
