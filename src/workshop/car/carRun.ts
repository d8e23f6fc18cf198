/**
 * One car of the workshop put through a stretch of running, as the service information has it, and what its needles do
 * meanwhile. Pressures are the car's own, without hose, lag or error. Needles settle within two minutes, a cabin within four
 * [guess].
 */
import type { Plant } from '../../plant/plantPort';
import { type StageId, stagesOf } from '../../prover/forecast/stages';
import { STEPS_PER_SECOND } from '../../session/clock';

/** How it is run: as the service information says, at idle, or with the cabin shut. */
export type CarWay = Extract<StageId, 'running' | 'idle' | 'shut'>;

export interface Swing {
  /** While the compressor turned, as a gauge is read; of all where it never did. Gauge, Pa. */
  readonly meanPa: number;
  readonly leastPa: number;
  readonly mostPa: number;
}

export interface CarReading {
  readonly low: Swing;
  readonly high: Swing;
  readonly ventK: number;
  readonly cyclesPerMin: number;
  /** Of the time watched that the compressor turned. */
  readonly turningShare: number;
  /** Hub to pulley while it turned; 1 where it has none, or never did. */
  readonly hubSpeedRatio: number;
}

/** A sample each second, the start first. */
export interface CarTrace {
  readonly lowPa: Float64Array;
  readonly highPa: Float64Array;
  readonly ventK: Float64Array;
  /** 1 while the compressor turns. */
  readonly turning: Float64Array;
}

export interface CarRun {
  readonly trace: CarTrace;
  readonly reading: CarReading;
}

/** How long it runs, and how much of its end is watched. */
export interface RunLength {
  readonly seconds: number;
  readonly watchedS: number;
}

const SAMPLES_PER_S = 5;
const S_PER_MIN = 60;
const HUB = 'clutch.hubSpeedRatio';

export const waysOf = (vehicleId: string): readonly CarWay[] =>
  stagesOf(vehicleId).flatMap(({ id }) => (id === 'running' || id === 'idle' || id === 'shut' ? [id] : []));

/** Gives way once a simulated second. */
export function* runCar(
  plant: Plant,
  vehicleId: string,
  way: CarWay,
  { seconds, watchedS }: RunLength,
): Generator<void, CarRun> {
  for (const { id, commands } of stagesOf(vehicleId))
    if (id === 'running' || id === way) for (const command of commands) plant.apply(command);
  const read = readers(plant);
  const trace = emptyTrace(seconds + 1);
  const watched = watch();
  note(trace, 0, read);
  for (let second = 1; second <= seconds; second++) {
    for (let part = 0; part < SAMPLES_PER_S; part++) {
      for (let step = 0; step < STEPS_PER_SECOND / SAMPLES_PER_S; step++) plant.advance();
      if (second > seconds - watchedS)
        watched.sample(read.lowPa(), read.highPa(), read.ventK(), read.turning(), read.hub());
    }
    note(trace, second, read);
    yield;
  }
  return { trace, reading: watched.reading(watchedS / S_PER_MIN) };
}

type Readers = Readonly<Record<keyof CarTrace | 'hub', () => number>>;

function readers(plant: Plant): Readers {
  const of = (id: string): (() => number) => {
    const index = plant.signalIndex(id);
    return () => plant.value(index);
  };
  return {
    lowPa: of('lowSide.gaugePressurePa'),
    highPa: of('highSide.gaugePressurePa'),
    ventK: of('vent.temperatureK'),
    turning: of('clutch.turning'),
    hub: plant.signals.some(({ id }) => id === HUB) ? of(HUB) : () => 1,
  };
}

function emptyTrace(length: number): CarTrace {
  const empty = (): Float64Array => new Float64Array(length);
  return { lowPa: empty(), highPa: empty(), ventK: empty(), turning: empty() };
}

function note(trace: CarTrace, second: number, read: Readers): void {
  trace.lowPa[second] = read.lowPa();
  trace.highPa[second] = read.highPa();
  trace.ventK[second] = read.ventK();
  trace.turning[second] = read.turning();
}

/** Sums over what is watched, apart for the moments at which the compressor turned. */
function watch() {
  const rows: (readonly [low: number, high: number, vent: number, turning: number, hub: number])[] = [];
  const swing = (side: 0 | 1): Swing => {
    const turned = rows.filter(([, , , turning]) => turning > 0);
    const read = (turned.length > 0 ? turned : rows).map((row) => row[side]);
    const all = rows.map((row) => row[side]);
    return { meanPa: mean(read), leastPa: Math.min(...all), mostPa: Math.max(...all) };
  };
  return {
    sample(low: number, high: number, vent: number, turning: number, hub: number): void {
      rows.push([low, high, vent, turning, hub]);
    },
    reading(minutes: number): CarReading {
      const turning = rows.map((row) => row[3]);
      const turned = rows.filter((row) => row[3] > 0);
      const rises = turning.filter((now, at) => at > 0 && now > 0 && turning[at - 1] <= 0).length;
      return {
        low: swing(0),
        high: swing(1),
        ventK: mean(rows.map((row) => row[2])),
        cyclesPerMin: rises / minutes,
        turningShare: mean(turning.map((one) => Math.min(1, one))),
        hubSpeedRatio: turned.length > 0 ? mean(turned.map((row) => row[4])) : 1,
      };
    },
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
