/** Pairs, priors and how far a claim is proven: on shares written by hand. */
import { describe, expect, it } from 'vitest';
import { NOTHING_WRONG } from '../../src/plant/faultBook';
import { scenarioById } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';
import { scenarioOf } from '../../src/session/scenario/scenario';
import { pairOf, priorsOf } from '../../src/suspects/causes';
import { provenShare } from '../../src/suspects/proven';

const [pair] = pairOf(['overcharge', 'condenser-fan-dead']);
const suspects = [NOTHING_WRONG, 'low-charge', 'leak', 'condenser-fan-dead', pair.cause];
const shares = [0.1, 0.2, 0.3, 0.15, 0.25];
const proven = (...claimed: string[]) => provenShare(suspects, shares, claimed);

describe('a claim', () => {
  it('of one cause is carried by every suspect that holds it, and of two by the pair alone', () => {
    expect(proven('condenser-fan-dead')).toBeCloseTo(0.4, 12);
    expect(proven('condenser-fan-dead', 'overcharge')).toBeCloseTo(0.25, 12);
    expect(proven(NOTHING_WRONG)).toBeCloseTo(0.1, 12);
    expect(proven()).toBe(0);
  });

  it('of a shortage counts what no reading tells apart as one, wherever it leaks', () => {
    for (const cause of ['low-charge', 'leak', 'leak-hose']) expect(proven(cause)).toBeCloseTo(0.5, 12);
  });
});

describe('before anything is read', () => {
  it('one car in ten is sound, and all faults are alike', () => {
    expect(priorsOf(suspects)).toEqual([0.1, 0.225, 0.225, 0.225, 0.225]);
    expect(priorsOf(['leak', 'low-charge'])).toEqual([0.5, 0.5]);
    expect(priorsOf([NOTHING_WRONG])).toEqual([1]);
  });

  it('there is a pair only where two are hidden', () => {
    expect(pairOf(['leak'])).toEqual([]);
    expect(pair.both?.map(({ cause }) => cause)).toEqual(['overcharge', 'condenser-fan-dead']);
  });
});

it('practice stops at a broken law only where the law is known', () => {
  const { data } = scenarioById('weighed-in');
  const { job } = scenarioOf({ ...data, jurisdiction: 'australia' }, rubrics);
  const charge = job.criticals.find(({ id }) => id === 'lawCharge');
  expect(JSON.stringify(charge?.never)).toContain('law.known');
  expect(job.standing?.['law.known']).toBe(true);
});
