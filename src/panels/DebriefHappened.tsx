/** What happened over time: the plot with the session tried otherwise beside it, the same as a table, a moment, the suspects. */
import { createMemo, createSignal, For, type JSX, Match, onCleanup, Show, Switch } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { plotAxis } from '../instruments/plotAxis';
import { type Lane, TimePlot } from '../instruments/TimePlot';
import type { Pin } from '../instruments/TimePlotPins';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import { Segmented } from './controls';
import { DebriefMoment } from './DebriefMoment';
import { ActionTable } from './DebriefNumbers';
import { DebriefSuspects } from './DebriefSuspects';
import { lanesOf } from './debriefLanes';
import type { DebriefModel, DebriefShown, Place } from './debriefModel';
import { editsOf } from './whatIfEdits';

export interface DebriefHappenedProps {
  readonly debrief: DebriefModel;
  readonly shown: DebriefShown;
  readonly place: Place | null;
  /** Suspects are told with the score. */
  readonly hasSuspects: boolean;
  readonly onShown: (shown: DebriefShown) => void;
  readonly onPlace: (place: Place) => void;
}

const USUAL_SIZE = { width: 900, height: 470 };
const LEAST_HEIGHT = 240;

/** Actions as pins; those that were changed stand out, with where they had been. */
function pinsOf({ data, whatIf }: DebriefModel): Pin[] {
  return data.actions
    .flatMap(({ number, logNumber, step }): Pin[] => {
      const seconds = step / STEPS_PER_SECOND;
      const { isDropped, movedSteps, values } = editsOf(whatIf.edits(), logNumber);
      if (isDropped) return [{ number, seconds, kind: 'left' }];
      if (movedSteps !== 0)
        return [
          { number, seconds, kind: 'from' },
          { number, seconds: Math.max(0, seconds + movedSteps / STEPS_PER_SECOND), kind: 'moved' },
        ];
      return [{ number, seconds, kind: Object.keys(values).length > 0 ? 'moved' : 'plain' }];
    })
    .sort((a, b) => a.seconds - b.seconds);
}

function Legend(props: { readonly hasOther: boolean; readonly foldedS: number }): JSX.Element {
  return (
    <span class="lgd xs">
      <svg width="30" height="8" aria-hidden="true">
        <path d="M1 4H29" class="trace series-plain" />
      </svg>
      {word('debrief.plotYours')}
      <Show when={props.hasOther}>
        <svg width="30" height="8" aria-hidden="true">
          <path d="M1 4H29" class="trace other series-plain" />
        </svg>
        {word('debrief.plotOther')}
      </Show>
      <Show when={props.foldedS > 0}>
        <svg width="14" height="12" aria-hidden="true">
          <rect width="14" height="12" class="fold" />
        </svg>
        {word('debrief.plotFold', { minutes: plainNumber(props.foldedS / 60) })}
      </Show>
    </span>
  );
}

export function DebriefHappened(props: DebriefHappenedProps): JSX.Element {
  const own = createMemo(() => lanesOf(props.debrief, props.debrief.data.traces));
  const lanes = createMemo((): Lane[] => {
    const traces = props.debrief.whatIf.traces();
    if (traces === null) return own();
    const others = lanesOf(props.debrief, traces);
    return own().map((lane, at) => ({ ...lane, other: others[at] }));
  });
  const pins = createMemo(() => pinsOf(props.debrief));
  const axis = createMemo(() => {
    const { lastStep, actions } = props.debrief.data;
    const end = Math.max(lastStep, props.debrief.whatIf.told()?.after.lastStep ?? 0);
    return plotAxis(
      lanes(),
      actions.map(({ step }) => step / STEPS_PER_SECOND),
      end / STEPS_PER_SECOND,
    );
  });
  const [size, setSize] = createSignal(USUAL_SIZE);
  /** The plot is drawn in the pixels it has, so that its words keep their size. */
  const watchSize = (element: HTMLElement): void => {
    const observer = new ResizeObserver(([{ contentRect }]) => {
      if (contentRect.width < 1) return;
      setSize({ width: contentRect.width, height: Math.max(LEAST_HEIGHT, contentRect.height) });
    });
    observer.observe(element);
    onCleanup(() => observer.disconnect());
  };
  const foldedS = (): number => axis().folds.reduce((sum, { fromS, toS }) => sum + toS - fromS, 0);
  const apartS = (): number | null => {
    const step = props.debrief.whatIf.apartStep();
    return step === null ? null : step / STEPS_PER_SECOND;
  };
  const cursorS = (): number | null => props.place?.seconds ?? null;
  const changed = (): Pin[] => pins().filter(({ kind }) => kind !== 'plain');
  const views = () => [
    { value: 'plot' as DebriefShown, label: word('debrief.plot') },
    { value: 'table' as DebriefShown, label: word('debrief.table') },
    { value: 'moment' as DebriefShown, label: word('debrief.diagram') },
    ...(props.hasSuspects
      ? [{ value: 'suspects' as DebriefShown, label: word('debrief.suspects.title') }]
      : []),
  ];
  return (
    <section class="panel dr" aria-label={word('debrief.happened')} data-region tabIndex={-1}>
      <div class="row wrap">
        <h2>{word('debrief.happened')}</h2>
        <span class="sp" />
        <Show when={props.shown === 'plot'}>
          <Legend hasOther={props.debrief.whatIf.traces() !== null} foldedS={foldedS()} />
        </Show>
        <Segmented
          label={word('debrief.view')}
          options={views()}
          value={props.shown}
          onChoose={props.onShown}
        />
      </div>
      <div class="pw" tabIndex={0} role="group" aria-label={word('debrief.happened')}>
        <Switch>
          <Match when={props.shown === 'plot' && props.debrief.data.lastStep < STEPS_PER_SECOND}>
            <p class="s mut">{word('debrief.story.nothing')}</p>
          </Match>
          <Match when={props.shown === 'plot'}>
            <div class="wide-only" ref={watchSize}>
              <TimePlot
                lanes={lanes()}
                pins={pins()}
                axis={axis()}
                cursorS={cursorS()}
                apartS={apartS()}
                width={size().width}
                height={size().height}
              />
            </div>
            <div class="plots">
              <For each={lanes()}>
                {(lane) => (
                  <TimePlot
                    lanes={[lane]}
                    pins={changed()}
                    axis={axis()}
                    cursorS={cursorS()}
                    apartS={apartS()}
                    width={390}
                    height={170}
                  />
                )}
              </For>
            </div>
          </Match>
          <Match when={props.shown === 'table'}>
            <ActionTable debrief={props.debrief} />
          </Match>
          <Match when={props.shown === 'suspects'}>
            <DebriefSuspects
              debrief={props.debrief}
              onShow={(seconds) => props.onPlace({ seconds, deed: null })}
            />
          </Match>
          <Match when={props.shown === 'moment'}>
            <DebriefMoment
              debrief={props.debrief}
              place={props.place ?? { seconds: props.debrief.data.lastStep / STEPS_PER_SECOND, deed: null }}
              onPlace={props.onPlace}
            />
          </Match>
        </Switch>
      </div>
    </section>
  );
}
