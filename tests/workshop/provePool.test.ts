/** A proof in the workshop: the same however many provers there are, kept by what decides it, and never half. */
import { describe, expect, it } from 'vitest';
import type { JobResult, ProofJob } from '../../src/prover/jobs';
import type { Proof, ProofRequest } from '../../src/prover/proof';
import { scenarioById } from '../../src/session/scenario/library';
import { proofRequests } from '../../src/workshop/proof/proofRequests';
import { proofIn, proofText } from '../../src/workshop/proof/proofText';
import { keyOf, proveDesk, type ToProver } from '../../src/workshop/proof/proveDesk';
import { type KeptProofs, type Prover, proveWith } from '../../src/workshop/proof/provePool';

const scenario = scenarioById('drill-hose-in-the-belt');
const REQUEST: ProofRequest = { seeds: 2, budgetSteps: null };
const JOBS: readonly ProofJob[] = [
  { kind: 'apart', seed: 1 },
  { kind: 'know', seed: 1 },
  { kind: 'plan', seed: 1 },
  { kind: 'plan', seed: 2 },
  { kind: 'plan', seed: 3 },
];

/** Answers at once or late; what it is asked to do is written down. */
function prover(delayMs: number, did: ProofJob[]): Prover {
  const answerTo = (message: ToProver) => {
    switch (message.type) {
      case 'open':
        return { type: 'opened', key: 'k', own: [] } as const;
      case 'next':
        return { type: 'next', jobs: message.done.length === 0 ? JOBS : [] } as const;
      case 'most':
        return { type: 'most', later: JOBS.length } as const;
      case 'job':
        did.push(message.job);
        return { type: 'result', result: message.job as unknown as JobResult } as const;
      case 'proof':
        return { type: 'proof', proof: { made: message.results } as unknown as Proof } as const;
    }
  };
  return async (message) => {
    await new Promise((resume) => setTimeout(resume, delayMs));
    return answerTo(message);
  };
}

function keeping(): KeptProofs & { readonly all: Map<string, Proof> } {
  const all = new Map<string, Proof>();
  return {
    all,
    find: async (key) => all.get(key) ?? null,
    keep: async (key, proof) => void all.set(key, proof),
  };
}

describe('proving', () => {
  it('gives the same by one prover and by two, results in the order of the jobs, ghosts to one alone', async () => {
    const [first, second]: ProofJob[][] = [[], []];
    const alone = await proveWith([prover(0, [])], scenario.data, REQUEST, keeping(), () => undefined);
    const both = [prover(12, first), prover(1, second)];
    const told: string[] = [];
    const running: number[] = [];
    const shared = await proveWith(both, scenario.data, REQUEST, keeping(), ({ done, now }) => {
      if (told.at(-1) !== `${done}`) told.push(`${done}`);
      running.push(now.length);
    });
    expect(shared).toEqual(alone);
    expect(shared).toEqual({ made: JOBS });
    expect(second.length).toBeGreaterThan(0);
    expect(second.every(({ kind }) => kind === 'plan')).toBe(true);
    expect(told).toEqual(['0', '1', '2', '3', '4', '5']);
    expect(running[0]).toBe(1);
    expect(Math.max(...running)).toBe(2);
    expect(running.at(-1)).toBe(0);
  });

  it('is never told to be less far than before, however many parts the first bay leads to', async () => {
    for (const later of [0, 1, 15]) {
      const done: number[] = [];
      const of = new Map<number, number>();
      const two: Prover = async (message) => {
        // what follows is known once two are done
        if (message.type === 'most') return { type: 'most', later: message.done.length < 2 ? 15 : later };
        if (message.type !== 'next') return prover(0, [])(message);
        const rounds = [JOBS, JOBS.flatMap((job) => [job, job, job]).slice(0, later), []];
        const round = message.done.length === 0 ? 0 : message.done.length === JOBS.length ? 1 : 2;
        return { type: 'next', jobs: rounds[round] };
      };
      const asked = { seeds: 4, budgetSteps: null };
      await proveWith([two], scenario.data, asked, keeping(), (soFar) => {
        done.push(soFar.done / soFar.of);
        of.set(soFar.done, soFar.of);
      });
      expect(done.every((share, at) => at === 0 || share >= done[at - 1])).toBe(true);
      expect([of.get(1), of.get(2)]).toEqual([4 * JOBS.length, JOBS.length + later]);
      if (later > 0) expect(done.at(-1)).toBe(1);
    }
  });

  it('asks nobody anew for what is kept', async () => {
    const kept = keeping();
    const made = await proveWith([prover(0, [])], scenario.data, REQUEST, kept, () => undefined);
    const did: ProofJob[] = [];
    expect(await proveWith([prover(0, did)], scenario.data, REQUEST, kept, () => undefined)).toBe(made);
    expect(did).toEqual([]);
  });

  it('keeps nothing where a prover fails', async () => {
    const kept = keeping();
    const good = prover(0, []);
    const failing: Prover = (message) =>
      message.type === 'job' ? Promise.reject(new Error('it broke')) : good(message);
    await expect(proveWith([failing], scenario.data, REQUEST, kept, () => undefined)).rejects.toThrow(
      'it broke',
    );
    expect(kept.all.size).toBe(0);
  });
});

describe('a proof that is kept', () => {
  it('is found as it was; one that was cut short, changed or of another make is none', () => {
    const proof = { scenario: 'leaves', verdict: 'refused', findings: [] } as unknown as Proof;
    const kept = proofText(proof);
    expect(proofIn(kept)).toEqual(proof);
    const spoilt = [kept.slice(0, -2), kept.replace('refused', 'holds'), kept.split('\n')[1], '', undefined];
    expect(spoilt.map(proofIn)).toEqual(spoilt.map(() => null));
  });
});

describe('a prover', () => {
  it('does a job as anybody would, and knows a proof by text, request and library', () => {
    const desk = proveDesk([scenario]);
    expect(() => desk({ type: 'next', done: [] })).toThrow(RangeError);
    expect(desk({ type: 'open', data: scenario.data, request: REQUEST })).toEqual({
      type: 'opened',
      key: keyOf(scenario, REQUEST, [scenario]),
      own: ['nothing-wrong'],
    });
    expect(desk({ type: 'job', job: { kind: 'plan', seed: 4 } })).toMatchObject({
      type: 'result',
      result: { kind: 'plan', outcome: { player: 'solution', seed: 4, passed: true } },
    });
    const next = desk({ type: 'next', done: [] });
    expect(next.type === 'next' && next.jobs.length).toBeGreaterThan(0);
    const key = keyOf(scenario, REQUEST, [scenario]);
    const other = { ...scenario, hash: 'other' };
    expect(keyOf(scenario, proofRequests.usual, [scenario])).not.toBe(key);
    expect(keyOf(other, REQUEST, [scenario])).not.toBe(key);
    expect(keyOf(scenario, REQUEST, [other])).not.toBe(key);
  });
});
