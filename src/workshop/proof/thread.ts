/** A prover in a thread of its own. */
import { whyItBroke } from '../whyItBroke';
import type { FromProver, ToProver } from './proveDesk';
import type { Prover } from './provePool';

export interface Thread {
  readonly ask: Prover;
  stop(): void;
}

type Answer = FromProver | { readonly type: 'failed'; readonly reason: string };

export function thread(): Thread {
  const worker = new Worker(new URL('./prove.worker.ts', import.meta.url), { type: 'module' });
  return {
    ask: (message: ToProver) =>
      new Promise((resolve, reject) => {
        worker.onmessage = ({ data }: MessageEvent<Answer>) =>
          data.type === 'failed' ? reject(new Error(data.reason)) : resolve(data);
        worker.onerror = (event) => reject(new Error(whyItBroke(event)));
        worker.postMessage(message);
      }),
    stop: () => worker.terminate(),
  };
}
