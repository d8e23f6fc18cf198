/** Generated from shared/words/en by `npm run words`; do not edit. Word id -> names of its placeholders. */
import type { AppWords } from './ids/app';
import type { CliWords } from './ids/cli';

export interface WordParameters
  extends AppWords,
    CliWords {}

export type WordId = keyof WordParameters;
