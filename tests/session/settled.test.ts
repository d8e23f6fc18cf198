/** What a condition comes to while nothing happens, and that what people set does not change then. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Condition } from '../../shared/schema/condition';
import { awake } from '../../src/session/conditions/awake';
import { compileCondition } from '../../src/session/conditions/compileCondition';
import type { Moment, SignalTable } from '../../src/session/conditions/moment';
import { movesByItself } from '../../src/session/conditions/movesByItself';
import { settled } from '../../src/session/conditions/settled';
import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';

const signals = [
  { id: 'door.open', unit: 'bool', kind: 'control' },
  { id: 'cap.a.on', unit: 'bool', kind: 'control' },
  { id: 'cap.b.on', unit: 'bool', kind: 'cue' },
  { id: 'clutch.turning', unit: 'bool', kind: 'cue' },
] as const;
const table = { signals };
const [MOVING, SET] = [
  [2, 3],
  [0, 1],
] as const;

const comparison = fc.record({
  signal: fc.constantFrom('door.open', 'cap.a.on', 'cap.*.on', 'clutch.turning'),
  is: fc.constantFrom('on', 'off'),
});
const { condition } = fc.letrec<{ condition: Condition }>((tie) => ({
  condition: fc.oneof(
    { maxDepth: 3 },
    comparison,
    fc.constant({ event: 'coupled' }),
    fc.record({ all: fc.array(tie('condition'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ any: fc.array(tie('condition'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ not: tie('condition') }),
  ),
}));

test('a condition that is settled holds, or does not, whatever moves by itself', () => {
  let decided = 0;
  fc.assert(
    fc.property(condition, fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }), (one, on) => {
      const values = on.map(Number);
      const moment: Moment = { value: (index) => values[index], events: [] };
      const value = settled(one, table)(moment);
      if (typeof value !== 'boolean') return;
      decided++;
      const holds = compileCondition(one, table);
      for (let bits = 0; bits < 4; bits++) {
        MOVING.forEach((index, at) => {
          values[index] = (bits >> at) & 1;
        });
        expect(holds(moment)).toBe(value);
      }
    }),
    { seed: 1, numRuns: 500 },
  );
  expect(decided).toBeGreaterThan(100);
});

test('a condition of what people set alone is always settled, one of what moves never is', () => {
  const moment: Moment = { value: () => 1, events: [] };
  expect(settled({ all: [{ signal: 'door.open', is: 'on' }, { event: 'coupled' }] }, table)(moment)).toBe(
    false,
  );
  expect(SET.every((index) => !movesByItself(signals[index]))).toBe(true);
  expect(settled({ signal: 'door.open', is: 'on' }, table)(moment)).toBe(true);
  expect(settled({ signal: 'clutch.turning', is: 'on' }, table)(moment)).toEqual([{ index: 3, value: 1 }]);
  expect(settled({ any: [{ signal: 'cap.*.on', is: 'on' }] }, table)(moment)).toBe(true);
});

/** Lines of its plan. */
const UNTIL_IT_CYCLES = 41;

test('nothing that people set changes in a quiet step of a job', () => {
  const scenario = scenarioById('click-click');
  const changed = new Set<string>();
  const before = new Map<number, number>();
  const core = openSession(scenario, {
    mode: 'assessed',
    seed: 1,
    observe({ moment, table: all, quiet }) {
      if (before.size === 0)
        for (const [at, signal] of all.signals.entries())
          if (!movesByItself(signal)) before.set(at, Number.NaN);
      for (const [at, was] of before) {
        const value = moment.value(at);
        if (Object.is(value, was)) continue;
        before.set(at, value);
        if (quiet) changed.add(all.signals[at].id);
      }
    },
  });
  playPlan(core, scenario.data.plans.solution.slice(0, UNTIL_IT_CYCLES));
  expect(core.step).toBeGreaterThan(1000);
  expect(before.size).toBeGreaterThan(100);
  expect([...changed]).toEqual([]);
});

/** A signal goes where it likes between and on the limits, and is lost at times. */
const place = fc.constantFrom(-1, 0, 1, 2, 3, Number.NaN);
const bounded = fc.oneof(
  fc.record({ signal: fc.constantFrom('a', 'b', '*'), over: fc.constantFrom(0, 1, 2) }),
  fc.record({ signal: fc.constantFrom('a', 'b', '*'), under: fc.constantFrom(0, 1, 2) }),
  fc.record({ signal: fc.constantFrom('a', 'set'), is: fc.constantFrom(0, 1, 2) }),
);
const { tree } = fc.letrec<{ tree: Condition }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 3 },
    bounded,
    fc.constant({ event: 'coupled' }),
    fc.record({ all: fc.array(tie('tree'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ any: fc.array(tie('tree'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ not: tie('tree') }),
  ),
}));

test('what is passed over in a quiet step would have come to what it came to', () => {
  const ratios: SignalTable = {
    signals: [
      { id: 'a', unit: '1', kind: 'reading' },
      { id: 'b', unit: '1', kind: 'truth' },
      { id: 'set', unit: '1', kind: 'control' },
    ],
  };
  let passedOver = 0;
  fc.assert(
    fc.property(
      fc.array(tree, { minLength: 1, maxLength: 4 }),
      fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 12 }),
      fc.integer({ min: 0, max: 2 }),
      (trees, walk, set) => {
        let now: readonly number[] = [];
        const moment: Moment = { value: (index) => now[index], events: [] };
        const all = trees.map((one) => ({
          holds: compileCondition(one, ratios),
          settled: settled(one, ratios),
          was: false,
        }));
        const bank = awake(all, (one, at) => one.settled(at));
        for (const [step, [a, b]] of walk.entries()) {
          now = [a, b, set];
          const looked = bank.now(moment, step > 0);
          for (const one of looked) one.was = one.holds(moment);
          bank.looked(moment, step > 0);
          passedOver += all.length - looked.length;
          expect(all.map(({ was }) => was)).toEqual(all.map(({ holds }) => holds(moment)));
        }
      },
    ),
    { seed: 1, numRuns: 500 },
  );
  expect(passedOver).toBeGreaterThan(1000);
});
