/**
 * A signal is a number the plant can be asked for at any step: it feeds watches, rubric conditions, frames, traces.
 * `kind` decides who may see it: readings, cues and controls are what a person has; truth never leaves the core in an
 * assessed session.
 */
export type SignalKind = 'reading' | 'cue' | 'control' | 'truth';

export interface SignalSpec {
  /** Dotted id: what it belongs to, then the quantity with its unit, e.g. `lowGauge.gaugePressurePa`. */
  readonly id: string;
  /** SI unit, `1` for a ratio, `bool` for 0 or 1. */
  readonly unit: string;
  readonly kind: SignalKind;
}
