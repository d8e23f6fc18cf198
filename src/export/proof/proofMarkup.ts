/** Proofs as one file that needs nothing else, a sheet each. */
import type { Proof } from '../../prover/proof';
import { type WriteQuantity, writeMetric } from '../../session/writeQuantity';
import { word } from '../../words/words';
import { leaf } from '../card/leaf';
import { sheetMarkup } from '../card/sheetMarkup';
import STYLE from './proof.css?raw';
import { proofSheet } from './proofSheet';

export function proofMarkup(proofs: readonly Proof[], write: WriteQuantity = writeMetric): string {
  const title = proofs.map((proof) => word('prove.title', { title: proof.title })).join('; ');
  return sheetMarkup(title, leaf('div', 'sheets', ...proofs.map((proof) => proofSheet(proof, write))), STYLE);
}
