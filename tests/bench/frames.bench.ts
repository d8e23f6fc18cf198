/**
 * Frames of the built page at 1366 x 768 while hands are at work: engine on, lapse 60, one hose falling while the next is
 * carried, the can tilting; then with see-inside open, which takes the bay's place on the screen. Told is the main thread's
 * own time for each frame, which a busy machine stretches least, and how long a press takes until its picture is handed to
 * whoever paints it; as it is, and with the processor four times as slow.
 */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { builtPage } from './builtPage';
import { frameTimes, quantile, type TraceEvent } from './frameTimes';
import { readyCar, showDrawn, showInside } from './readyCar';

const SESSION = '?scenario=click-click&mode=practice&seed=1&lapse=60';
const CATEGORIES = ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'];
const CYCLES = 3;
const LOOKS = 4;
const LOOK_MS = 800;
const PRESSES = 8;
const SLOW = 4;

export function frames(): Promise<Record<string, number>> {
  return builtPage(async (newPage, address) => {
    const page = await newPage();
    await readyCar(page, `${address}${SESSION}`);
    await showDrawn(page);
    const browser = page.context().browser() as Browser;
    const cdp = await page.context().newCDPSession(page);
    const figures = {};
    for (const rate of [1, SLOW]) Object.assign(figures, await measured(browser, page, cdp, rate));
    return figures;
  });
}

async function measured(
  browser: Browser,
  page: Page,
  cdp: CDPSession,
  rate: number,
): Promise<Record<string, number>> {
  await cdp.send('Emulation.setCPUThrottlingRate', { rate });
  const hands = await traced(browser, page, () => work(page));
  const waits = await pressWaits(page);
  await showInside(page);
  const inside = await traced(browser, page, () => look(page));
  await page.getByRole('button', { name: 'Bay', exact: true }).click();
  await page.waitForSelector('.bay-twin [data-target="coupler:high"]');
  const at = rate === 1 ? '' : `, ${rate} x slower`;
  return {
    [`frame, median${at}, ms`]: quantile(hands, 0.5),
    [`frame, 95 of 100${at}, ms`]: quantile(hands, 0.95),
    [`see-inside frame, median${at}, ms`]: quantile(inside, 0.5),
    [`see-inside frame, 95 of 100${at}, ms`]: quantile(inside, 0.95),
    [`press to picture, median${at}, ms`]: quantile(waits, 0.5),
    [`press to picture, longest${at}, ms`]: quantile(waits, 1),
  };
}

async function traced(browser: Browser, page: Page, act: () => Promise<void>): Promise<number[]> {
  await browser.startTracing(page, { categories: CATEGORIES });
  await act();
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] };
  return frameTimes(trace.traceEvents);
}

async function work(page: Page): Promise<void> {
  for (let cycle = 0; cycle < CYCLES; cycle++) {
    await hurry(page);
    await swing(page, 'coupler:low');
    await turnDial(page);
    await swing(page, 'coupler:high');
  }
}

async function look(page: Page): Promise<void> {
  for (let time = 0; time < LOOKS; time++) {
    await hurry(page);
    await page.waitForTimeout(LOOK_MS);
  }
}

/** What is notable slows the clock by itself: it is set going again. */
const hurry = (page: Page): Promise<void> =>
  page.getByRole('radio', { name: '×60', exact: true }).click({ force: true });

async function middleOf(page: Page, id: string): Promise<readonly [number, number]> {
  const box = await page.locator(`.bay-twin [data-target="${id}"]`).first().boundingBox();
  if (!box) throw new Error(`"${id}" is not in the bay`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Carries a coupler over the bay and lets it go: it falls while the next thing is done. */
async function swing(page: Page, id: string): Promise<void> {
  const [x, y] = await middleOf(page, id);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 24; step++) {
    await page.mouse.move(x + step * 12, y + Math.sin(step / 4) * 60);
    await page.waitForTimeout(12);
  }
  await page.mouse.up();
}

async function turnDial(page: Page): Promise<void> {
  const [x, y] = await middleOf(page, 'can-tilt');
  await page.mouse.move(x, y - 12);
  await page.mouse.down();
  for (let step = 0; step < 9; step++) {
    await page.mouse.move(x + 12 * Math.sin(step / 3), y - 12 * Math.cos(step / 3));
    await page.waitForTimeout(14);
  }
  await page.mouse.up();
}

/** From a press on a coupler to the end of the frame that shows it in the hand, in the page's own time. */
async function pressWaits(page: Page): Promise<number[]> {
  await page.evaluate(() => {
    const waits: number[] = [];
    Object.assign(window, { waits });
    document.querySelector('.bay-view')?.addEventListener('pointerdown', (event) =>
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => waits.push(performance.now() - event.timeStamp);
        port2.postMessage(null);
      }),
    );
  });
  for (let press = 0; press < PRESSES; press++) {
    await page.mouse.move(...(await middleOf(page, 'coupler:low')));
    await page.mouse.down();
    await page.mouse.up();
    await page.keyboard.press('Escape');
    await page.waitForTimeout(150);
  }
  return page.evaluate(() => (window as unknown as { waits: number[] }).waits);
}
