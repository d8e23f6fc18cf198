/**
 * The page's end of the car's worker: asks anew a moment after what decides the readings has changed, and keeps the last
 * picture until the next one comes.
 */
import { createEffect, createMemo, createSignal, on, onCleanup, untrack } from 'solid-js';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { whyItBroke } from '../whyItBroke';
import type { FromCar, ToCar } from './car.worker';
import type { CarRun, CarWay } from './carRun';
import { type CarsAt, PIECES } from './carStory';
import { decisive } from './decisive';

export interface CarPicture {
  /** What it was made of. */
  readonly data: ScenarioData;
  readonly ways: readonly CarWay[];
  readonly way: CarWay;
  readonly ambientK: number;
  readonly own: CarRun;
  readonly sound: CarRun;
  /** By rising temperature, as far as they have come. */
  readonly band: readonly CarsAt[];
}

export interface RunningCar {
  readonly picture: () => CarPicture | null;
  readonly way: () => CarWay;
  readonly setWay: (way: CarWay) => void;
  /** Share of the work that is done; null where nothing is going on. */
  readonly progress: () => number | null;
  readonly failure: () => string | null;
}

const PAUSE_MS = 500;

export function runningCar(scenario: () => ScenarioData | null): RunningCar {
  let worker: Worker | null = null;
  const [picture, setPicture] = createSignal<CarPicture | null>(null);
  const [way, setWay] = createSignal<CarWay>('running');
  const [progress, setProgress] = createSignal<number | null>(null);
  const [failure, setFailure] = createSignal<string | null>(null);
  let serial = 0;
  let pieces = 0;
  let timer = 0;
  let asked: ScenarioData | null = null;

  const ask = (data: ScenarioData): void => {
    serial++;
    pieces = 0;
    asked = data;
    setFailure(null);
    setProgress(0);
    worker ??= open();
    worker.postMessage({ type: 'run', serial, data, way: way() } satisfies ToCar);
  };
  const take = (message: FromCar): void => {
    if (message.serial !== serial || asked === null) return;
    if (message.type === 'failed') {
      setFailure(message.reason);
      setProgress(null);
    } else if (message.type === 'done') setProgress(null);
    else {
      pieces++;
      setProgress(pieces / PIECES);
      const { piece } = message;
      const before = untrack(picture);
      if (piece.kind === 'runs') {
        const { kind: _kind, ...runs } = piece;
        setPicture({ data: asked, ...runs, band: [] });
      } else if (before)
        setPicture({ ...before, band: [...before.band, piece.at].sort((a, b) => a.ambientK - b.ambientK) });
    }
  };
  /** One that broke is thrown away: the next wish gets another. */
  const open = (): Worker => {
    const opened = new Worker(new URL('./car.worker.ts', import.meta.url), { type: 'module' });
    opened.onmessage = ({ data }: MessageEvent<FromCar>) => take(data);
    opened.onerror = (event) => {
      opened.terminate();
      worker = null;
      setFailure(whyItBroke(event));
      setProgress(null);
    };
    return opened;
  };
  const key = createMemo(() => {
    const data = scenario();
    return data && `${way()} ${decisive(data)}`;
  });
  createEffect(
    on(key, (wanted) => {
      clearTimeout(timer);
      serial++;
      setProgress(null);
      worker?.postMessage({ type: 'stop' } satisfies ToCar);
      const data = untrack(scenario);
      if (wanted !== null && data) timer = window.setTimeout(() => ask(data), PAUSE_MS);
    }),
  );
  onCleanup(() => {
    clearTimeout(timer);
    worker?.terminate();
  });
  return { picture, way, setWay, progress, failure };
}
