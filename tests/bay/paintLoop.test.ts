/** When the bay is painted: when it is wanted and the last picture is done, not in a picture left to the page, never once it is stopped. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createPaintLoop, type Motion } from '../../src/bay/paintLoop';
import { pictureTimer } from '../../src/bay/pictureTimer';

const PICTURE_MS = 1000 / 60;
const asked: ((nowMs: number) => void)[] = [];
let nowMs = 1000;

beforeEach(() => {
  asked.length = 0;
  nowMs = 1000;
  vi.stubGlobal('requestAnimationFrame', (picture: (nowMs: number) => void) => asked.push(picture));
  vi.stubGlobal('cancelAnimationFrame', () => {
    asked.length = 0;
  });
  vi.stubGlobal('document', {
    timeline: {
      get currentTime() {
        return nowMs;
      },
    },
  });
  vi.spyOn(performance, 'now').mockImplementation(() => nowMs);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

/** The next picture of the screen, in which scripts and layout take so long. */
async function picture(takesMs = 0): Promise<void> {
  const beganMs = nowMs;
  for (const one of asked.splice(0)) one(beganMs);
  nowMs += takesMs;
  await new Promise((heard) => setTimeout(heard, 2));
  nowMs = beganMs + Math.max(PICTURE_MS, takesMs);
}

function bay(motion: Motion = 'none') {
  const seen = { painted: 0, isBusy: false };
  const loop = createPaintLoop(
    () => motion,
    () => void seen.painted++,
    () => seen.isBusy,
  );
  return { seen, loop };
}

test('what is wanted is painted once, and then nothing is asked for', async () => {
  const { seen, loop } = bay();
  loop.want();
  loop.want();
  await picture();
  expect([seen.painted, asked.length]).toEqual([1, 0]);
  loop.stop();
});

test('a picture that is still being painted holds up the next, which comes once it is done', async () => {
  const { seen, loop } = bay();
  seen.isBusy = true;
  loop.want();
  await picture();
  await picture();
  expect(seen.painted).toBe(0);
  seen.isBusy = false;
  await picture();
  expect(seen.painted).toBe(1);
  loop.stop();
});

test.each([
  ['on a slow machine', 20, 0],
  ['not on a swift one', 2, 1],
])('the next picture is left to the page, %s', async (_, takesMs, painted) => {
  const { seen, loop } = bay('handled');
  loop.want();
  for (let time = 0; time < 20; time++) await picture(takesMs);
  const before = seen.painted;
  loop.leaveOne();
  nowMs += PICTURE_MS;
  await picture(takesMs);
  expect(seen.painted - before).toBe(painted);
  await picture(takesMs);
  expect(seen.painted - before).toBe(painted + 1);
  loop.stop();
});

test('a bay that was left is not painted, whoever still asks for it', async () => {
  const { seen, loop } = bay();
  loop.want();
  await picture();
  loop.stop();
  loop.want();
  loop.wantSoon();
  await picture();
  expect([seen.painted, asked.length]).toEqual([1, 0]);
});

test('how long a picture took is counted from its own beginning, though another has begun', async () => {
  const took: number[] = [];
  const timer = pictureTimer((ms) => took.push(ms));
  timer.begin();
  timer.count();
  nowMs += 40;
  timer.begin();
  await vi.waitFor(() => expect(took).toEqual([40]));
  timer.stop();
});
