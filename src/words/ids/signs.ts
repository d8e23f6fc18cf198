/** Generated from shared/words/en/signs.yaml by `npm run words`; do not edit. */
export interface SignsWords {
  'signs.summary': never;
  'signs.vehicle': never;
  'signs.row': never;
  'signs.running': 'vehicle';
  'signs.unknownVehicle': 'id' | 'known';
  'signs.unknownRow': 'known' | 'row';
  'signs.badTable': 'file' | 'reason';
  'signs.unknownFault': 'fault' | 'file' | 'known' | 'row';
}
