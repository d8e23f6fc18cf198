/** Generated from shared/words/en/suspects.yaml by `npm run words`; do not edit. */
export interface SuspectsWords {
  'suspects.summary': never;
  'suspects.badFile': 'file' | 'reason';
  'suspects.otherEngine': 'file';
  'suspects.otherScenario': 'file' | 'scenario';
}
