/**
 * Where the work is done: how much air there is, how fast it changes, and whether there is a pit in the floor.
 *
 * A garage of 60 m3 is a guess (two cars' room). Its door when open: both ways through one opening,
 * Q = (C/3) W H^1.5 (g dT/T)^0.5 with C 0.6, 2.4 m wide, 2.4 m high, 5 K apart is 0.7 m3/s (textbook form, from memory), and
 * 0.1 m3/s of light wind over it [guess]. Shut, half a change an hour through gaps [guess]; `tight` none at all, which no
 * real room is. Outdoors the wind changes the air round the car: 20 m3/s [guess].
 */
export type PlaceKind = 'outdoors' | 'garage' | 'garage-with-pit';

export interface PlaceSpec {
  readonly kind: PlaceKind;
  readonly volumeM3: number;
  /** No air gets in while the door is shut. */
  readonly tight: boolean;
}

export const USUAL_PLACE: PlaceSpec = { kind: 'garage', volumeM3: 60, tight: false };

const AIR_CHANGE = {
  outdoorsM3PerS: 20,
  openDoorM3PerS: 0.8,
  shutPerS: 0.5 / 3600,
} as const;

/** A pit 4.5 m long, 0.9 m wide, 1.5 m deep [guess]; gas lies in it for hours, for ten minutes with the door open [guess]. */
export const PIT = {
  volumeM3: 6,
  shutPerS: 1 / 7200,
  openPerS: 1 / 600,
  /** Of what is let out over it, what runs down into it [guess]: all these gases are heavier than air. */
  share: 0.7,
} as const;

/** Air out of the place, m3/s. */
export function airChangeM3PerS({ kind, volumeM3, tight }: PlaceSpec, doorOpen: boolean): number {
  if (kind === 'outdoors') return AIR_CHANGE.outdoorsM3PerS;
  if (doorOpen) return AIR_CHANGE.openDoorM3PerS;
  return tight ? 0 : AIR_CHANGE.shutPerS * volumeM3;
}
