/** Generated from shared/words/en/law.yaml by `npm run words`; do not edit. */
export interface LawWords {
  'law.check': never;
  'law.here': 'rule' | 'source' | 'trust';
  'law.place.check-first': never;
  'law.place.united-states': never;
  'law.place.united-kingdom': never;
  'law.place.european-union': never;
  'law.place.australia': never;
  'law.act.service': never;
  'law.act.buy-can': never;
  'law.act.charge': never;
  'law.act.top-up': never;
  'law.act.fill-leaking': never;
  'law.act.recover': never;
  'law.act.handle-r12': never;
  'law.act.convert': never;
  'law.act.change-gas': never;
  'law.trust.read': never;
  'law.trust.second-hand': never;
  'law.trust.memory': never;
}
