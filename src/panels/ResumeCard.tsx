/** After a cut-off: what was written down, that it ran again to the same state, and the way on. */
import { type JSX, onMount, Show } from 'solid-js';
import { plainNumber, writeClock } from '../instruments/displayUnits';
import type { Mode } from '../session/corePort';
import { word } from '../words/words';
import { Icon } from './Icon';
import { ShareDone } from './ShareDone';
import { modeName } from './Shelf';
import { TopBar } from './TopBar';

export interface ResumeProps {
  readonly title: string;
  readonly mode: Mode;
  readonly seed: number;
  readonly seconds: number;
  readonly actions: number;
  readonly lastActionSeconds: number;
  /** Null while the log is being run again. */
  readonly checked: { readonly seconds: number; readonly hash: string } | null;
  /** How much of it has been, 0 to 1. */
  readonly ranAgain: number;
  /** Another tab works on this session. */
  readonly elsewhere: boolean;
  readonly onGoOn: () => void;
  readonly onSave: () => void;
  readonly onLater: () => void;
  readonly onThrowAway: () => void;
  readonly onHelp: () => void;
  readonly onMenu: () => void;
}

export default function ResumeCard(props: ResumeProps): JSX.Element {
  let first: HTMLButtonElement | undefined;
  onMount(() => first?.focus());
  const time = (): string => writeClock(props.seconds);
  return (
    <>
      <TopBar onHome={props.onLater} onHelp={props.onHelp} onMenu={props.onMenu} />
      <main class="pg resm" id="main">
        <div class="rcard" role="region" aria-labelledby="resume-title">
          <div class="row">
            <svg width="62" height="34" viewBox="0 0 40 22" class="mk" aria-hidden="true">
              <circle cx="11" cy="11" r="8.5" />
              <rect x="21.5" y="2.5" width="17" height="17" rx="3.5" stroke-dasharray="4 3" />
            </svg>
            <div>
              <h1 id="resume-title">
                {props.elsewhere ? word('app.tabs.title') : word('shelf.resume.title', { time: time() })}
              </h1>
              <p class="mut">{props.elsewhere ? word('app.tabs.text') : word('shelf.resume.text')}</p>
            </div>
          </div>
          <dl class="kv rsum">
            <dt>{word('shelf.resume.scenario')}</dt>
            <dd>
              {word('shelf.resume.scenarioText', {
                title: props.title,
                mode: modeName(props.mode).toLowerCase(),
                seed: String(props.seed),
              })}
            </dd>
            <dt>{word('shelf.resume.written')}</dt>
            <dd>
              {word('shelf.resume.writtenText', {
                count: plainNumber(props.actions),
                time: writeClock(props.lastActionSeconds),
              })}
            </dd>
            <dt>{word('shelf.resume.checked')}</dt>
            <dd>
              <Show
                when={props.checked}
                fallback={
                  <>
                    {word('shelf.resume.checking')}
                    <ShareDone label={word('shelf.resume.checking')} share={props.ranAgain} />
                  </>
                }
              >
                {(one) =>
                  word('shelf.resume.checkedText', {
                    seconds: plainNumber(one().seconds, 1),
                    hash: one().hash,
                  })
                }
              </Show>
            </dd>
            <dt>{word('shelf.resume.clock')}</dt>
            <dd>{word('shelf.resume.clockText')}</dd>
          </dl>
          <button
            type="button"
            class="btn pri"
            ref={first}
            aria-disabled={props.checked === null}
            onClick={() => props.checked && props.onGoOn()}
          >
            {props.elsewhere ? word('work.twoTabs') : word('shelf.resume.goOn', { time: time() })}
          </button>
          <div class="row wrap">
            <button type="button" class="btn" onClick={() => props.onSave()}>
              <Icon name="save" size={18} />
              {word('shelf.resume.save')}
            </button>
            <button type="button" class="btn qt" onClick={() => props.onLater()}>
              {word('shelf.resume.later')}
            </button>
            <button type="button" class="btn qt" onClick={() => props.onThrowAway()}>
              {word('shelf.resume.away')}
            </button>
          </div>
        </div>
      </main>
    </>
  );
}
