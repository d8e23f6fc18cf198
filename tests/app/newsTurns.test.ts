/** What a minute of pictures brings: needles at every second one at most, words five times a second, sooner after a hand, later when slow. */
import { expect, test } from 'vitest';
import { type NewsTurns, newsTurns, type Turn } from '../../src/app/newsTurns';

interface Shown extends Turn {
  readonly atMs: number;
}

/** Pictures at a rate, each with what happened before it. */
function pictures(
  turns: NewsTurns,
  seconds: number,
  perS: number,
  before: (picture: number) => void,
): Shown[] {
  return Array.from({ length: Math.round(seconds * perS) }, (_, picture) => {
    before(picture);
    const atMs = 1000 + (picture * 1000) / perS;
    return { atMs, ...turns.next(atMs) };
  });
}

const count = (shown: readonly Shown[], what: 'frame' | 'view' | 'words' | 'isTelling'): number =>
  shown.filter((one) => one[what]).length;

test('frames come in every second picture, words five times a second, none of it unforeseen', () => {
  const turns = newsTurns();
  const shown = pictures(turns, 10, 60, () => turns.frameCame());
  expect(count(shown, 'frame')).toBe(300);
  expect(count(shown, 'words')).toBeGreaterThan(42);
  expect(count(shown, 'words')).toBeLessThanOrEqual(50);
  for (const [at, { words }] of shown.entries()) if (words) expect(shown[at - 1].isTelling).toBe(true);
  expect(count(shown, 'isTelling')).toBe(count(shown, 'words'));
});

test('words are told of once at any rate of the screen', () => {
  for (const perS of [30, 60, 75, 120, 144]) {
    const turns = newsTurns();
    const shown = pictures(turns, 5, perS, () => turns.frameCame());
    expect(count(shown, 'frame')).toBeLessThanOrEqual(5 * 36);
    expect(count(shown, 'words')).toBeGreaterThan(17);
    expect(Math.abs(count(shown, 'isTelling') - count(shown, 'words'))).toBeLessThanOrEqual(1);
  }
});

test('a view and what goes with it share no picture, and views that keep coming starve no words', () => {
  const turns = newsTurns();
  const shown = pictures(turns, 4, 60, () => {
    turns.frameCame();
    turns.viewCame();
    turns.hurry();
  });
  expect(shown.some(({ view, words }) => view && words)).toBe(false);
  expect(Math.abs(count(shown, 'view') - count(shown, 'words'))).toBeLessThanOrEqual(1);
  expect(count(shown, 'words')).toBeGreaterThan(4 * 7);
});

test('after an answer words come within a tenth of a second, and again with what came of it', () => {
  const turns = newsTurns();
  const pressed = 126;
  const shown = pictures(turns, 3, 60, (picture) => {
    if (picture === pressed) turns.viewCame();
    if (picture === pressed) turns.hurry();
    turns.frameCame();
  }).slice(pressed);
  const first = shown.findIndex(({ view }) => view);
  expect(first).toBeLessThanOrEqual(5);
  expect(count(shown.slice(first, first + 3), 'words')).toBe(1);
  expect(count(shown.slice(0, 18), 'words')).toBeGreaterThanOrEqual(2);
});

test('what came last is brought though nothing more comes, and then nothing is waited for', () => {
  const turns = newsTurns();
  turns.frameCame();
  const shown = pictures(turns, 1, 60, (picture) => picture === 1 && turns.viewCame());
  expect(count(shown, 'frame')).toBe(1);
  expect(count(shown, 'view')).toBe(1);
  expect(shown.findLast(({ view }) => view)?.atMs).toBeLessThan(
    shown.findLast(({ words }) => words)?.atMs ?? 0,
  );
  expect(turns.isWaiting()).toBe(false);
});

test('a slow machine is told more seldom, one that slept is not punished', () => {
  const [slow, slept] = [newsTurns(), newsTurns()];
  for (let time = 0; time < 30; time++) slow.took(50);
  expect(
    count(
      pictures(slow, 6, 60, () => slow.frameCame()),
      'words',
    ),
  ).toBeLessThanOrEqual(11);
  slept.took(600_000);
  expect(
    count(
      pictures(slept, 3, 60, () => slept.frameCame()),
      'words',
    ),
  ).toBeGreaterThan(8);
});
