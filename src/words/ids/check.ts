/** Generated from shared/words/en/check.yaml by `npm run words`; do not edit. */
export interface CheckWords {
  'check.near': 'near' | 'what';
  'check.known': 'known' | 'what';
  'check.none': never;
  'check.noSuchId': 'id' | 'kind';
  'check.notForThisCar': 'id';
  'check.twice': 'id';
  'check.rule': 'reason' | 'rule';
  'check.quotes': 'rule' | 'source';
  'check.unspoken': 'rule';
  'check.bentSign': 'fault' | 'rule' | 'signal' | 'vehicle';
  'check.solutionLow': 'broken' | 'mark' | 'score';
  'check.passes': 'plan' | 'score';
  'check.refused': 'number' | 'reason';
  'check.unfinished': 'plan';
  'check.chargeOfNothing': never;
  'check.chargeFaultOfNothing': 'id';
  'check.overfull': 'percent';
  'check.unseen': never;
  'check.noTasks': never;
  'check.givesAway': 'word';
  'check.sameHints': never;
  'check.longSentence': 'most' | 'words';
  'check.faultTwice': 'id';
  'check.clash': 'id' | 'other';
  'check.noFault': 'id';
  'check.faultNotHere': 'id';
  'check.noSite': 'id';
  'check.badSite': 'id' | 'site';
  'check.unanswered': 'id';
  'check.nothingHidden': never;
  'check.somethingHidden': never;
  'check.onceOnly': 'id';
  'check.canName': 'id';
  'check.canOverfull': 'net' | 'printed';
  'check.noVehicle': 'id';
}
