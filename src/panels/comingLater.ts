/**
 * A part of the page that is fetched when it is wanted, or ahead of that. One that does not come throws `NotFetched` where
 * it is shown, and is asked for anew when it is shown anew.
 */
import { type Component, createMemo, createResource, type JSX, untrack } from 'solid-js';
import { NotFetched, reachable } from './reachable';

export interface Coming<Props> {
  (props: Props): JSX.Element;
  /** Fetched now, shown later. Throws `NotFetched`. */
  ahead(): Promise<void>;
}

export function comingLater<Props extends object>(
  fetchPart: () => Promise<{ readonly default: Component<Props> }>,
): Coming<Props> {
  let here: Component<Props> | null = null;
  let coming: Promise<Component<Props>> | null = null;
  const fetchNow = async (): Promise<Component<Props>> => {
    try {
      await reachable();
      here = (await fetchPart()).default;
      return here;
    } catch (cause) {
      coming = null;
      console.warn(cause);
      throw new NotFetched('', { cause });
    }
  };
  const come = (): Promise<Component<Props>> => {
    coming ??= fetchNow();
    return coming;
  };
  const shown = (props: Props): JSX.Element => {
    if (here) return here(props);
    const [found] = createResource(come);
    const made = createMemo(() => {
      const part = found();
      return part && untrack(() => part(props));
    });
    return made as unknown as JSX.Element;
  };
  return Object.assign(shown, {
    ahead: async (): Promise<void> => {
      await come();
    },
  });
}

interface Starter {
  start(): void;
  stop(): void;
}

/** Fetches what starts something, and starts it: in a while, and where the network has gone, in a while again. Stops it. */
export function startLater(waitMs: number, fetchStarter: () => Promise<Starter>): () => void {
  let isOver = false;
  let starter: Starter | null = null;
  let timer = 0;
  const begin = async (): Promise<void> => {
    try {
      await reachable();
      starter = await fetchStarter();
      if (!isOver) starter.start();
    } catch {
      if (!isOver) wait();
    }
  };
  const wait = (): void => {
    timer = window.setTimeout(begin, waitMs);
  };
  wait();
  return () => {
    isOver = true;
    clearTimeout(timer);
    starter?.stop();
  };
}
