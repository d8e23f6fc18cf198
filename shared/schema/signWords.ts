/** What a table of signs by fault may speak of, and how it may say that something changes. */

export const SIGN_CHANNELS = [
  'low',
  'high',
  'vent',
  'superheat',
  'subcooling',
  'suction',
  'cycling',
  'discharge',
  'lineStep',
  'airflow',
  'static',
] as const;

/** Against the same car sound. `unsteady`: a side swings where the sound one stands. */
export const PRINTED_SIGNS = [
  'up',
  'same',
  'down',
  'unsteady',
  'up-or-same',
  'down-or-same',
  'up-or-unsteady',
  'down-or-unsteady',
] as const;
