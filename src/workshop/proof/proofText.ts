/** A proof as it is kept: its own sum, then the proof as JSON. One that was cut short or changed counts as none. */
import { hashText } from '../../numerics/hash';
import type { Proof } from '../../prover/proof';

export function proofText(proof: Proof): string {
  const body = JSON.stringify(proof);
  return `${hashText(body)}\n${body}`;
}

/** Whatever was found, as a proof; null where it is none. */
export function proofIn(found: unknown): Proof | null {
  if (typeof found !== 'string') return null;
  const end = found.indexOf('\n');
  const body = found.slice(end + 1);
  return end > 0 && found.slice(0, end) === hashText(body) ? (JSON.parse(body) as Proof) : null;
}
