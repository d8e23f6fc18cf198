/** Generated from shared/words/en by `npm run words`; do not edit. Word id -> names of its placeholders. */
import type { CliWords } from './ids/cli';

export interface WordParameters
  extends CliWords {}

export type WordId = keyof WordParameters;
