/** Where the car is: what the law asks differs, and the default is to find out. */
export const JURISDICTIONS = [
  'check-first',
  'united-states',
  'united-kingdom',
  'european-union',
  'australia',
] as const;

export type Jurisdiction = (typeof JURISDICTIONS)[number];
