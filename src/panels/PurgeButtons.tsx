/** Lets the air out of a hose at its can's end: crack it, shut it again. */
import type { JSX } from 'solid-js';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

export function PurgeButtons(props: {
  readonly session: SessionModel;
  readonly hoseId: string;
}): JSX.Element {
  const purge = (to: 'open' | 'shut'): void => props.session.send({ do: 'purge', hose: props.hoseId, to });
  return (
    <>
      <button type="button" class="btn sm" onClick={() => purge('open')}>
        {word('panels.hose.purge')}
      </button>
      <button type="button" class="btn sm" onClick={() => purge('shut')}>
        {word('panels.hose.purgeShut')}
      </button>
    </>
  );
}
