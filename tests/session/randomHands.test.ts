/** Hands that do anything, in any order: what is logged is what happened, and can be lived again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Command, commandSpecs } from '../../src/plant/commandSpecs';
import { makeRecord } from '../../src/session/record/makeRecord';
import { oneCore, oneJob } from '../support/oneJob';
import { onePlant } from '../support/onePlant';

const WORDS = [
  'port-a',
  'port-b',
  'charging',
  'can-1',
  'goggles',
  'on',
  'off',
  'open',
  'shut',
  'low',
  'charge',
  'scale',
  'leak',
  'sure',
  'fan',
  'mat',
];

const command = fc.constantFrom(...(Object.keys(commandSpecs) as Command['do'][])).chain((id) => {
  const args = Object.entries(commandSpecs[id].args).map(([name, spec]) => {
    if (spec.kind === 'choice') return [name, fc.constantFrom(...spec.of, 'nonsense')] as const;
    if (spec.kind !== 'whole') return [name, fc.constantFrom(...WORDS)] as const;
    return [
      name,
      fc.integer({ min: 0, max: Math.min(spec.max, 4000) }).map((n) => n - (n % spec.step)),
    ] as const;
  });
  return fc.record(Object.fromEntries(args)).map((values): Command => ({ do: id, ...values }));
});
const deed = fc.oneof(
  { weight: 4, arbitrary: command },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 900 }) },
);
const begin: Command = { do: 'begin' };

describe('any hands', () => {
  it('leave a log from which the same session comes back', () => {
    fc.assert(
      fc.property(
        fc.array(deed, { maxLength: 60 }),
        fc.constantFrom('practice', 'assessed', 'explore'),
        (deeds, mode) => {
          const core = oneCore({ mode });
          let taken = core.send(begin).ok ? 1 : 0;
          for (const one of deeds) {
            if (typeof one === 'number') core.advance(one);
            else taken += core.send(one).ok ? 1 : 0;
          }
          expect(core.log().commands).toHaveLength(taken);
          const resumed = oneCore({ mode, log: core.log() });
          expect(resumed.stateHash()).toBe(core.stateHash());
          expect(resumed.logHash()).toBe(core.logHash());
          expect({ ...resumed.view(), revision: 0 }).toEqual({ ...core.view(), revision: 0 });
        },
      ),
      { seed: 20, numRuns: 120 },
    );
  });

  it('leave a record that ends where the session ended', () => {
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 40 }), (deeds) => {
        const core = oneCore({ mode: 'practice' });
        core.send(begin);
        for (const one of deeds) {
          if (typeof one === 'number') core.advance(one);
          else core.send(one);
        }
        const record = makeRecord(core.log(), oneJob, { causes: [], parts: [] }, onePlant());
        expect(record.steps.at(-1)).toBe(core.step);
        expect(record.values).toHaveLength(record.steps.length * record.signals.length);
        expect(record.actions.every(({ row, step }) => record.steps[row] === step)).toBe(true);
      }),
      { seed: 21, numRuns: 60 },
    );
  });
});
