/** The drill's side: bays so far, the question, its answers, the trace in words; after the answer the reasons. */
import { For, type JSX, Show } from 'solid-js';
import { answerOf } from '../../layout/drill/answerOf';
import type { DrillBay } from '../../layout/drill/drill';
import { word } from '../../words/words';
import { Icon } from '../Icon';
import { DrillReasons } from './DrillReasons';
import { DrillTracePanel } from './DrillTracePanel';
import { choiceName, letterOf } from './drillWords';

export interface DrillPanelProps {
  readonly bay: DrillBay;
  readonly comesBack: boolean;
  /** Answers of this visit, the last dozen. */
  readonly past: readonly boolean[];
  /** What was answered; null before. */
  readonly chosen: string | null;
  readonly traced: readonly string[];
  readonly lifted: readonly string[];
  /** The last press did not join what was followed. */
  readonly isBroken: boolean;
  readonly onChoose: (choice: string) => void;
  readonly onFollow: (id: string) => void;
  readonly onClear: () => void;
  readonly onNext: () => void;
}

const MARKS_SHOWN = 12;

function Past(props: { readonly panel: DrillPanelProps }): JSX.Element {
  const dots = (): readonly (boolean | null)[] => [
    ...props.panel.past.slice(-(MARKS_SHOWN - 1)),
    ...(props.panel.chosen === null ? [null] : []),
  ];
  return (
    <div>
      <ol class="dstrip" aria-label={word('drill.bays')}>
        <For each={dots()}>
          {(dot) => (
            <li classList={{ y: dot === true, n: dot === false, c: dot === null }}>
              <span class="vh">
                {dot === null ? word('drill.bayNow') : dot ? word('drill.bayRight') : word('drill.bayWrong')}
              </span>
              <Show when={dot !== null} fallback={<span aria-hidden="true">?</span>}>
                <Icon name={dot ? 'tick' : 'cross'} size={14} />
              </Show>
            </li>
          )}
        </For>
      </ol>
      <p class="xs mut">{props.panel.comesBack ? word('drill.comesBack') : word('drill.baysNote')}</p>
    </div>
  );
}

function Question(props: { readonly panel: DrillPanelProps }): JSX.Element {
  const bay = () => props.panel.bay;
  const asked = (): string => {
    const { question } = bay();
    return question.kind === 'side'
      ? word('drill.ask.side', { letter: letterOf(bay(), question.port) })
      : word('drill.ask.which');
  };
  return (
    <>
      <div>
        <h1 id="drill-question" tabIndex={-1}>
          {asked()}
        </h1>
        <p class="s mut">{word('drill.ask.follow')}</p>
      </div>
      <fieldset class="dab" aria-labelledby="drill-question">
        <For each={answerOf(bay()).choices}>
          {(choice) => (
            <button type="button" class="btn big" onClick={() => props.panel.onChoose(choice)}>
              {choiceName(bay(), choice)}
            </button>
          )}
        </For>
      </fieldset>
    </>
  );
}

export function DrillPanel(props: DrillPanelProps): JSX.Element {
  return (
    <aside class="dq" aria-label={word('drill.title')} data-region tabIndex={-1}>
      <Past panel={props} />
      <Show
        when={props.chosen}
        fallback={
          <>
            <Question panel={props} />
            <DrillTracePanel
              bay={props.bay}
              traced={props.traced}
              lifted={props.lifted}
              isBroken={props.isBroken}
              onFollow={props.onFollow}
              onClear={props.onClear}
            />
          </>
        }
      >
        {(chosen) => <DrillReasons bay={props.bay} chosen={chosen()} onNext={props.onNext} />}
      </Show>
    </aside>
  );
}
