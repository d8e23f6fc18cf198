/**
 * How each noise is made: a source, a filter over it, and for a moment how fast it dies away. Nothing is recorded; all
 * figures are [guess], chosen so that no two are mistaken for each other.
 */
import type { LastingSound, MomentSound } from './soundIds';

export type Source = 'noise' | 'sawtooth' | 'square' | 'triangle' | 'sine';

export interface Recipe {
  readonly source: Source;
  readonly pitchHz?: number;
  readonly filter: 'lowpass' | 'bandpass' | 'highpass';
  readonly filterHz: number;
  readonly q: number;
  readonly gain: number;
  /** Swells and fades so often a second: a knock, a rattle, a pump's stroke. */
  readonly beatHz?: number;
}

export const LASTING: Readonly<Record<LastingSound, Recipe>> = {
  engine: { source: 'sawtooth', pitchHz: 30, filter: 'lowpass', filterHz: 260, q: 0.7, gain: 0.35 },
  compressor: { source: 'triangle', pitchHz: 150, filter: 'lowpass', filterHz: 600, q: 0.7, gain: 0.12 },
  fan: { source: 'noise', filter: 'bandpass', filterHz: 420, q: 0.8, gain: 0.35 },
  blower: { source: 'noise', filter: 'bandpass', filterHz: 900, q: 0.5, gain: 0.3 },
  pump: { source: 'square', pitchHz: 48, filter: 'lowpass', filterHz: 320, q: 1, gain: 0.14, beatHz: 24 },
  recovery: { source: 'square', pitchHz: 62, filter: 'lowpass', filterHz: 420, q: 1, gain: 0.14, beatHz: 11 },
  meteringHiss: { source: 'noise', filter: 'bandpass', filterHz: 3200, q: 1.2, gain: 0.12 },
  leakHiss: { source: 'noise', filter: 'highpass', filterHz: 5200, q: 0.7, gain: 0.18 },
  spray: { source: 'noise', filter: 'highpass', filterHz: 2600, q: 0.7, gain: 0.3 },
  knocking: { source: 'noise', filter: 'bandpass', filterHz: 180, q: 3, gain: 0.9, beatHz: 9 },
  rattling: { source: 'noise', filter: 'bandpass', filterHz: 1400, q: 3, gain: 0.35, beatHz: 17 },
  squeal: { source: 'sawtooth', pitchHz: 1250, filter: 'bandpass', filterHz: 2500, q: 4, gain: 0.1 },
};

export interface MomentRecipe extends Recipe {
  readonly seconds: number;
}

const click = (filterHz: number, gain: number): MomentRecipe => ({
  source: 'noise',
  filter: 'bandpass',
  filterHz,
  q: 2.5,
  gain,
  seconds: 0.06,
});
const bang = (filterHz: number, seconds: number): MomentRecipe => ({
  source: 'noise',
  filter: 'lowpass',
  filterHz,
  q: 0.8,
  gain: 1,
  seconds,
});
const gush = (filterHz: number, seconds: number): MomentRecipe => ({
  source: 'noise',
  filter: 'highpass',
  filterHz,
  q: 0.7,
  gain: 0.35,
  seconds,
});

export const MOMENTS: Readonly<Record<MomentSound, MomentRecipe>> = {
  clutchIn: click(1500, 0.9),
  clutchOut: click(950, 0.7),
  couplerOn: click(2600, 0.9),
  couplerOff: click(2100, 0.6),
  relief: bang(1800, 0.5),
  slug: bang(240, 0.16),
  seized: bang(320, 0.6),
  caught: bang(2600, 0.3),
  burst: bang(900, 1.1),
  sprayed: gush(2400, 0.9),
  openedUp: gush(1800, 1.2),
  tick: click(4200, 0.6),
  started: {
    source: 'sawtooth',
    pitchHz: 18,
    filter: 'lowpass',
    filterHz: 500,
    q: 1,
    gain: 0.5,
    seconds: 0.7,
  },
  sample: gush(4200, 0.5),
  flash: bang(520, 0.9),
  struck: bang(420, 0.2),
};
