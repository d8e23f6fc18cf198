/** Something could not be opened: what was found, and the way back. */
import type { JSX } from 'solid-js';
import { word } from '../words/words';
import { StopSign } from './Stopped';
import { TopBar } from './TopBar';

export function Failed(props: {
  readonly reason: string;
  readonly unknown: boolean;
  /** It stands for a scenario that does not ship. */
  readonly own: boolean;
  readonly id: string;
  readonly onHome: () => void;
}): JSX.Element {
  return (
    <>
      <TopBar onHome={props.onHome} />
      <main class="pg resm" id="main">
        <div class="rcard" role="alert">
          <div class="row">
            <StopSign />
            <h1>{word('app.failed.title')}</h1>
          </div>
          <p>
            {props.unknown
              ? props.own
                ? word('app.failed.ownGone')
                : word('app.failed.unknownScenario', { id: props.id })
              : word('app.failed.error', { reason: props.reason })}
          </p>
          <button type="button" class="btn pri" onClick={() => props.onHome()}>
            {word('app.scenarios')}
          </button>
        </div>
      </main>
    </>
  );
}
