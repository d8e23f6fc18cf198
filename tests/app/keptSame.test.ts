/** What has not changed keeps being the same thing, so that a page leaves what shows it alone. */
import { expect, test } from 'vitest';
import { keptSame } from '../../src/app/keptSame';

const before = {
  step: 3,
  hoses: [
    { id: 'low', route: ['a', 'b'] },
    { id: 'high', route: [] },
  ],
  port: null,
};

test('what says the same again is what was there', () => {
  expect(keptSame(before, structuredClone(before))).toBe(before);
});

test('what changed is new, and everything beside it is what was there', () => {
  const next = { ...structuredClone(before), step: 4 };
  next.hoses[1].route = ['c'] as never[];
  const kept = keptSame(before, next);
  expect(kept).toEqual(next);
  expect(kept.hoses[0]).toBe(before.hoses[0]);
  expect(kept.hoses[1]).not.toBe(before.hoses[1]);
});

test('a part more or less, another order and NaN are told apart', () => {
  expect(keptSame([1, 2], [1])).toEqual([1]);
  expect(keptSame({ a: undefined }, {})).toEqual({});
  expect(keptSame({ a: undefined }, { b: undefined })).toEqual({ b: undefined });
  expect(keptSame([1, 2], [2, 1])).toEqual([2, 1]);
  const unread = { value: Number.NaN };
  expect(keptSame(unread, { value: Number.NaN })).toBe(unread);
});
