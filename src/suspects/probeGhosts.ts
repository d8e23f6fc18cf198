/**
 * What each ghost would show where a person reads and looks first: gauges, the centre vent, the pipes, fans and clutch; at
 * rest, and after a minute at one speed with air conditioning on, windows open, blower full. The numbers come from the
 * ghost itself, without a hose on it; an instrument's range ends them all the same. Only what the bench has instruments
 * for. Other speeds and blower steps, an identifier's sample and a leak search are not among them: the cheapest way is
 * the cheapest without.
 */
import type { PlantOptions } from '../plant/buildPlant';
import { linePlaces, placeWallK } from '../plant/linePlaces';
import { CHANNELS, type Channel } from '../plant/panel';
import { STEPS_PER_MINUTE, STEPS_PER_SECOND } from '../session/clock';
import type { GhostSpec } from './causes';
import { buildGhost, type Ghost } from './ghost';
import type { Observation } from './observation';

export interface Probe {
  /** Without a value of its own. */
  readonly seen: Observation;
  readonly needsGauges: boolean;
  readonly needsRunning: boolean;
  /** By ghost of the ensemble. */
  readonly shows: readonly number[];
}

const REST_STEPS = STEPS_PER_SECOND;
const RUN_STEPS = STEPS_PER_MINUTE;
const SPEED_RPM = 1500;
const FASTEST = 4;

type Read = (ghost: Ghost) => number;
interface Kind {
  readonly seen: Observation;
  readonly needsGauges: boolean;
  readonly whenRest: boolean;
  readonly read: Read;
}

/** `any` is one ghost of the ensemble, for what the car has to read. */
export function probeGhosts(options: PlantOptions, ensemble: readonly GhostSpec[], any: Ghost): Probe[] {
  const kinds = kindsOf(options, any);
  const atRest: number[][] = [];
  const running: number[][] = [];
  for (const spec of ensemble) {
    const ghost = buildGhost(options, spec);
    ghost.runTo(REST_STEPS);
    atRest.push(kinds.map(({ read }) => read(ghost)));
    ghost.perform({ do: 'door', to: 'open' });
    ghost.perform({ do: 'windows', to: 'open' });
    ghost.perform({ do: 'blower', speed: FASTEST });
    ghost.perform({ do: 'engine', rpm: SPEED_RPM });
    ghost.perform({ do: 'ac', to: 'on' });
    ghost.runTo(REST_STEPS + RUN_STEPS);
    running.push(kinds.map(({ read }) => read(ghost)));
  }
  return kinds.flatMap(({ seen, needsGauges, whenRest }, kind) => {
    const probe = (needsRunning: boolean, rows: readonly (readonly number[])[]): Probe => ({
      seen,
      needsGauges,
      needsRunning,
      shows: rows.map((row) => row[kind]),
    });
    return [...(whenRest ? [probe(false, atRest)] : []), probe(true, running)];
  });
}

function kindsOf(options: PlantOptions, any: Ghost): Kind[] {
  const { hoses } = options.bench;
  const both = hoses.includes('gauge-set');
  const low = both || hoses.includes('charging');
  const turning = any.plant.signals.filter(({ id }) => /^fan\..*\.turning$|^clutch\.turning$/.test(id));
  return [
    ...(low ? [gauge('low-gauge', 'lowSide.gaugePressurePa')] : []),
    ...(both ? [gauge('high-gauge', 'highSide.gaugePressurePa')] : []),
    { ...reading('air', 'K', signalOf('vent.temperatureK')), whenRest: false },
    ...linePlaces(any.parts.car).map((at) => ({
      ...reading('line', 'K', ({ parts }) => placeWallK(parts.car, at)),
      whenRest: false,
    })),
    ...turning.map(
      ({ id }): Kind => ({
        seen: { kind: 'look', action: 0, step: 0, channel: id, value: 0, unit: 'bool', counts: true },
        needsGauges: false,
        whenRest: false,
        read: signalOf(id),
      }),
    ),
  ];
}

const signalOf =
  (id: string): Read =>
  ({ plant }) =>
    plant.value(plant.signalIndex(id));

const gauge = (instrument: Channel, signal: string): Kind => ({
  ...reading(instrument, 'Pa', signalOf(signal)),
  needsGauges: true,
  whenRest: true,
});

function reading(instrument: Channel, unit: string, of: Read): Omit<Kind, 'whenRest'> {
  const index = CHANNELS.indexOf(instrument);
  return {
    seen: {
      kind: 'reading',
      action: 0,
      step: 0,
      channel: instrument,
      instrument,
      value: 0,
      unit,
      zeroed: true,
      counts: true,
    },
    needsGauges: false,
    read: (ghost) => {
      const { minimum, maximum } = ghost.parts.panel.instruments[index];
      return Math.max(minimum, Math.min(maximum, of(ghost)));
    },
  };
}
