/** What the page may ask of the worker that tries a finished session otherwise. */
import type { SessionLog } from '../session/corePort';
import type { FromWorker } from './protocol';
import { type RerunWish, rerunDesk, type Try } from './rerunDesk';

export type RerunAsk =
  /** Make this finished session ready; out of `lent` it comes as it was lived for the debrief. */
  | {
      readonly do: 'open';
      readonly log: SessionLog;
      readonly scenarioId: string;
      readonly lent: MessagePort;
    }
  | { readonly do: 'wish'; readonly wish: RerunWish }
  /** Before anybody wishes it. */
  | { readonly do: 'ahead'; readonly tries: readonly Try[] }
  | { readonly do: 'hold' }
  | { readonly do: 'row'; readonly step: number };

export type RerunDoor = (ask: RerunAsk) => Promise<void>;

export function rerunDoor(post: (message: FromWorker) => void): RerunDoor {
  const desk = rerunDesk(post);
  return async (ask) => {
    switch (ask.do) {
      case 'open':
        return desk.open(ask.log, ask.scenarioId, ask.lent);
      case 'wish':
        return desk.wish(ask.wish);
      case 'ahead':
        return desk.ahead(ask.tries);
      case 'hold':
        return desk.hold();
      case 'row':
        return desk.row(ask.step);
    }
  };
}
