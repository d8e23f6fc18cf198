/** The moment of the run that the needles show: a slider, and a button that lets the run go by, a minute a second. */
import { createEffect, createSignal, type JSX, on, onCleanup } from 'solid-js';
import { writeClock } from '../../instruments/displayUnits';
import { word } from '../../words/words';

const RUN_S_PER_S = 60;
const MS_PER_S = 1000;

export function CarTime(props: {
  readonly second: number;
  readonly last: number;
  readonly onSecond: (second: number) => void;
}): JSX.Element {
  const [isGoing, setGoing] = createSignal(false);
  let asked = 0;
  let startedMs = 0;
  let startedAt = 0;
  const frame = (nowMs: number): void => {
    const at = startedAt + Math.floor((RUN_S_PER_S * (nowMs - startedMs)) / MS_PER_S);
    props.onSecond(Math.max(startedAt, Math.min(props.last, at)));
    if (at < props.last) asked = requestAnimationFrame(frame);
    else setGoing(false);
  };
  createEffect(
    on(isGoing, (going) => {
      cancelAnimationFrame(asked);
      if (!going) return;
      startedAt = props.second >= props.last ? 0 : props.second;
      startedMs = performance.now();
      asked = requestAnimationFrame(frame);
    }),
  );
  onCleanup(() => cancelAnimationFrame(asked));
  const said = (): string => word('workshopCar.time.at', { time: writeClock(props.second) });
  return (
    <div class="wc-time">
      <button type="button" class="btn sm" onClick={() => setGoing(!isGoing())}>
        <svg width="14" height="14" viewBox="0 0 14 14" aria-hidden="true">
          <path d={isGoing() ? 'M3 2h3v10H3zM8 2h3v10H8z' : 'M3 1.5L12 7L3 12.5z'} fill="currentColor" />
        </svg>
        {isGoing() ? word('workshopCar.time.pause') : word('workshopCar.time.play')}
      </button>
      <input
        type="range"
        aria-label={word('workshopCar.time.label')}
        aria-valuetext={said()}
        min={0}
        max={props.last}
        step={5}
        value={props.second}
        onInput={(event) => {
          setGoing(false);
          props.onSecond(Number(event.currentTarget.value));
        }}
      />
      <output class="s mut nw">{said()}</output>
    </div>
  );
}
