/** What the car's side asks of the page around it. */
import type { Component } from 'solid-js';
import type { ScenarioData } from '../../shared/schema/scenario';
import type { Proof } from '../prover/proof';
import type { Mode } from '../session/corePort';
import type { KeptProofs } from './proof/provePool';

export interface CarLinks {
  /** Opens a session of it; false where this browser keeps nothing, so that none can be opened. */
  play(data: ScenarioData, mode: Mode): Promise<boolean>;
  readonly proofs: KeptProofs;
  /** A proof as its page, for reading and printing. */
  readonly ProofSheet: Component<{ readonly proof: Proof }>;
  /** Saves it as a page that needs nothing else. */
  saveProof(proof: Proof): void;
  /** Names of suspects, tests and tools in the reader's language, and of what is seen where a test is a look. */
  readonly names: Readonly<Record<'cause' | 'test' | 'testWithTime' | 'tool', (id: string) => string>> & {
    readonly look: (value: number) => string;
  };
}
