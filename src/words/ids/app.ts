/** Generated from shared/words/en/app.yaml by `npm run words`; do not edit. */
export interface AppWords {
  'app.title': never;
}
