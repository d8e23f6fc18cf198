/** The noise that goes with something that happened; null where it makes none. */
import type { MomentSound } from './soundIds';

const OF: Readonly<Record<string, MomentSound>> = {
  'clutch-in': 'clutchIn',
  'clutch-out': 'clutchOut',
  coupled: 'couplerOn',
  uncoupled: 'couplerOff',
  'relief-opened': 'relief',
  'liquid-slug': 'slug',
  'compressor-seized': 'seized',
  'hose-caught': 'caught',
  'can-burst': 'burst',
  sprayed: 'sprayed',
  'opened-to-air': 'sprayed',
  'hose-burned': 'sprayed',
  'opened-under-pressure': 'openedUp',
  'detector-ticked': 'tick',
  'engine-started': 'started',
  'sample-started': 'sample',
  ignited: 'flash',
  'hand-in-fan': 'struck',
};

export const HAPPENINGS_HEARD: readonly string[] = Object.keys(OF);

export const momentOf = (happening: string): MomentSound | null => OF[happening] ?? null;
