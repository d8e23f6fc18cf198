import { describe, expect, test } from 'vitest';
import type { SessionLog } from '../../src/session/corePort';
import { openSession } from '../../src/session/openSession';
import { scenarioById, scenarios } from '../../src/session/scenario/library';
import { hashWithoutScreen } from '../support/hashWithoutScreen';
import { isLongRun } from '../support/isLongRun';
import { openPage } from '../support/openPage';
import { begin, debriefText, openSitting, playThrough, runOn, stepOf, write } from './driver';

const PLANS = ['solution', 'careless', 'nothing'] as const;
/** The long run plays all, the short one what goes wrong on one. */
const plays = isLongRun
  ? scenarios.flatMap(({ data }) => PLANS.map((plan) => [data.id, plan] as const))
  : (['careless', 'nothing'] as const).map((plan) => ['warm-at-the-lights', plan] as const);

describe('a plan played through the page by keyboard', () => {
  test.each(plays)(
    '%s, %s: gives the log of the command line',
    { timeout: 180_000 },
    async (scenarioId, plan) => {
      const { page } = await openSitting({ scenario: scenarioId });
      await playThrough(page, scenarioById(scenarioId).data.plans[plan]);
      expect(await debriefText(page, 'log-hash')).toContain(hashWithoutScreen(scenarioId, plan));
    },
  );
});

describe('the clock', () => {
  test('is held until it is told, and runs on by exactly what was asked', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in', mode: 'practice' });
    await begin(page);
    await page.waitForTimeout(400);
    expect(await stepOf(page)).toBe(0);
    await runOn(page, '10 s');
    await runOn(page, '1 min');
    expect(await stepOf(page)).toBe(3500);
  });

  test('runs on until something happens, then stands', async () => {
    const { page } = await openSitting({ scenario: 'warm-at-the-lights', mode: 'practice' });
    await begin(page);
    for (const line of ['door open', 'windows open', 'blower 4', 'engine 1500', 'ac on'])
      await write(page, line);
    await runOn(page, 'until something happens');
    const stood = await stepOf(page);
    expect(stood).toBeLessThan(30_000);
    await page.waitForTimeout(300);
    expect(await stepOf(page)).toBe(stood);
  });

  test('falls back to ×1 when something notable happens', async () => {
    const { page } = await openSitting({ scenario: 'warm-at-the-lights', mode: 'practice' });
    await begin(page);
    for (const line of ['door open', 'windows open', 'blower 4', 'engine 1500', 'ac on'])
      await write(page, line);
    await page.getByRole('radio', { name: '×240' }).click();
    await expect
      .poll(() => page.getByRole('radio', { name: '×1', exact: true }).getAttribute('aria-checked'), {
        timeout: 30_000,
      })
      .toBe('true');
  });
});

interface HeardMessage {
  readonly type: string;
  readonly kinds: readonly string[];
  readonly length: number;
  readonly text: string;
}

/** Listens to everything a worker of the page says. */
function listenToWorkers(): void {
  const heard: HeardMessage[] = [];
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener('message', ({ data }) => {
        const kinds = (data.channels ?? []).map((channel: { kind: string }) => channel.kind);
        const text = JSON.stringify({ ...data, frame: undefined, saturation: undefined });
        heard.push({ type: data.type, kinds, length: data.frame?.length ?? -1, text });
      });
    }
  };
  Object.assign(window, { heard });
}

describe('an assessed session', () => {
  test('gets no channel of the truth in its frames, nor anything else of it', async () => {
    const { page } = await openSitting({ scenario: 'warm-at-the-lights', before: listenToWorkers });
    await begin(page);
    for (const line of ['door open', 'blower 4', 'engine 1500', 'ac on']) await write(page, line);
    await runOn(page, '1 min');
    const messages = await page.evaluate(() => (window as unknown as { heard: HeardMessage[] }).heard);
    const opened = messages.find(({ type }) => type === 'opened');
    expect(opened?.kinds.length).toBeGreaterThan(10);
    expect(opened?.kinds).not.toContain('truth');
    const frames = messages.filter(({ type }) => type === 'frame');
    expect(frames.length).toBeGreaterThan(0);
    for (const frame of frames) expect(frame.length).toBe(opened?.kinds.length);
    for (const { text } of messages) expect(text).not.toMatch(/superheatK|subcoolingK|loop\.massKg|vessel\./);
  });

  test('has no see-inside and no hints', async () => {
    const { page } = await openSitting({ scenario: 'weighed-in' }, 'drawn');
    await begin(page);
    expect(await page.getByRole('button', { name: 'See inside' }).count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Hint' }).count()).toBe(0);
  });
});

describe('a session that cannot be opened', () => {
  test('says so, and its worker is ended', async () => {
    const { page, context } = await openPage({ context: { serviceWorkers: 'block' } });
    const body = "postMessage({ type: 'failed', reason: 'planted' });";
    await context.route(/core\.worker/, (route) => route.fulfill({ contentType: 'text/javascript', body }));
    await page.goto(`${page.url()}?scenario=weighed-in&mode=practice&seed=1&lapse=0`);
    await page.getByText('planted').waitFor();
    await expect.poll(() => page.workers().length).toBe(0);
  });

  test('is left before it has opened, and its worker is ended too', async () => {
    const { page, context } = await openPage({ context: { serviceWorkers: 'block' } });
    const home = page.url();
    await context.route(/core\.worker/, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: '' }),
    );
    await page.goto(`${home}?scenario=weighed-in&mode=practice&seed=1&lapse=0`);
    await expect.poll(() => page.workers().length).toBe(1);
    await page.evaluate(() => {
      history.pushState(null, '', '/');
      dispatchEvent(new PopStateEvent('popstate'));
    });
    await expect.poll(() => page.workers().length).toBe(0);
  });
});

