/** Who a trainee can be, and the places whose rules are known; the first place is none of them. */
export const PERSONS = ['owner', 'certified', 'high-voltage-trained'] as const;
export type Person = (typeof PERSONS)[number];

export const PLACES = [
  'check-first',
  'united-states',
  'united-kingdom',
  'european-union',
  'australia',
] as const;
export type Place = (typeof PLACES)[number];
