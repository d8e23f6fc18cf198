import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { begin, openSitting, write } from './driver';

/** The hatchback, empty, caps off both ports, hands protected: everything lies ready in the drawn bay. */
async function atTheBay(
  lines: readonly string[] = [],
  mode: 'practice' | 'assessed' = 'practice',
): Promise<Page> {
  const { page } = await openSitting({ scenario: 'weighed-in', mode });
  await begin(page);
  const ready = ['wear goggles', 'wear gloves', 'door open', 'cap port-a off', 'cap port-b off'];
  for (const line of [...ready, ...lines]) await write(page, line);
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.waitForSelector('.bay-twin [data-target="coupler:charging"]');
  return page;
}

const thing = (page: Page, id: string) => page.locator(`.bay-twin [data-target="${id}"]`).first();
const nameOf = (page: Page, id: string) => thing(page, id).getAttribute('aria-label');
const coupler = (page: Page) => nameOf(page, 'coupler:charging');

async function middleOf(page: Page, id: string): Promise<readonly [number, number]> {
  const box = await thing(page, id).boundingBox();
  if (!box) throw new Error(`"${id}" is not in the bay`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Carries the charging hose's coupler from the mat past points given in shares of the bay, to a thing. */
async function carry(page: Page, past: readonly (readonly [number, number])[], to: string): Promise<void> {
  const host = await page.locator('.bay-view').boundingBox();
  if (!host) throw new Error('no bay');
  const end = await middleOf(page, to);
  await page.mouse.move(...(await middleOf(page, 'coupler:charging')));
  await page.mouse.down();
  for (const [u, v] of past)
    await page.mouse.move(host.x + u * host.width, host.y + v * host.height, { steps: 12 });
  await page.mouse.move(end[0], end[1], { steps: 12 });
  await page.mouse.up();
}

describe('a coupler in the drawn bay', () => {
  test('is dragged on to the fitting it matches', async () => {
    const page = await atTheBay();
    await carry(page, [[0.2, 0.6]], 'port-b');
    await expect.poll(() => coupler(page)).toMatch(/on the 13 mm port, middle left, shut/);
    expect(await nameOf(page, 'port-b')).toMatch(/Charging hose coupler on it/);
  });

  test('let go over a fitting it does not match, falls', async () => {
    const page = await atTheBay();
    await carry(page, [[0.2, 0.6]], 'port-a');
    await expect.poll(() => coupler(page)).toMatch(/on the mat/);
    expect(await nameOf(page, 'port-a')).toMatch(/cap off/);
    const [x, y] = await middleOf(page, 'port-a');
    await expect
      .poll(async () => {
        const [cx, cy] = await middleOf(page, 'coupler:charging');
        return Math.hypot(cx - x, cy - y) > 80;
      })
      .toBe(true);
  });

  test('goes the same way by a click on it and a click on the port', async () => {
    const page = await atTheBay();
    await page.mouse.click(...(await middleOf(page, 'coupler:charging')));
    await page.mouse.click(...(await middleOf(page, 'port-b')));
    await expect.poll(() => coupler(page)).toMatch(/on the 13 mm port/);
  });

  test('and by keyboard: Space, Tab to a place where it fits, Space; K opens it', async () => {
    const page = await atTheBay();
    await thing(page, 'coupler:charging').focus();
    await page.keyboard.press('Space');
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    expect(await focused()).toMatch(/13 mm port.*straight over the fender/);
    await page.keyboard.press('Space');
    await expect.poll(() => coupler(page)).toMatch(/on the 13 mm port.*shut/);
    await thing(page, 'port-b').focus();
    await page.keyboard.press('k');
    await expect.poll(() => coupler(page)).toMatch(/on the 13 mm port.*open/);
  });

  test('Escape puts it back, and focus with it', async () => {
    const page = await atTheBay();
    await thing(page, 'coupler:charging').focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Escape');
    expect(await coupler(page)).toMatch(/on the mat/);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-target'))).toBe(
      'coupler:charging',
    );
  });
});

describe('a hose dragged through the fan while it turns', () => {
  test('is caught, and the debrief says so', { timeout: 120_000 }, async () => {
    const page = await atTheBay(['blower 4', 'engine 1500', 'ac on'], 'assessed');
    await page.getByRole('radio', { name: '×1', exact: true }).click();
    await carry(
      page,
      [
        [0.2, 0.75],
        [0.4, 0.78],
        [0.56, 0.76],
        [0.5, 0.5],
        [0.38, 0.42],
      ],
      'port-b',
    );
    await expect.poll(() => coupler(page), { timeout: 20_000 }).toMatch(/hose caught/);
    await page.getByRole('button', { name: 'Finish the job' }).click();
    await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
    await page.waitForSelector('.debrief', { timeout: 90_000 });
    expect(await page.locator('.debrief').textContent()).toMatch(/caught/i);
  });
});

describe('the can in the drawn bay', () => {
  test('is tilted by its dial and by keys, its valve turned by keys', async () => {
    const page = await atTheBay(['tap can-1 charging']);
    const tilt = () => thing(page, 'can-tilt').getAttribute('aria-valuetext');
    const box = await thing(page, 'can-tilt').boundingBox();
    if (!box) throw new Error('no dial');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y - 12);
    await page.mouse.down();
    await page.mouse.move(x + 12, y, { steps: 4 });
    await page.mouse.up();
    await expect.poll(tilt).toBe('90°');
    await thing(page, 'can-tilt').focus();
    await page.keyboard.press(']');
    await expect.poll(tilt).toBe('95°');
    await page.keyboard.press('End');
    await expect.poll(tilt).toBe('180°');
    await thing(page, 'can-valve').focus();
    await page.keyboard.press('+');
    await expect.poll(() => thing(page, 'can-valve').getAttribute('aria-valuenow')).toBe('1');
  });
});

