/** Generated from shared/words/en/app.yaml by `npm run words`; do not edit. */
export interface AppWords {
  'app.title': never;
  'app.titleOf': 'name';
  'app.toShelf': never;
  'app.skip': never;
  'app.help': never;
  'app.menu': never;
  'app.close': never;
  'app.closeNothingWritten': never;
  'app.back': never;
  'app.scenarios': never;
  'app.mode.explore': never;
  'app.mode.practice': never;
  'app.mode.assessed': never;
  'app.loading.bay': never;
  'app.loading.sub': never;
  'app.loading.debrief': never;
  'app.failed.title': never;
  'app.failed.unknownScenario': 'id';
  'app.failed.error': 'reason';
  'app.other.title': never;
  'app.other.engine': never;
  'app.other.scenario': never;
  'app.other.score': 'reported';
  'app.other.broken': 'number' | 'reason';
  'app.other.unscored': never;
  'app.other.save': never;
  'app.other.throwAway': never;
  'app.storage.refused': never;
  'app.tabs.title': never;
  'app.tabs.text': never;
  'app.hash.title': never;
  'app.hash.running': never;
  'app.hash.row': 'hash' | 'minutes';
  'app.hash.engine': 'hash';
}