describe('a killed tab', () => {
  test('goes on from where it stood, to the same state', async () => {
    const { page, context } = await openSitting({ scenario: 'weighed-in', mode: 'practice', seed: 7 });
    await begin(page);
    for (const line of [
      'wear goggles',
      'wear gloves',
      'door open',
      'trace port-b',
      'cap port-b off',
      'couple charging port-b side-middle,fender,mat',
    ])
      await write(page, line);
    await runOn(page, '1 min');
    await write(page, 'note-reading charging-gauge');
    await page.waitForTimeout(300);
    const address = page.url();
    await page.close({ runBeforeUnload: false });
    const second = await context.newPage();
    await second.goto(address);
    const card = await second.locator('.rsum').textContent({ timeout: 20_000 });
    await expect
      .poll(() => second.locator('.rsum').textContent(), { timeout: 20_000 })
      .toMatch(/state [0-9a-f]{16}/);
    expect(card).toContain('Back from the repair');
    const log = await second.evaluate(
      () =>
        new Promise<SessionLog>((resolve, reject) => {
          const opening = indexedDB.open('portside');
          opening.onerror = () => reject(new Error('no database'));
          opening.onsuccess = () => {
            const request = opening.result.transaction('session').objectStore('session').get('current');
            request.onsuccess = () => resolve(request.result.log ?? request.result);
          };
        }),
    );
    expect(log.lastStep).toBe(3000);
    const again = openSession(scenarioById('weighed-in'), { mode: 'practice', seed: 7, log });
    expect(await second.locator('.rsum').textContent()).toContain(again.stateHash());
    await second.keyboard.press('Enter');
    await second.waitForSelector('.clock');
    expect(await stepOf(second)).toBe(3000);
  });
});

describe('two tabs on one car', () => {
  test('the second one looks and changes nothing', async () => {
    const { page, context } = await openSitting(
      { scenario: 'weighed-in', mode: 'practice', seed: 5 },
      'drawn',
    );
    await begin(page);
    await page.locator('.tool', { hasText: 'Goggles' }).click();
    await expect.poll(() => page.locator('.tool', { hasText: 'Goggles' }).textContent()).toContain('worn');
    await page.waitForTimeout(300);
    const second = await context.newPage();
    await second.goto(page.url());
    await expect
      .poll(() => second.locator('.rsum').textContent(), { timeout: 20_000 })
      .toMatch(/state [0-9a-f]{16}/);
    await second.keyboard.press('Enter');
    await second.getByText('You are working on this car in another tab').waitFor();
    await second.getByRole('button', { name: 'Just look' }).click();
    await second.locator('.tool', { hasText: 'Gloves' }).click();
    await second.waitForTimeout(300);
    expect(await second.locator('.tool', { hasText: 'Gloves' }).textContent()).toContain('off');
  });
});

describe('a browser that keeps nothing', () => {
  test('plays all the same, and the shelf says so', async () => {
    const { page } = await openSitting({
      scenario: 'weighed-in',
      mode: 'practice',
      before: () => {
        const refuse = (): never => {
          throw new DOMException('refused', 'SecurityError');
        };
        Object.defineProperty(window, 'indexedDB', { get: refuse });
        Object.defineProperty(window, 'localStorage', { get: refuse });
      },
    });
    await begin(page);
    await page.locator('.tool', { hasText: 'Goggles' }).click();
    await expect.poll(() => page.locator('.tool', { hasText: 'Goggles' }).textContent()).toContain('worn');
    await page.getByRole('button', { name: 'Portside, to the scenarios' }).click();
    await page.getByText('This browser keeps nothing').waitFor();
  });
});
