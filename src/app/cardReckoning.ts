/** The figures of a car card as they come from the worker; only the answer to the last request counts. */
import { createSignal, onCleanup } from 'solid-js';
import type { CardFigures } from '../export/card/cardFigures';
import type { CardInputs } from '../export/card/cardInputs';
import { word } from '../words/words';
import type { CardAnswer, CardRequest } from './card.worker';

export interface Reckoned {
  readonly inputs: CardInputs;
  readonly figures: CardFigures;
}

export function cardReckoning() {
  const worker = new Worker(new URL('./card.worker.ts', import.meta.url), { type: 'module' });
  const [reckoned, setReckoned] = createSignal<Reckoned | null>(null);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  let number = 0;
  let asked: CardInputs | null = null;
  worker.onmessage = ({ data }: MessageEvent<CardAnswer>) => {
    if (data.number !== number || !asked) return;
    if (data.figures) setReckoned({ inputs: asked, figures: data.figures });
    else setTrouble(word('carCard.form.failed', { reason: data.failed ?? '' }));
  };
  worker.onerror = ({ message }) => setTrouble(word('carCard.form.failed', { reason: message }));
  onCleanup(() => worker.terminate());
  return {
    reckoned,
    trouble,
    ask(inputs: CardInputs): void {
      asked = inputs;
      number++;
      setReckoned(null);
      setTrouble(null);
      worker.postMessage({ number, inputs } satisfies CardRequest);
    },
    /** What was typed makes no card: that is said over the last one, whose own figures stand in it. */
    refuse(reason: string): void {
      number++;
      setTrouble(reason);
    },
  };
}
