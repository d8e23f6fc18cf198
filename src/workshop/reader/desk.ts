/**
 * The page's end of the workers: one that reads what is written, one that writes what a form wishes and never waits for the
 * first, one that plays a scenario's plans and is thrown away when the text goes on changing. Of looks at a text only the
 * last one asked for is answered. One that broke is thrown away too: whoever asks next gets another.
 */
import type { Problem } from '../../../shared/schema/problem';
import type { Changes } from '../edit/changesFor';
import type { Wish } from '../edit/wish';
import { whyItBroke } from '../whyItBroke';
import type { Answer, Looked, Request, Spoken } from './protocol';
import type { Vocabulary } from './vocabulary';

export interface Desk {
  vocabulary(): Promise<Vocabulary>;
  /** Null where another text was shown since. */
  look(text: string): Promise<Looked | null>;
  change(text: string, wish: Wish): Promise<Changes | null>;
  /** Everything `check` finds, plans played; null where it was called off. */
  checkWhole(text: string): Promise<readonly Problem[] | null>;
  callOff(): void;
  close(): void;
}

type Asking = Request extends infer One
  ? One extends Request
    ? Omit<One, 'number' | 'spoken'>
    : never
  : never;

interface Line {
  ask(asking: Asking): Promise<Answer>;
  close(): void;
}

const start = (): Worker => new Worker(new URL('../workshop.worker.ts', import.meta.url), { type: 'module' });

function openLine(spoken: () => Spoken): Line {
  let worker: Worker | null = null;
  const waiting = new Map<number, (answer: Answer) => void>();
  let last = 0;
  const giveUp = (failed: string): void => {
    for (const [number, give] of waiting) give({ number, gives: 'nothing', failed });
    waiting.clear();
  };
  const open = (): Worker => {
    const opened = start();
    opened.onmessage = ({ data }: MessageEvent<Answer>) => {
      waiting.get(data.number)?.(data);
      waiting.delete(data.number);
    };
    opened.onerror = (event) => {
      opened.terminate();
      worker = null;
      giveUp(whyItBroke(event));
    };
    return opened;
  };
  return {
    ask(asking) {
      last += 1;
      const number = last;
      worker ??= open();
      worker.postMessage({ ...asking, number, spoken: spoken() });
      return new Promise((resolve) => waiting.set(number, resolve));
    },
    close() {
      worker?.terminate();
      giveUp('');
    },
  };
}

/** `spoken` is looked at with every question. */
export function openDesk(spoken: () => Spoken): Desk {
  const reader = openLine(spoken);
  const writer = openLine(spoken);
  let player: Line | null = null;
  let looks = 0;
  const callOff = (): void => {
    player?.close();
    player = null;
  };
  return {
    async vocabulary() {
      const answer = await reader.ask({ ask: 'vocabulary' });
      if (answer.gives !== 'vocabulary') throw new Error(failureOf(answer));
      return answer.vocabulary;
    },
    async look(text) {
      looks += 1;
      const own = looks;
      const answer = await reader.ask({ ask: 'look', text });
      if (own !== looks) return null;
      if (answer.gives !== 'look') throw new Error(failureOf(answer));
      return answer.looked;
    },
    async change(text, wish) {
      const answer = await writer.ask({ ask: 'change', text, wish });
      return answer.gives === 'change' ? answer.changes : null;
    },
    async checkWhole(text) {
      callOff();
      const line = openLine(spoken);
      player = line;
      const answer = await line.ask({ ask: 'whole', text });
      if (player === line) callOff();
      return answer.gives === 'whole' ? answer.problems : null;
    },
    callOff,
    close() {
      callOff();
      writer.close();
      reader.close();
    },
  };
}

const failureOf = (answer: Answer): string => (answer.gives === 'nothing' ? answer.failed : answer.gives);
