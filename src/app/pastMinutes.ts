/** What instruments read in the last minutes of a log, kept while it is run again: nobody looked at them then. */
import { STEPS_PER_SECOND } from '../session/clock';
import type { Observer } from '../session/sessionRun';
import { CHANNELS, KEPT_S, type PastMinutes } from './gaugeHistory';

export function pastMinutes(lastStep: number): { readonly past: PastMinutes; readonly observe: Observer } {
  const past: { step: number; values: number[] }[] = [];
  let indices: readonly number[] | null = null;
  return {
    past,
    observe({ step, moment, table }) {
      const isLooked = step % STEPS_PER_SECOND === 0 && step >= lastStep - KEPT_S * STEPS_PER_SECOND;
      if (!isLooked || step > lastStep || past[past.length - 1]?.step === step) return;
      indices ??= CHANNELS.map((channel) => table.signals.findIndex(({ id }) => id === channel));
      past.push({ step, values: indices.map((index) => (index < 0 ? Number.NaN : moment.value(index))) });
    },
  };
}
