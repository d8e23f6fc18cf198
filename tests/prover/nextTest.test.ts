/** Which test is next: what tells most for its minutes, further stages where nothing here is worth them, the loop emptied last. */
import { expect, test } from 'vitest';
import { nextTest } from '../../src/prover/know/nextTest';
import type { Suspicion } from '../../src/prover/know/suspicion';
import type { Test } from '../../src/prover/know/testsOf';
import type { Whereabouts } from '../../src/prover/know/whereabouts';

const STAGES = ['rest', 'running', 'idle', 'shut'].map((id) => ({ id, minutes: 3 }));
const here = { stages: STAGES, at: 1, hasGauges: true } as unknown as Whereabouts;

const NATS: Record<string, number> = {};
const suspicion = {
  wouldTell: ([{ id }]: readonly { id: string }[]) => NATS[id] ?? 0,
} as unknown as Suspicion;

function doing(id: string, nats: number, tool = 'gauge-set', minutes = 2): Test {
  NATS[id] = nats;
  const probe = { id, tool, stage: id.split('.')[1] };
  return { id, probes: [probe], minutes, needsGauges: false } as unknown as Test;
}

const nextOf = (...tests: readonly Test[]): string | undefined => nextTest(suspicion, tests, here)?.id;

test('what tells most for its minutes comes first', () => {
  expect(nextOf(doing('a.running', 0.5, 'eyes', 4), doing('b.running', 0.4, 'eyes', 1))).toBe('b.running');
});

test('further stages are looked at only where nothing here is worth its minutes', () => {
  const further = doing('f.idle', 2);
  expect(nextOf(doing('g.running', 0.3), further)).toBe('g.running');
  expect(nextOf(doing('h.running', 0.1), further)).toBe('f.idle');
  expect(nextOf(doing('i.running', 0.1), doing('j.idle', 0.1))).toBe('i.running');
});

test('a loop is emptied only where no other test tells anything, here or further on', () => {
  const emptied = doing('recovery-scale.rest', 2, 'recovery-machine', 30);
  const shut = doing('low-gauge.shut', 0.6);
  expect(nextOf(emptied, doing('c.idle', 0), shut)).toBe('low-gauge.shut');
  expect(nextOf(emptied, doing('d.shut', 0))).toBe('recovery-scale.rest');
  expect(nextOf(doing('e.running', 0))).toBeUndefined();
});