/** By how much two pictures differ on the mean, of 255; null where they differ in size. Their edges may be rounded otherwise. */
const unlikeness = (page: Page, pictures: readonly Buffer[]): Promise<number | null> =>
  page.evaluate(
    async (sources) => {
      const pixelsOf = async (source: string): Promise<Uint8ClampedArray> => {
        const image = new Image();
        image.src = `data:image/png;base64,${source}`;
        await image.decode();
        const ink = new OffscreenCanvas(image.width, image.height).getContext('2d');
        ink?.drawImage(image, 0, 0);
        return ink?.getImageData(0, 0, image.width, image.height).data ?? new Uint8ClampedArray();
      };
      const [one, other] = await Promise.all(sources.map(pixelsOf));
      if (one.length !== other.length) return null;
      return one.reduce((sum, value, at) => sum + Math.abs(value - other[at]), 0) / one.length;
    },
    pictures.map((picture) => picture.toString('base64')),
  );

describe('the picture of the bay', () => {
  const opened = async (before: () => void = () => undefined): Promise<Page> => {
    const context = { reducedMotion: 'reduce' } as const;
    const { page } = await openSitting({ scenario: 'weighed-in', context, before }, 'drawn');
    await begin(page);
    await page.waitForSelector('.bay-twin [data-target]', { state: 'attached' });
    return page;
  };
  const shot = (page: Page): Promise<Buffer> => page.locator('.bay-view > canvas').screenshot();

  test('is the same where a worker paints it and where the page has to', async () => {
    const byWorker = await opened();
    const byPage = await opened(() => {
      Reflect.deleteProperty(HTMLCanvasElement.prototype, 'transferControlToOffscreen');
    });
    const painters = (page: Page): number =>
      page.workers().filter((one) => one.url().includes('paint')).length;
    expect([painters(byWorker), painters(byPage)]).toEqual([1, 0]);
    const blank = byPage.locator('.bay-view').evaluate((bay) => {
      const canvas = bay.querySelector('canvas')?.getContext('2d');
      return canvas?.getImageData(300, 300, 60, 60).data.every((value, at, all) => value === all[at % 4]);
    });
    expect(await blank).toBe(false);
    await expect
      .poll(async () => unlikeness(byPage, [await shot(byWorker), await shot(byPage)]), { timeout: 30_000 })
      .toBeLessThan(0.5);
  });
});

/** Everything of the bay Tab comes to, with how far its middle lies past the picture, CSS pixels. */
async function pastThePicture(page: Page): Promise<Record<string, number>> {
  const past: Record<string, number> = {};
  const stop = () =>
    page.evaluate(() => {
      const host = document.querySelector('.bay-view')?.getBoundingClientRect() ?? new DOMRect();
      const element = document.activeElement as HTMLElement;
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const [x, y] = [(left + right) / 2, (top + bottom) / 2];
      return {
        id: element.closest('.bay-twin') === null ? undefined : element.dataset.target,
        away: Math.max(host.left - x, x - host.right, host.top - y, y - host.bottom),
      };
    });
  await page.locator('.bay-twin > *').first().focus();
  for (;;) {
    await page.keyboard.press('Tab');
    const { id, away } = await stop();
    if (id === undefined) return past;
    past[id] = Math.round(away);
  }
}

describe('what keys come to in the drawn bay', () => {
  test.each([
    [1024, 600],
    [390, 844],
  ])('is in the picture, however near, at %i × %i', async (width, height) => {
    const context = { viewport: { width, height } };
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice', context }, 'drawn');
    await begin(page);
    await page.waitForSelector('.bay-twin [data-target]', { state: 'attached' });
    await page.getByRole('button', { name: 'Nearer' }).click();
    const past = Object.entries(await pastThePicture(page));
    expect(past.length).toBeGreaterThan(20);
    expect(past.filter(([, away]) => away > 0)).toEqual([]);
  });
});
