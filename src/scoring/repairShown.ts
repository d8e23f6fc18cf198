/** Where an author sees the lines of a whole repair: by vehicle, a scenario that ships and whose solution does one. */
const SHOWN: Readonly<Record<string, string>> = {
  compact: 'stone-chip',
  hatchback: 'cold-then-nothing',
  pickup: 'from-twelve',
  sedan: 'the-missing-cap',
  van: 'the-rear-unit',
};

/** On a car that no such scenario is about, one of another car. */
export const repairShown = (vehicle: string): string => SHOWN[vehicle] ?? SHOWN.compact;
