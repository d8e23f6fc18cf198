/** Generated from shared/words/en/states.yaml by `npm run words`; do not edit. */
export interface StatesWords {
  'states.exploring': never;
  'states.practice': never;
  'states.otherWay': never;
  'states.mended': never;
}
