import { expect, test } from 'vitest';
import { nextBay } from '../../../src/layout/drill/nextBay';
import {
  afterAnswer,
  dueNow,
  kindOf,
  NOTHING_YET,
  type Repetition,
} from '../../../src/layout/drill/repetition';

const MISSED = 'valve/suction';
const answered = (before: Repetition, count: number): Repetition =>
  Array.from({ length: count }).reduce<Repetition>(
    (progress) => afterAnswer(progress, 'other', true),
    before,
  );

test('what was right at once does not come back', () => {
  expect(afterAnswer(NOTHING_YET, MISSED, true)).toEqual({ answered: 1, right: 1, inRow: 1, due: [] });
});

test('what was missed comes back after three questions, then after eight and twenty-one, then no more', () => {
  let progress = afterAnswer(NOTHING_YET, MISSED, false);
  for (const gap of [3, 8, 21]) {
    expect(dueNow(answered(progress, gap - 1))).toBeNull();
    progress = answered(progress, gap);
    expect(dueNow(progress)?.kind).toBe(MISSED);
    progress = afterAnswer(progress, MISSED, true);
  }
  expect(progress.due).toEqual([]);
});

test('missed again, it begins anew; met early and right, it keeps its place', () => {
  const once = afterAnswer(answered(afterAnswer(NOTHING_YET, MISSED, false), 3), MISSED, true);
  expect(once.due[0].rung).toBe(1);
  expect(afterAnswer(once, MISSED, true).due).toEqual(once.due);
  const again = afterAnswer(once, MISSED, false);
  expect(again.due).toEqual([{ kind: MISSED, dueAt: again.answered + 3, rung: 0 }]);
  expect(again.inRow).toBe(0);
});

test('the longest overdue comes first', () => {
  const two = afterAnswer(afterAnswer(NOTHING_YET, 'first', false), 'second', false);
  expect(dueNow(answered(two, 5))?.kind).toBe('first');
});

test('a kind that is due is met as a fresh bay of that kind', () => {
  const kind = kindOf(nextBay(NOTHING_YET, 2, 5).bay);
  const progress = answered(afterAnswer(NOTHING_YET, kind, false), 3);
  const { bay, comesBack } = nextBay(progress, 2, 900);
  expect(comesBack).toBe(true);
  expect(kindOf(bay)).toBe(kind);
  expect(bay.seed).not.toBe(5);
});
