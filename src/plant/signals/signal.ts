/** A signal with the way to read it now. */
import type { SignalKind, SignalSpec } from '../signalTypes';

export interface Signal {
  readonly spec: SignalSpec;
  readonly read: () => number;
}

export function signal(id: string, unit: string, kind: SignalKind, read: () => number): Signal {
  return { spec: { id, unit, kind }, read };
}

/** A yes or no, as 1 or 0. */
export function flag(id: string, kind: SignalKind, read: () => boolean): Signal {
  return signal(id, 'bool', kind, () => (read() ? 1 : 0));
}
