/**
 * What goes on in the workshop, apart from its screen: a change of language builds the screen anew, and the text with what
 * can be undone, the running car, the suspects and a proof that is being made stay as they are.
 */
import { createEffect, createMemo, createSignal, on } from 'solid-js';
import type { ScenarioData } from '../../shared/schema/scenario';
import { runningCar } from './car/runningCar';
import type { KeptProofs } from './proof/provePool';
import { proving } from './proof/proving';
import { suspectsTable } from './proof/suspectsTable';
import type { Spoken } from './reader/protocol';
import { createWritten } from './written';

export function createWork(spoken: () => Spoken, kept: KeptProofs) {
  const written = createWritten(spoken);
  /** Of the text as it stands: null while it has errors, or has not been looked at yet. */
  const ready = createMemo(() => {
    const checked = written.checked();
    return checked && checked.text === written.text() ? checked.scenario : null;
  });
  const [last, setLast] = createSignal<ScenarioData | null>(null);
  createEffect(on(ready, (data) => data && setLast(data)));
  const car = runningCar(last);
  const suspects = suspectsTable();
  const proofs = proving(kept);
  createEffect(
    on(proofs.proved, (made) => {
      if (!made) return;
      const { apart, own } = made.proof;
      suspects.take({ table: apart, own, data: made.data });
    }),
  );
  return { written, ready, car, suspects, proofs };
}

export type Work = ReturnType<typeof createWork>;
