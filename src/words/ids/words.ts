/** Generated from shared/words/en/words.yaml by `npm run words`; do not edit. */
export interface WordsWords {
  'words.look': never;
  'words.lookAt': 'part';
  'words.loop': never;
  'words.parts': 'count';
  'words.ports': never;
  'words.doNow': never;
  'words.write': never;
  'words.writeNote': never;
  'words.orders': never;
  'words.ordersListed': 'count';
  'words.waits': never;
  'words.seeHelp': never;
  'words.takes': 'order';
  'words.heard': never;
}
