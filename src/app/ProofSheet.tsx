/** A proof as its printed page, in the page's language. */
import '../export/card/card.css';
import '../export/proof/proof.css';
import { createMemo, type JSX } from 'solid-js';
import { sheetElement } from '../export/card/sheetElement';
import { proofSheet } from '../export/proof/proofSheet';
import type { Proof } from '../prover/proof';

export function ProofSheet(props: { readonly proof: Proof }): JSX.Element {
  const sheet = createMemo(() => sheetElement(proofSheet(props.proof)));
  return <>{sheet()}</>;
}
