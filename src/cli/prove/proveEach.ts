/** Proofs of several scenarios, as many at once as there are threads, so that none stands idle while another waits. */
import type { Proof, ProofRequest } from '../../prover/proof';
import type { ToProve } from './proveArguments';
import { type Prover, proveScenario } from './proveScenario';

export async function proveEach(
  asked: readonly ToProve[],
  request: ProofRequest,
  prover: Prover,
  atOnce: number,
): Promise<readonly Proof[]> {
  const proofs: Proof[] = [];
  let next = 0;
  const lane = async (): Promise<void> => {
    while (next < asked.length) {
      const at = next++;
      proofs[at] = await proveScenario(asked[at].scenario, request, prover);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, lane));
  return proofs;
}
