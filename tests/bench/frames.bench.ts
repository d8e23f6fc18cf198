/**
 * Frames of the built page at 1366 x 768 while hands are at work: engine on, lapse 60, one hose falling while the next is
 * carried, the can tilting. Told is the main thread's own time for each frame, which a busy machine does not stretch, and
 * how long a press takes to be on the screen; as it is, and with the processor four times as slow.
 */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { builtPage } from './builtPage';
import { frameTimes, share, type TraceEvent } from './frameTimes';

const SCENARIO = 'click-click';
const CATEGORIES = ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'];
const READY = [
  ...['wear goggles', 'wear gloves', 'door open', 'cap port-a off', 'cap port-b off'],
  ...['tap can-1 charging', 'blower 4', 'engine 1500', 'ac on'],
];
const CYCLES = 3;
const PRESSES = 8;
const SLOW = 4;

export function frames(): Promise<Record<string, number>> {
  return builtPage(async (newPage, address) => {
    const page = await atWork(await newPage(), address);
    const browser = page.context().browser() as Browser;
    const cdp = await page.context().newCDPSession(page);
    return { ...(await measured(browser, page, cdp, 1)), ...(await measured(browser, page, cdp, SLOW)) };
  });
}

/** The drawn bay with everything ready and the engine running. */
async function atWork(page: Page, address: string): Promise<Page> {
  await page.addInitScript(() => localStorage.setItem('portside-settings', '{"bay":"words"}'));
  await page.goto(`${address}?scenario=${SCENARIO}&mode=practice&seed=1&lapse=60`);
  await page.locator('.brief .btn.pri').press('Enter');
  for (const line of READY) {
    await page.locator('.cmd input').fill(line);
    await page.locator('.cmd input').press('Enter');
    while ((await page.locator('.caution').count()) > 0) {
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
    }
  }
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.waitForSelector('.bay-twin [data-target="coupler:high"]');
  return page;
}

async function measured(
  browser: Browser,
  page: Page,
  cdp: CDPSession,
  rate: number,
): Promise<Record<string, number>> {
  await cdp.send('Emulation.setCPUThrottlingRate', { rate });
  await browser.startTracing(page, { categories: CATEGORIES });
  for (let cycle = 0; cycle < CYCLES; cycle++) {
    await swing(page, 'coupler:low');
    await turnDial(page);
    await swing(page, 'coupler:high');
  }
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] };
  const times = frameTimes(trace.traceEvents);
  const waits = await pressWaits(page);
  const at = rate === 1 ? '' : `, ${rate} x slower`;
  return {
    [`frame, median${at}, ms`]: share(times, 0.5),
    [`frame, 95 of 100${at}, ms`]: share(times, 0.95),
    [`press to picture, median${at}, ms`]: share(waits, 0.5),
    [`press to picture, longest${at}, ms`]: share(waits, 1),
  };
}

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
