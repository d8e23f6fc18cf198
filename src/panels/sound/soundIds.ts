/** Every noise there is: those that last as long as their cause does, and those of a moment. */
export const LASTING_SOUNDS = [
  'engine',
  'compressor',
  'fan',
  'blower',
  'pump',
  'recovery',
  'meteringHiss',
  'leakHiss',
  'spray',
  'knocking',
  'rattling',
  'squeal',
] as const;
export type LastingSound = (typeof LASTING_SOUNDS)[number];

export const MOMENT_SOUNDS = [
  'clutchIn',
  'clutchOut',
  'couplerOn',
  'couplerOff',
  'relief',
  'slug',
  'seized',
  'caught',
  'burst',
  'sprayed',
  'openedUp',
  'tick',
  'started',
  'sample',
  'flash',
  'struck',
] as const;
export type MomentSound = (typeof MOMENT_SOUNDS)[number];
