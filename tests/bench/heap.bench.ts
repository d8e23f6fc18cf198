/**
 * Heap of page and workers after garbage is collected: after 45 simulated minutes of one session with the engine running, the
 * bay and see-inside drawn; and by how much the page grows with each session that is opened, begun, drawn and left again, once
 * a dozen have been.
 */
import type { CDPSession, Page } from 'playwright-core';
import { begin, stepOf, write } from '../support/atThePage';
import { builtPage } from './builtPage';
import { readyCar, showDrawn, showInside } from './readyCar';

const sessionOf = (seed: number): string => `?scenario=click-click&mode=explore&seed=${seed}&lapse=1`;
const STEPS = 45 * 3000;
const MOST_WAIT_MS = 180_000;
const SESSIONS_BEFORE = 12;
const SESSIONS = 4;
const MB = 1e6;

export function heap(): Promise<Record<string, number>> {
  return builtPage(async (newPage, address) => {
    const page = await newPage();
    const cdp = await page.context().newCDPSession(page);
    const workersHeap = await followWorkers(cdp);
    await readyCar(page, `${address}${sessionOf(1)}`);
    while ((await stepOf(page)) < STEPS) await runOnAWhile(page, '5 min');
    await showDrawn(page);
    await showInside(page);
    const [own, workers] = [await heapOf(cdp), await workersHeap()];
    await page.goto(address);
    await page.waitForLoadState('networkidle');
    const after: number[] = [];
    for (let session = 0; session < SESSIONS_BEFORE + SESSIONS; session++) {
      await openAndLeave(page, sessionOf(2 + session));
      after.push(await heapOf(cdp));
    }
    return {
      'page after 45 min, MB': own / MB,
      'workers after 45 min, MB': workers / MB,
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

interface Answer {
  readonly result: { readonly usedSize: number };
}

/** Gives a question after the heap of all workers that live: the session's own, and the one that paints. */
async function followWorkers(cdp: CDPSession): Promise<() => Promise<number>> {
  const living = new Set<string>();
  const waiting = new Map<number, { readonly of: string; readonly answer: (answer: Answer) => void }>();
  let serial = 0;
  cdp.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type === 'worker') living.add(sessionId);
  });
  /** One that ends before it has answered keeps nothing. */
  const ended = (sessionId: string): void => {
    living.delete(sessionId);
    for (const { of, answer } of waiting.values()) if (of === sessionId) answer({ result: { usedSize: 0 } });
  };
  cdp.on('Target.detachedFromTarget', ({ sessionId }) => ended(sessionId));
  cdp.on('Target.receivedMessageFromTarget', ({ message }) => {
    const told = JSON.parse(message);
    waiting.get(told.id)?.answer(told);
  });
  await cdp.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  const ask = async (sessionId: string, method: string): Promise<number> => {
    serial++;
    const id = serial;
    const answered = new Promise<Answer>((answer) => waiting.set(id, { of: sessionId, answer }));
    const message = JSON.stringify({ id, method });
    await cdp.send('Target.sendMessageToTarget', { sessionId, message }).catch(() => ended(sessionId));
    return (await answered).result.usedSize;
  };
  const heapOfOne = async (sessionId: string): Promise<number> => {
    await ask(sessionId, 'HeapProfiler.collectGarbage');
    return ask(sessionId, 'Runtime.getHeapUsage');
  };
  return async () => {
    const heaps = await Promise.all([...living].map(heapOfOne));
    return heaps.reduce((sum, heap) => sum + heap, 0);
  };
}
