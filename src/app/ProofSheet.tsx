/** A proof as its printed page, in the page's language and the reader's units. */
import '../export/card/card.css';
import '../export/proof/proof.css';
import { createMemo, type JSX } from 'solid-js';
import { sheetElement } from '../export/card/sheetElement';
import { proofSheet } from '../export/proof/proofSheet';
import { writerOf } from '../instruments/evidenceUnits';
import type { Proof } from '../prover/proof';
import { settings } from './settings';

export function ProofSheet(props: { readonly proof: Proof }): JSX.Element {
  const sheet = createMemo(() => sheetElement(proofSheet(props.proof, writerOf(settings().units))));
  return <>{sheet()}</>;
}
