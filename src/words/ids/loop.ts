/** Generated from shared/words/en/loop.yaml by `npm run words`; do not edit. */
export interface LoopWords {
  'loop.summary': never;
  'loop.vehicle': never;
  'loop.ambient': never;
  'loop.humidity': never;
  'loop.rpm': never;
  'loop.minutes': never;
  'loop.cabin': never;
  'loop.charge': never;
  'loop.refrigerant': never;
  'loop.fault': never;
  'loop.engine': never;
  'loop.start': never;
  'loop.average': never;
  'loop.trace': never;
  'loop.cases': never;
  'loop.need': never;
  'loop.unknown': 'allowed' | 'given' | 'option';
  'loop.range': 'given' | 'least' | 'most' | 'option';
  'loop.notAFault': 'given' | 'known';
  'loop.doesNotApply': 'fault';
  'loop.clash': 'first' | 'second';
  'loop.notJson': 'place' | 'reason';
  'loop.unknownKey': 'key' | 'known' | 'place';
  'loop.notANumber': 'given' | 'option';
  'loop.faultTwice': 'fault';
  'loop.casesAlone': 'option';
  'loop.casesNoTrace': never;
  'loop.noCases': 'file';
}
