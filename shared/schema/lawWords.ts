/** shared/jurisdictions/LANGUAGE/PLACE.yaml: rule and source of every act, in another language. */
import { z } from 'zod';
import { ACTS, type Act, type Jurisdiction } from './jurisdiction.ts';
import { checkedData } from './problems.ts';
import type { YamlSource } from './readYaml.ts';

export type LawWords = Readonly<Record<Act, { readonly rule: string; readonly source: string }>>;

const MOST = 320;
const sentence = z.string().trim().min(1).max(MOST);
const told = z.strictObject({ rule: sentence, source: sentence });

export const lawWordsSchema = z.strictObject({
  acts: z.strictObject(Object.fromEntries(ACTS.map((act) => [act, told]))),
});

/** The same of the place's own file. */
export function ownLaw({ acts }: Jurisdiction): LawWords {
  const pairs = ACTS.map((act) => [act, { rule: acts[act].rule, source: acts[act].source }]);
  return Object.fromEntries(pairs) as LawWords;
}

/** Throws `YamlError`. */
export const lawWords = (source: YamlSource): LawWords =>
  (checkedData(source, lawWordsSchema) as { readonly acts: LawWords }).acts;
