/** The running car: gauges at a moment, what a trainee will see in words, and both needles over the weather. */
import { createEffect, createSignal, For, type JSX, on, Show } from 'solid-js';
import { type DisplayUnits, inWords, writeTemperature } from '../../instruments/displayUnits';
import { word } from '../../words/words';
import { BandTable } from './BandTable';
import { CarGauges } from './CarGauges';
import { CarTime } from './CarTime';
import { Choice } from './Choice';
import { bandLine, carLines } from './carLines';
import type { CarWay } from './carRun';
import { jobWeather } from './jobWeather';
import type { CarPicture, RunningCar } from './runningCar';
import { WeatherChart } from './WeatherChart';

const wayWord = (way: CarWay): string =>
  ({
    running: word('workshopCar.way.running'),
    idle: word('workshopCar.way.idle'),
    shut: word('workshopCar.way.shut'),
  })[way];

function ranWords({ way, ambientK }: CarPicture, units: DisplayUnits): string {
  const given = { temperature: inWords(writeTemperature(ambientK, units.temperature)) };
  if (way === 'idle') return word('workshopCar.ran.idle', given);
  return way === 'shut' ? word('workshopCar.ran.shut', given) : word('workshopCar.ran.running', given);
}

export function CarPanel(props: {
  readonly car: RunningCar;
  /** The text has changed since, or has errors. */
  readonly isStale: boolean;
  readonly units: DisplayUnits;
}): JSX.Element {
  return (
    <section class="panel wc-panel" aria-labelledby="wc-title">
      <div class="row wrap">
        <h2 id="wc-title">{word('workshopCar.title')}</h2>
        <Show when={props.isStale && props.car.picture()}>
          <span class="chip">{word('workshopCar.stale')}</span>
        </Show>
        <span class="sp" />
        <Show when={props.car.picture()}>
          {(picture) => (
            <Choice
              label={word('workshopCar.way.label')}
              options={picture().ways.map((value) => ({ value, label: wayWord(value) }))}
              value={props.car.way()}
              onChoose={props.car.setWay}
            />
          )}
        </Show>
      </div>
      <Show when={props.car.failure()}>
        {(reason) => (
          <p class="s" role="alert">
            {word('workshopCar.failed', { reason: reason() })}
          </p>
        )}
      </Show>
      <Show when={props.car.progress() !== null}>
        <progress
          class="wc-bar"
          aria-label={word('workshopCar.running')}
          value={props.car.progress() ?? 0}
          max="1"
        />
      </Show>
      <Show
        when={props.car.picture()}
        fallback={
          <p class="emp">
            {props.car.progress() === null ? word('workshopCar.empty') : word('workshopCar.running')}
          </p>
        }
      >
        {(picture) => <Picture picture={picture()} isStale={props.isStale} units={props.units} />}
      </Show>
    </section>
  );
}

function Picture(props: {
  readonly picture: CarPicture;
  readonly isStale: boolean;
  readonly units: DisplayUnits;
}): JSX.Element {
  const last = (): number => props.picture.own.trace.lowPa.length - 1;
  const [second, setSecond] = createSignal(last());
  createEffect(on(last, (end) => setSecond((now) => Math.min(now, end)), { defer: true }));
  const isEmpty = (): boolean => props.picture.data.contents.state === 'evacuated';
  return (
    <div class="wc-picture" classList={{ old: props.isStale }}>
      <p class="s mut">{ranWords(props.picture, props.units)}</p>
      <Show when={isEmpty()}>
        <p class="s">{word('workshopCar.loopEmpty')}</p>
      </Show>
      <div class="wc-now">
        <div>
          <CarGauges
            own={props.picture.own.trace}
            sound={props.picture.sound.trace}
            second={second()}
            units={props.units}
          />
          <CarTime second={second()} last={last()} onSecond={setSecond} />
        </div>
        <div class="wc-says">
          <h3>{word('workshopCar.says.title')}</h3>
          <ul>
            <For each={carLines(props.picture, props.units)}>{(line) => <li>{line}</li>}</For>
          </ul>
        </div>
      </div>
      <Show when={!isEmpty() && props.picture.band.length > 1}>
        <Weather picture={props.picture} units={props.units} />
      </Show>
    </div>
  );
}

function Weather(props: { readonly picture: CarPicture; readonly units: DisplayUnits }): JSX.Element {
  const jobK = () => jobWeather(props.picture.data);
  return (
    <div class="wc-weather">
      <h3>{word('workshopCar.band.title')}</h3>
      <p class="s">{bandLine(props.picture.band, props.units)}</p>
      <div class="wc-charts">
        <For each={['low', 'high'] as const}>
          {(side) => <WeatherChart side={side} band={props.picture.band} jobK={jobK()} units={props.units} />}
        </For>
      </div>
      <ul class="wc-key">
        <li>
          <svg width="34" height="14" viewBox="0 0 34 14" aria-hidden="true">
            <path d="M2 7H32" class="own" />
            <circle cx="12" cy="7" r="4.3" class="dot-low" />
            <rect x="19" y="3" width="8" height="8" class="dot-high" />
          </svg>
          {word('workshopCar.band.here')}
        </li>
        <li>
          <svg width="34" height="14" viewBox="0 0 34 14" aria-hidden="true">
            <rect x="1" y="1" width="32" height="12" class="sound-band" />
            <path d="M1 7H33" class="sound" />
          </svg>
          {word('workshopCar.band.sound')}
        </li>
        <li>
          <svg width="16" height="14" viewBox="0 0 16 14" aria-hidden="true">
            <path d="M8 1V13" class="swing" />
          </svg>
          {word('workshopCar.band.swing')}
        </li>
        <li>
          <svg width="16" height="14" viewBox="0 0 16 14" aria-hidden="true">
            <rect x="4" y="0" width="8" height="14" class="job" />
          </svg>
          {word('workshopCar.band.job')}
        </li>
      </ul>
      <BandTable band={props.picture.band} units={props.units} />
    </div>
  );
}
