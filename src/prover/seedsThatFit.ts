/**
 * How many seeds each part of a proof gets, from what the first seed cost, counted in steps of plants and never by a clock,
 * so that every machine leaves out the same. One more seed at a time: for those who look at nothing, then the solution, then
 * the player that asks; those who look at one thing get what is then left. What no longer fits gets no more seeds.
 */
import type { ProofRequest } from './proof';

export type ProofPart = 'blind' | 'plan' | 'know' | 'looking';

const FIRST: readonly ProofPart[] = ['blind', 'plan', 'know'];
const LAST: readonly ProofPart[] = ['looking'];

/** `spentSteps` is all that the first seed cost, `costSteps` what one more seed of a part costs. */
export function seedsThatFit(
  { seeds, budgetSteps }: ProofRequest,
  spentSteps: number,
  costSteps: Readonly<Record<ProofPart, number>>,
): Record<ProofPart, number> {
  const fits: Record<ProofPart, number> = { blind: 1, plan: 1, know: 1, looking: 1 };
  let left = (budgetSteps ?? Number.POSITIVE_INFINITY) - spentSteps;
  for (const parts of [FIRST, LAST]) {
    let open = parts;
    for (let seed = 2; seed <= seeds; seed++) {
      open = open.filter((part) => {
        if (costSteps[part] > left) return false;
        left -= costSteps[part];
        fits[part]++;
        return true;
      });
    }
  }
  return fits;
}
