/** How thoroughly a proof may be made in the workshop: bays looked at, and steps of plants that they may cost. */
import { budgets } from '../../prover/budgets';
import type { ProofRequest } from '../../prover/proof';

export const THOROUGHNESS = ['quick', 'usual', 'full'] as const;
export type Thoroughness = (typeof THOROUGHNESS)[number];

/** The usual one is that of the command line: a minute or two on two cores. */
export const proofRequests: Readonly<Record<Thoroughness, ProofRequest>> = {
  quick: { seeds: 3, budgetSteps: budgets.library },
  usual: { seeds: 20, budgetSteps: budgets.usual },
  full: { seeds: 100, budgetSteps: null },
};
