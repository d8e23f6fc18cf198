/**
 * Looks at a screen as it stands: axe finds nothing; at every size nothing is cut off at the side, no text is smaller than
 * 12 px, no target smaller than 24 px. Between sizes the page stays, so what was opened stays open.
 */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { canEnlarge, enlargeText } from './enlargeText';

export const DESK = { width: 1366, height: 768 };
export const PHONE = { width: 390, height: 844 };

const SMALL = { width: 1024, height: 600 };
const MEASURED = [
  PHONE,
  SMALL,
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

/** Two controls of the same scrolled part of the page that lie over one another. */
function overlaps(): string[] {
  const partOf = (element: Element): Element | null => {
    for (let at = element.parentElement; at; at = at.parentElement) {
      const { overflowX, overflowY, position } = getComputedStyle(at);
      if (/auto|scroll|hidden/.test(overflowX + overflowY) || position !== 'static') return at;
    }
    return null;
  };
  const controls = [...document.querySelectorAll<HTMLElement>('button, select, input:not([type=radio])')]
    .filter((control) => !control.closest('.bay-host, .dhost, .skip, .vh') && control.checkVisibility())
    .map((control) => ({ control, box: control.getBoundingClientRect(), part: partOf(control) }));
  const isOver = (one: DOMRect, other: DOMRect): boolean =>
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > 4 &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 4;
  return controls.flatMap((one, i) =>
    controls
      .slice(i + 1)
      .filter(
        ({ control, box, part }) =>
          part === one.part && !one.control.contains(control) && isOver(one.box, box),
      )
      .map(({ control }) => `${one.control.textContent} over ${control.textContent}`),
  );
}

/** With text at twice its size, in a window that stays as it is, nothing leaves the page and nothing lies over another. */
async function inLargeText(page: Page, at: typeof DESK): Promise<string[]> {
  await enlargeText(page, 2);
  const found: string[] = [];
  for (const size of [DESK, SMALL, PHONE]) {
    await page.setViewportSize(size);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > size.width + 1) found.push(`${size.width}: sideways ${width}`);
    found.push(...(await page.evaluate(overlaps)).map((what) => `${size.width}: ${what}`));
  }
  await enlargeText(page, 1);
  await page.setViewportSize(at);
  return found;
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
  if (at.width === DESK.width && canEnlarge(page)) note('text twice as large', await inLargeText(page, at));
  expect(found).toEqual({});
}
