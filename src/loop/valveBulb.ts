/**
 * What an expansion valve's bulb feels. Between the evaporator's outlet and the bulb lie a few stretches of line, each
 * first-order, so a change arrives late, and later the less flows; then the bulb itself lags. A loose bulb feels the air
 * of the bay too, and the line only through strap and air, stretch by stretch more slowly.
 *
 *   dT_1/dt = (T_outlet - T_1) / (hold / flow + s root(loose)), ...     dT_bulb/dt = (felt - T_bulb) / lag
 *   felt = T_3 + g loose^2 (T_bay - T_3)
 *
 * Hold, g and s are [guess].
 */
import { METER } from './meterNumbers';
import type { NetworkCore } from './networkCore';
import { METER_NUMBERS } from './networkNumbers';
import type { ExpansionValveLink } from './networkTypes';

const STAGES = 3;
/** Fluid that passes while one stretch takes over a change, kg, and the longest that takes, s. */
const HOLD_KG = 0.006;
const LONGEST_S = 6;
/** Of a bulb that hangs quite free: the bay's share in what it feels, and how much later each stretch brings a change, s. */
const BAY_SHARE = 0.45;
const LATER_S = 20;

/** K, a step on; 0 in memory: not felt anything yet. */
export function feelBulb(core: NetworkCore, l: number, spec: ExpansionValveLink, dtS: number): number {
  const { numbers, links } = core;
  const { meter, memory } = numbers;
  const cell = links.bulbCell[l];
  const first = METER_NUMBERS * l + METER.bulbLine0K;
  const flow = Math.abs(numbers.flow[cell]);
  const loose = meter[METER_NUMBERS * l + METER.bulbLoose];
  const lag = (flow * LONGEST_S > HOLD_KG ? HOLD_KG / flow : LONGEST_S) + LATER_S * Math.sqrt(loose);
  const share = dtS / (lag + dtS);
  let felt = numbers.temperature[cell];
  for (let i = first; i < first + STAGES; i++) {
    meter[i] = meter[i] > 0 ? meter[i] + share * (felt - meter[i]) : felt;
    felt = meter[i];
  }
  if (loose > 0) felt += BAY_SHARE * loose * loose * (numbers.surroundings[cell] - felt);
  const at = 3 * l;
  memory[at] = memory[at] > 0 ? memory[at] + ((felt - memory[at]) * dtS) / (spec.bulbLagS + dtS) : felt;
  return memory[at];
}
