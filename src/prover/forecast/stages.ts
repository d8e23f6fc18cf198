/**
 * What a car is put through to be read: at rest, running as the service information has it, at idle, with the cabin shut,
 * for long at speed, with the air conditioning switched off again, and for a moment with its low-pressure switch bridged.
 * One order for ghosts and for whoever is in the bay, so that both are read after the same time. Lengths are [guess]: needles
 * settle within a minute and a half, a cabin within three or four.
 */
import { vehicleOf } from '../../loop/car/vehicles';
import type { Command } from '../../plant/commandSpecs';
import { serviceRpm } from '../../plant/serviceRpm';
import { stageSeconds } from './stageSeconds';

export const STAGE_IDS = ['rest', 'running', 'idle', 'shut', 'motorway', 'off', 'bridged'] as const;
export type StageId = (typeof STAGE_IDS)[number];

export interface Stage {
  readonly id: StageId;
  readonly commands: readonly Command[];
  readonly seconds: number;
  /** After how many of them what does not go on changing has settled; all, where nothing is said. */
  readonly settledS?: number;
  /** Seconds at its end over which needles are watched. */
  readonly watchedS: number;
  /** What putting the car through it costs, in minutes of a workshop's time. */
  readonly minutes: number;
}

const IDLE_RPM = 900;
/** Dear, since nobody bridges a switch who can tell otherwise. */
const BRIDGED_MINUTES = 5;
const FAST_RPM = 2500;

/** Those that this car can be put through, in the order of `STAGE_IDS`. */
export function stagesOf(vehicleId: string): readonly Stage[] {
  const { evaporatorAir } = vehicleOf(vehicleId);
  const rpm = serviceRpm(vehicleId);
  const engine = (speed: number): Command[] => (rpm > 0 ? [{ do: 'engine', rpm: speed }] : []);
  const running: Command[] = [
    { do: 'windows', to: 'open' },
    { do: 'blower', speed: evaporatorAir.steps.length - 1 },
    { do: 'air', to: 'recirculated' },
    { do: 'temperature', to: 'coldest' },
    ...engine(rpm),
    { do: 'ac', to: 'on' },
  ];
  const bridged: Command[] = [
    { do: 'bypass', what: 'low-switch', to: 'on' },
    { do: 'ac', to: 'on' },
  ];
  const idle: Stage = {
    id: 'idle',
    commands: engine(IDLE_RPM),
    seconds: stageSeconds.idle,
    watchedS: 30,
    minutes: 1.5,
  };
  return [
    { id: 'rest', commands: [], seconds: stageSeconds.rest, watchedS: 1, minutes: 0 },
    { id: 'running', commands: running, seconds: stageSeconds.running, watchedS: 45, minutes: 3 },
    ...(rpm > 0 ? [idle] : []),
    {
      id: 'shut',
      commands: [...engine(rpm), { do: 'windows', to: 'shut' }],
      seconds: stageSeconds.shut,
      watchedS: 45,
      minutes: 4,
    },
    {
      id: 'motorway',
      commands: [...engine(FAST_RPM), { do: 'windows', to: 'open' }],
      seconds: stageSeconds.motorway,
      settledS: 60,
      watchedS: 30,
      minutes: 12,
    },
    { id: 'off', commands: [{ do: 'ac', to: 'off' }], seconds: stageSeconds.off, watchedS: 4, minutes: 0.5 },
    {
      id: 'bridged',
      commands: bridged,
      seconds: stageSeconds.bridged,
      watchedS: 4,
      minutes: BRIDGED_MINUTES,
    },
  ];
}
