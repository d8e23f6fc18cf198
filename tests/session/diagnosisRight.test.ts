/** How much of the cause a person named: all, a look-alike that the answer allows, another of its system, nothing. */
import { expect, it } from 'vitest';
import { measure } from '../../src/session/record/measures';

const right = (named: readonly string[], hidden: readonly string[], rightCauses = hidden): number =>
  measure({
    last: () => Number.NaN,
    lastOf: () => [],
    events: named.map((subject, at) => ({ id: 'diagnosed', subject, step: at, row: at })),
    rightCauses,
    hidden,
    usefulParts: [],
  })['diagnosis.right'];

it('is all for the fault itself, half for a look-alike that the answer allows, less for any other of its system', () => {
  const answer = ['bulb-loose', 'txv-stuck-open'];
  expect(right(['bulb-loose'], ['bulb-loose'], answer)).toBe(1);
  expect(right(['txv-stuck-open'], ['bulb-loose'], answer)).toBe(0.5);
  expect(right(['txv-stuck-closed'], ['bulb-loose'], answer)).toBe(0.4);
  expect(right(['condenser-fan-dead'], ['bulb-loose'], answer)).toBe(0);
  expect(right([], ['bulb-loose'], answer)).toBe(0);
});

it('is shared evenly between two, and one of them is no look-alike of the other', () => {
  const both = ['bulb-loose', 'txv-stuck-open'];
  expect(right(both, both)).toBe(1);
  expect(right(['txv-stuck-open'], both)).toBe(0.7);
});

it('is all where nothing is hidden and that is said', () => {
  expect(right(['nothing-wrong'], [], ['nothing-wrong'])).toBe(1);
  expect(right(['low-charge'], [], ['nothing-wrong'])).toBe(0);
});
