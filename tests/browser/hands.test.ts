/** Hands in the drawn bay, moment by moment: what is said and shown while something is held, by mouse and by finger. */
import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { begin, openSitting, write } from './driver';

type Point = readonly [x: number, y: number];

/** The hatchback, caps off, a charging hose on the mat. */
async function atTheBay(context = {}): Promise<Page> {
  const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', context });
  await begin(page);
  for (const line of ['wear goggles', 'wear gloves', 'door open', 'cap port-a off', 'cap port-b off'])
    await write(page, line);
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.waitForSelector('.bay-twin [data-target="coupler:charging"]');
  return page;
}

const thing = (page: Page, id: string) => page.locator(`.bay-twin [data-target="${id}"]`).first();
const coupler = (page: Page) => thing(page, 'coupler:charging').getAttribute('aria-label');
const hint = (page: Page) => page.locator('.bay-hint').textContent();

async function middleOf(page: Page, id: string): Promise<Point> {
  const box = await thing(page, id).boundingBox();
  if (!box) throw new Error(`"${id}" is not in the bay`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

async function inBay(page: Page, u: number, v: number): Promise<Point> {
  const box = await page.locator('.bay-view').boundingBox();
  if (!box) throw new Error('no bay');
  return [box.x + u * box.width, box.y + v * box.height];
}

async function grab(page: Page): Promise<Point> {
  const at = await middleOf(page, 'coupler:charging');
  await page.mouse.move(...at);
  await page.mouse.down();
  return at;
}

test('a held coupler is told of, its danger before it is let go, and Escape puts it back', async () => {
  const page = await atTheBay();
  const portB = await middleOf(page, 'port-b');
  await grab(page);
  await page.mouse.move(...(await inBay(page, 0.2, 0.6)), { steps: 6 });
  await expect.poll(() => hint(page)).toMatch(/goes on the 13 mm port, middle left/);
  expect(await page.locator('.bay-note:not([hidden])').count()).toBeGreaterThan(1);
  expect(await page.locator('.bay-note.met:not([hidden])').count()).toBe(0);

  await page.mouse.move(...(await inBay(page, 0.55, 0.76)), { steps: 10 });
  await expect
    .poll(() => page.locator('.bay-note.met:not([hidden])').allTextContents())
    .toContain('Fan: a hose lies here');
  expect(await hint(page)).toMatch(/it is caught once/);

  await page.keyboard.press('Escape');
  await expect.poll(() => hint(page)).toBe('');
  await page.mouse.move(...portB, { steps: 4 });
  await page.mouse.up();
  expect(await coupler(page)).toMatch(/on the mat/);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-target'))).toBe(
    'coupler:charging',
  );
});

test('a wrong fitting says its size; a right one holds when it is tugged, and comes off when it is pulled', async () => {
  const page = await atTheBay();
  const [portA, portB] = [await middleOf(page, 'port-a'), await middleOf(page, 'port-b')];
  await grab(page);
  await page.mouse.move(...portA, { steps: 8 });
  await page.mouse.up();
  await expect
    .poll(() => page.locator('.bay-tag.passing:not([hidden])').allTextContents())
    .toEqual(['13 mm does not go over 16 mm']);
  await expect.poll(() => coupler(page)).toMatch(/on the mat/);
  await expect
    .poll(async () => Math.abs((await middleOf(page, 'coupler:charging'))[0] - portA[0]))
    .toBeGreaterThan(60);

  await grab(page);
  await page.mouse.move(...portB, { steps: 8 });
  await page.mouse.up();
  await expect.poll(() => coupler(page)).toMatch(/on the 13 mm port, middle left, shut/);

  await page.mouse.move(...portB);
  await page.mouse.down();
  await page.mouse.move(portB[0] - 20, portB[1] + 6, { steps: 4 });
  await expect.poll(() => hint(page)).toMatch(/holds/);
  await page.mouse.up();
  await expect.poll(() => hint(page)).toBe('');
  expect(await coupler(page)).toMatch(/on the 13 mm port/);

  await page.mouse.down();
  await page.mouse.move(...(await inBay(page, 0.25, 0.7)), { steps: 8 });
  await page.mouse.up();
  await expect.poll(() => coupler(page)).toMatch(/on the mat/);
});

test('the can is carried to the free end of a hose and is on it; the joint holds a tug, and comes apart when it is pulled', async () => {
  const page = await atTheBay();
  const end = () => thing(page, 'end:charging').getAttribute('aria-label');
  const [from, to] = [await middleOf(page, 'can'), await middleOf(page, 'end:charging')];
  await page.mouse.move(...from);
  await page.mouse.down();
  await page.mouse.move(...to, { steps: 8 });
  await expect.poll(() => hint(page)).toMatch(/free end/);
  await page.mouse.up();
  await expect.poll(end).toMatch(/joined to the can/);

  const joint = await middleOf(page, 'end:charging');
  await page.mouse.move(...joint);
  await page.mouse.down();
  await page.mouse.move(joint[0] + 14, joint[1] - 14, { steps: 4 });
  await expect.poll(() => hint(page)).toMatch(/holds on the can/);
  await page.mouse.up();
  await expect.poll(() => hint(page)).toBe('');
  expect(await end()).toMatch(/joined to the can/);

  await page.mouse.down();
  await page.mouse.move(...(await inBay(page, 0.25, 0.7)), { steps: 8 });
  await expect.poll(() => hint(page)).toMatch(/off the can/);
  await page.mouse.up();
  await expect.poll(end).toMatch(/on the mat/);
});

const touch = (cdp: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd', ...at: readonly Point[]) =>
  cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at.map(([x, y], id) => ({ x, y, id })) });

test('a finger holds a coupler under itself, and two fingers bring the bay near', async () => {
  const page = await atTheBay({ hasTouch: true });
  const cdp = await page.context().newCDPSession(page);
  const [from, to] = [await middleOf(page, 'coupler:charging'), await middleOf(page, 'port-b')];
  const finger: Point = [to[0], to[1] + 40];
  await touch(cdp, 'touchStart', from);
  for (let k = 1; k <= 10; k++)
    await touch(cdp, 'touchMove', [
      from[0] + ((finger[0] - from[0]) * k) / 10,
      from[1] + ((finger[1] - from[1]) * k) / 10,
    ]);
  await expect.poll(() => hint(page)).toMatch(/[Gg]oes on the 13 mm port/);
  await touch(cdp, 'touchEnd');
  await expect.poll(() => coupler(page)).toMatch(/on the 13 mm port/);

  const widthOf = async () => (await thing(page, 'engine').boundingBox())?.width ?? 0;
  const before = await widthOf();
  const [x, y] = await inBay(page, 0.6, 0.4);
  await touch(cdp, 'touchStart', [x - 40, y]);
  await touch(cdp, 'touchStart', [x - 40, y], [x + 40, y]);
  for (let k = 1; k <= 6; k++) await touch(cdp, 'touchMove', [x - 40 - 6 * k, y], [x + 40 + 6 * k, y]);
  await touch(cdp, 'touchEnd');
  await expect.poll(widthOf).toBeGreaterThan(before * 1.4);
});
