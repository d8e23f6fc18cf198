/**
 * How many jobs can follow the first bay at most, told by some of its results: what they cost cannot fall any more, and
 * whatever follows has to fit beside it. No choice of seeds does better than to take first what brings most jobs for its
 * steps, parts of a seed too.
 */
import { costsOf, type JobResult, jobsByPart, spentOn } from './jobs';
import type { ProofRequest } from './proof';

export function mostLater({ seeds, budgetSteps }: ProofRequest, done: readonly JobResult[]): number {
  const costs = costsOf(done);
  let left =
    (budgetSteps ?? Number.POSITIVE_INFINITY) - done.reduce((sum, result) => sum + spentOn(result), 0);
  const parts = jobsByPart.map(([part, count]) => ({ count, cost: costs[part] }));
  let most = 0;
  for (const { count, cost } of parts.sort((a, b) => a.cost / a.count - b.cost / b.count)) {
    const fits = cost === 0 ? seeds - 1 : Math.min(seeds - 1, Math.max(0, left) / cost);
    left -= fits * cost;
    most += fits * count;
  }
  return Math.floor(most + 1e-9);
}
