/**
 * What has changed between a sound car and a sick one in the same weather. Gauges and pipes are read while the compressor
 * turns: with the clutch out they tell what a resting loop does. Within these it counts as the same: high side
 * 3 %, low side 10 kPa, vent 1 K, superheat and subcooling 2 K, half a clutch cycle a minute, discharge 5 K, a step of 3 K
 * along a line, 15 % of the vents' air, 10 kPa at rest.
 */
import type { LoopResult } from '../runLoop';
import type { Found, SignChannel } from './signTable';

const STILL: Readonly<Record<SignChannel, number>> = {
  low: 10_000,
  high: 0.03,
  vent: 1,
  superheat: 2,
  subcooling: 2,
  suction: 2,
  cycling: 0.5,
  discharge: 5,
  lineStep: 3,
  airflow: 0.15,
  static: 10_000,
};
/**
 * What cannot fall under nothing: a sound car that shows less than this much has none to lose. Nor has the low side of one
 * whose clutch cycles: its switch lets go at one pressure or coil temperature, and a needle that sweeps has no value.
 */
const FLOORED: ReadonlySet<SignChannel> = new Set(['superheat', 'subcooling', 'suction', 'cycling']);
/** A side swings when it covers this much more than the sound car's does: Pa, and as a share of the sound high side. */
const SWING_PA = 60_000;
const SWING_SHARE = 0.15;

export interface Change {
  readonly found: Found;
  /** Against the sound car: K, Pa, 1/min; a share of the sound car's for the high side and the air flow. */
  readonly by: number;
  /** What counts as no change, in the same unit. */
  readonly still: number;
  readonly swings: boolean;
  /** The sound car has next to none of it, or its switch holds it at its least, so it cannot fall. */
  readonly noneToLose: boolean;
}

export type AtRest = readonly [sound: LoopResult, sick: LoopResult] | null;

export function changes(
  sound: LoopResult,
  sick: LoopResult,
  atRest: AtRest,
): Readonly<Record<SignChannel, Change>> {
  const cycles = sound.cyclesPerMin > STILL.cycling;
  const change = (channel: SignChannel, has: number, had: number, swings = false): Change => ({
    found: direction(has - had, STILL[channel]),
    by: has - had,
    still: STILL[channel],
    swings,
    noneToLose: FLOORED.has(channel) ? had < STILL[channel] : channel === 'low' && cycles,
  });
  const { running: well } = sound;
  const { running: ill } = sick;
  const lowSwings = swing(sick.lowSideGaugePa) - swing(sound.lowSideGaugePa) > SWING_PA;
  const highSwings =
    swing(sick.highSideGaugePa) - swing(sound.highSideGaugePa) > SWING_SHARE * well.highSideGaugePa;
  return {
    low: change('low', ill.lowSideGaugePa, well.lowSideGaugePa, lowSwings),
    high: change('high', ill.highSideGaugePa / well.highSideGaugePa, 1, highSwings),
    vent: change('vent', sick.ventK, sound.ventK),
    superheat: change('superheat', ill.superheatK, well.superheatK),
    subcooling: change('subcooling', ill.subcoolingK, well.subcoolingK),
    suction: change('suction', ill.suctionSuperheatK, well.suctionSuperheatK),
    cycling: change('cycling', sick.cyclesPerMin, sound.cyclesPerMin),
    discharge: change('discharge', ill.dischargeK, well.dischargeK),
    lineStep: change('lineStep', ill.lineStepK, well.lineStepK),
    airflow: change('airflow', sick.ventFlowKgPerS / sound.ventFlowKgPerS, 1),
    static: atRest
      ? change('static', atRest[1].highSideGaugePa.last, atRest[0].highSideGaugePa.last)
      : change('static', 0, 0),
  };
}

const swing = ({ max, min }: { readonly max: number; readonly min: number }): number => max - min;

function direction(change: number, still: number): Found {
  return change > still ? 'up' : change < -still ? 'down' : 'same';
}
