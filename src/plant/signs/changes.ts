/**
 * What has changed between a sound car and a sick one in the same weather. Within these it counts as the same: high side
 * 3 %, low side 10 kPa, vent 1 K, superheat and subcooling 2 K, half a clutch cycle a minute, discharge 5 K, a step of 3 K
 * along a line, 15 % of the vents' air, 10 kPa at rest.
 */
import type { LoopResult } from '../runLoop';
import type { Found, SignChannel } from './signTable';

const STILL = {
  highShare: 0.03,
  lowPa: 10_000,
  ventK: 1,
  superheatK: 2,
  subcoolingK: 2,
  cyclesPerMin: 0.5,
  dischargeK: 5,
  lineStepK: 3,
  airflowShare: 0.15,
  staticPa: 10_000,
} as const;
/** The low side swings when it covers this much more than the sound car's does, Pa. */
const SWING_PA = 60_000;

export type AtRest = readonly [sound: LoopResult, sick: LoopResult] | null;

export function changes(
  sound: LoopResult,
  sick: LoopResult,
  atRest: AtRest,
): Readonly<Record<SignChannel, Found>> {
  const low = direction(sick.lowSideGaugePa.mean - sound.lowSideGaugePa.mean, STILL.lowPa);
  const swings = swing(sick) - swing(sound) > SWING_PA;
  return {
    low: low === 'same' && swings ? 'unsteady' : low,
    high: direction(sick.highSideGaugePa.mean / sound.highSideGaugePa.mean - 1, STILL.highShare),
    vent: direction(sick.ventK - sound.ventK, STILL.ventK),
    superheat: direction(sick.superheatK - sound.superheatK, STILL.superheatK),
    subcooling: direction(sick.subcoolingK - sound.subcoolingK, STILL.subcoolingK),
    cycling: direction(sick.cyclesPerMin - sound.cyclesPerMin, STILL.cyclesPerMin),
    discharge: direction(sick.dischargeK - sound.dischargeK, STILL.dischargeK),
    lineStep: direction(sick.lineStepK - sound.lineStepK, STILL.lineStepK),
    airflow: direction(sick.ventFlowKgPerS / sound.ventFlowKgPerS - 1, STILL.airflowShare),
    static: atRest
      ? direction(atRest[1].highSideGaugePa.last - atRest[0].highSideGaugePa.last, STILL.staticPa)
      : 'same',
  };
}

const swing = ({ lowSideGaugePa: { max, min } }: LoopResult): number => max - min;

function direction(change: number, still: number): Found {
  return change > still ? 'up' : change < -still ? 'down' : 'same';
}
