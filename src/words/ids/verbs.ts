/** Generated from shared/words/en/verbs.yaml by `npm run words`; do not edit. */
export interface VerbsWords {
  'verbs.play.summary': never;
  'verbs.play.plan': never;
  'verbs.play.seed': never;
  'verbs.play.mode': never;
  'verbs.play.save': never;
  'verbs.play.notMode': 'given' | 'known';
  'verbs.play.notSeed': 'given';
  'verbs.play.refusedLine': 'line' | 'reason';
  'verbs.play.badPlan': 'file' | 'reason';
  'verbs.replay.summary': never;
  'verbs.replay.badFile': 'file' | 'reason';
  'verbs.hash.summary': never;
  'verbs.states.summary': never;
  'verbs.list.summary': never;
  'verbs.list.unknown': 'kind' | 'known';
  'verbs.check.summary': never;
  'verbs.check.clean': 'file';
}
