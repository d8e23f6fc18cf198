/** A kept session of another engine or scenario: what it was and the score it had. It can be saved, not played on. */
import { TopBar } from '../panels/TopBar';
import { sessionFileText } from '../session/sessionFileText';
import { word } from '../words/words';
import type { KeptSession } from './savedSession';
import { saveFile } from './saveFile';

export default function OtherSession(props: {
  readonly kept: KeptSession;
  readonly other: 'engine' | 'scenario';
  readonly onHome: () => void;
  readonly onThrowAway: () => void;
}) {
  const { log, last } = props.kept;
  const save = (): void => {
    const text = last ? sessionFileText({ log, last }) : `${JSON.stringify({ log })}\n`;
    saveFile(`${log.scenarioId}-${log.seed}.session.json`, text);
  };
  return (
    <>
      <TopBar onHome={props.onHome} />
      <main class="pg resm" id="main">
        <div class="rcard">
          <h1>{word('app.other.title')}</h1>
          <p>{props.other === 'engine' ? word('app.other.engine') : word('app.other.scenario')}</p>
          <p>
            {last ? word('app.other.score', { reported: String(last.reported) }) : word('app.other.unscored')}
          </p>
          <div class="row">
            <button type="button" class="btn pri" onClick={() => props.onHome()}>
              {word('app.scenarios')}
            </button>
            <button type="button" class="btn" onClick={save}>
              {word('app.other.save')}
            </button>
            <button type="button" class="btn" onClick={() => props.onThrowAway()}>
              {word('app.other.throwAway')}
            </button>
          </div>
        </div>
      </main>
    </>
  );
}
