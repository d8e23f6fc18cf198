/**
 * Looks at a screen as it stands: axe finds nothing; at every size nothing is cut off at the side, no text is smaller than
 * 12 px, no target smaller than 24 px. Between sizes the page stays, so what was opened stays open.
 */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

export const DESK = { width: 1366, height: 768 };
export const PHONE = { width: 390, height: 844 };

const MEASURED = [
  PHONE,
  { width: 1024, height: 600 },
  // a laptop's page at twice its size, and the narrowest page there is
  { width: 683, height: 384 },
  { width: 320, height: 640 },
];

/** What axe finds, by rule and place. */
export async function axeFindings(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary}`),
  );
}

/** What does not fit or is too small. Charts, tables and the drawing may scroll by themselves. */
function measures(): string[] {
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
}

/** Text at twice its size in a window that stays as it is: nothing leaves the page. */
async function doubled(page: Page): Promise<string[]> {
  await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
  return width > DESK.width + 1 ? [`sideways ${width}`] : [];
}

/** `screen`: a whole screen is laid out anew on a phone and asked about there too; what opens over it is the same. */
export async function expectClean(
  page: Page,
  where: string,
  kind: 'screen' | 'opened' = 'opened',
): Promise<void> {
  const at = page.viewportSize() ?? DESK;
  const found: Record<string, readonly string[]> = {};
  const note = (how: string, what: readonly string[]): void => {
    if (what.length > 0) found[`${where}, ${how}`] = what;
  };
  for (const size of [...MEASURED, at]) {
    await page.setViewportSize(size);
    note(`${size.width} x ${size.height}`, await page.evaluate(measures));
    if (size === at || (size === PHONE && kind === 'screen'))
      note(`axe, ${size.width} x ${size.height}`, await axeFindings(page));
  }
  if (at.width === DESK.width) note('text twice as large', await doubled(page));
  expect(found).toEqual({});
}
