/**
 * Heap of page and worker after garbage is collected: after 45 simulated minutes of one session with the engine running, the
 * bay and see-inside drawn; and by how much the page grows with each session that is opened, begun, drawn and left again, once
 * four have been.
 */
import type { CDPSession, Page } from 'playwright-core';
import { begin, stepOf, write } from '../support/atThePage';
import { builtPage } from './builtPage';
import { readyCar, showDrawn, showInside } from './readyCar';

const sessionOf = (seed: number): string => `?scenario=click-click&mode=explore&seed=${seed}&lapse=1`;
const STEPS = 45 * 3000;
const MOST_WAIT_MS = 180_000;
const SESSIONS_BEFORE = 4;
const SESSIONS = 4;
const MB = 1e6;

export function heap(): Promise<Record<string, number>> {
  return builtPage(async (newPage, address) => {
    const page = await newPage();
    const cdp = await page.context().newCDPSession(page);
    const workerHeap = await followWorker(cdp);
    await readyCar(page, `${address}${sessionOf(1)}`);
    while ((await stepOf(page)) < STEPS) await runOnAWhile(page, '5 min');
    await showDrawn(page);
    await showInside(page);
    const [own, worker] = [await heapOf(cdp), await workerHeap()];
    await page.goto(address);
    await page.waitForLoadState('networkidle');
    const after: number[] = [];
    for (let session = 0; session < SESSIONS_BEFORE + SESSIONS; session++) {
      await openAndLeave(page, sessionOf(2 + session));
      after.push(await heapOf(cdp));
    }
    return {
      'page after 45 min, MB': own / MB,
      'worker after 45 min, MB': worker / MB,
      'growth a session, MB': (after[after.length - 1] - after[SESSIONS_BEFORE - 1]) / SESSIONS / MB,
    };
  });
}

async function heapOf(cdp: CDPSession): Promise<number> {
  await cdp.send('HeapProfiler.collectGarbage');
  return (await cdp.send('Runtime.getHeapUsage')).usedSize;
}

/** As far as the clock goes by itself: something notable may stop it. */
async function runOnAWhile(page: Page, wait: string): Promise<void> {
  const from = await stepOf(page);
  await write(page, `run-on ${wait}`);
  await page.waitForFunction(
    (before) => {
      const clock = document.querySelector<HTMLElement>('.clock');
      return clock?.dataset.running === '' && Number(clock?.dataset.step) > before;
    },
    from,
    { timeout: MOST_WAIT_MS },
  );
}

/** Within the page, so that what is left over is left over. */
async function openAndLeave(page: Page, session: string): Promise<void> {
  const to = (search: string): Promise<void> =>
    page.evaluate((where) => {
      history.pushState(null, '', where);
      dispatchEvent(new PopStateEvent('popstate'));
    }, search);
  await to(session);
  await begin(page);
  await runOnAWhile(page, '10 s');
  await showDrawn(page);
  await to('/');
  await page.waitForSelector('.clock', { state: 'detached' });
}

/** Gives a question after the heap of the worker that was started last. */
async function followWorker(cdp: CDPSession): Promise<() => Promise<number>> {
  let sessionId = '';
  let serial = 0;
  const waiting = new Map<number, (result: { usedSize: number }) => void>();
  cdp.on('Target.attachedToTarget', (event) => {
    sessionId = event.sessionId;
  });
  cdp.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result } = JSON.parse(message);
    waiting.get(id)?.(result);
  });
  await cdp.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  const ask = async (method: string): Promise<{ usedSize: number }> => {
    serial++;
    const answered = new Promise<{ usedSize: number }>((resolve) => waiting.set(serial, resolve));
    await cdp.send('Target.sendMessageToTarget', {
      sessionId,
      message: JSON.stringify({ id: serial, method }),
    });
    return answered;
  };
  return async () => {
    await ask('HeapProfiler.collectGarbage');
    return (await ask('Runtime.getHeapUsage')).usedSize;
  };
}
