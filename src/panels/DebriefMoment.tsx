/** A moment seen again: the loop cut open, the diagram, both gauges and the points as they stood; and a way to go on. */
import { createEffect, createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import { inWords, writeClock, writePressure } from '../instruments/displayUnits';
import { GaugeFace } from '../instruments/GaugeFace';
import { readGauge } from '../instruments/gaugeReading';
import { LoopDrawing } from '../instruments/LoopDrawing';
import type { SpotId } from '../instruments/loop/spots';
import { PressureEnthalpy } from '../instruments/PressureEnthalpy';
import { isKnown, type StatePoint } from '../instruments/phGeometry';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import { actionWords } from './actionWords';
import { IconButton } from './controls';
import { pointsAt, valueAt } from './DebriefNumbers';
import type { DebriefModel, Place } from './debriefModel';
import { healthyLoopOf, loopStateOf } from './inside/insideState';
import { PointTable } from './inside/PointTable';

export interface DebriefMomentProps {
  readonly debrief: DebriefModel;
  readonly place: Place;
  readonly onPlace: (place: Place) => void;
}

const SIDES = ['low', 'high'] as const;
const JUMP_S = 10;

function Gauges(props: DebriefMomentProps): JSX.Element {
  const reading = (side: 'low' | 'high') => {
    const { units, saturation, data } = props.debrief;
    return readGauge(side, valueAt(data, side, props.place.seconds), units, saturation, 'open');
  };
  return (
    <div class="mo-gauges">
      <For each={SIDES}>
        {(side) => (
          <figure class={`gauge ${side}`}>
            <div role="img" aria-label={reading(side).spoken}>
              <GaugeFace
                face={side}
                hub={side}
                reading={reading(side)}
                units={props.debrief.units}
                saturation={props.debrief.saturation}
                fluidKnown={true}
                expected={null}
              />
            </div>
          </figure>
        )}
      </For>
    </div>
  );
}

function Pictures(props: DebriefMomentProps): JSX.Element {
  const [chosen, setChosen] = createSignal<SpotId | null>(null);
  const choice = {
    get chosen() {
      return chosen();
    },
    onChoose: setChosen,
  };
  const points = (): StatePoint[] => pointsAt(props.debrief.data, props.place.seconds);
  const side = (id: 'low' | 'high'): string =>
    inWords(
      writePressure(valueAt(props.debrief.data, id, props.place.seconds), props.debrief.units.pressure, id),
    );
  const session = createMemo(() => props.debrief.sessionAt());
  createEffect(() => props.debrief.askMoment(Math.round(props.place.seconds * STEPS_PER_SECOND)));
  return (
    <>
      <Show when={session()}>
        {(one) => (
          <LoopDrawing
            state={loopStateOf(one())}
            healthy={healthyLoopOf(one())}
            units={props.debrief.units}
            low={side('low')}
            high={side('high')}
            isRunning={false}
            choice={choice}
          />
        )}
      </Show>
      <Show when={points().some(isKnown)} fallback={<p class="s mut">{word('debrief.moment.noPoints')}</p>}>
        <PressureEnthalpy
          saturation={props.debrief.saturation}
          points={points()}
          units={props.debrief.units}
          choice={choice}
        />
      </Show>
      <Gauges {...props} />
      <Show when={points().some(isKnown)}>
        <PointTable
          points={points()}
          units={props.debrief.units}
          saturation={props.debrief.saturation}
          choice={choice}
        />
      </Show>
    </>
  );
}

function GoOn(props: DebriefMomentProps): JSX.Element {
  const step = (): number => Math.round(props.place.seconds * STEPS_PER_SECOND);
  const note = (): string => {
    const time = writeClock(props.place.seconds);
    const { data, nameOf } = props.debrief;
    const deed = data.actions.find(({ logNumber }) => logNumber === props.place.deed);
    if (deed === undefined) return word('debrief.moment.goOnNote', { time });
    return word('debrief.moment.goOnDeed', { time, deed: actionWords(deed, nameOf) });
  };
  return (
    <Show when={props.debrief.onGoOn}>
      {(goOn) => (
        <div class="row wrap">
          <button type="button" class="btn sm pri" onClick={() => goOn()(step(), props.place.deed)}>
            {word('debrief.moment.goOn')}
          </button>
          <span class="s mut mo-note">{note()}</span>
        </div>
      )}
    </Show>
  );
}

export function DebriefMoment(props: DebriefMomentProps): JSX.Element {
  const endS = (): number => props.debrief.data.lastStep / STEPS_PER_SECOND;
  const to = (seconds: number): void =>
    props.onPlace({ seconds: Math.max(0, Math.min(endS(), seconds)), deed: null });
  return (
    <div class="mo">
      <div class="row mo-time">
        <IconButton
          icon="minus"
          label={word('debrief.moment.back')}
          onPress={() => to(props.place.seconds - JUMP_S)}
        />
        <input
          type="range"
          min="0"
          max={Math.floor(endS())}
          step="1"
          value={props.place.seconds}
          aria-label={word('debrief.moment.slider')}
          aria-valuetext={writeClock(props.place.seconds)}
          onInput={(event) => to(Number(event.currentTarget.value))}
        />
        <IconButton
          icon="plus"
          label={word('debrief.moment.on')}
          onPress={() => to(props.place.seconds + JUMP_S)}
        />
        <time>{writeClock(props.place.seconds)}</time>
      </div>
      <GoOn {...props} />
      <div class="mo-grid">
        <Pictures {...props} />
      </div>
      <p class="xs mut">{word('debrief.moment.still')}</p>
    </div>
  );
}
