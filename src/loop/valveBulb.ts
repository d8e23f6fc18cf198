/**
 * What an expansion valve's bulb feels. Between the evaporator's outlet and the bulb lie a few stretches of line, each
 * first-order, so a change arrives late, and later the less flows; then the bulb itself lags. A loose bulb feels the air
 * of the bay too, and both more slowly.
 *
 *   dT_1/dt = (T_outlet - T_1) flow / hold, ...     dT_bulb/dt = ((1 - g) T_3 + g T_bay - T_bulb) / (lag (1 + k g))
 *
 * Hold, g and k are [guess].
 */
import { METER } from './meterNumbers';
import type { NetworkCore } from './networkCore';
import { METER_NUMBERS } from './networkNumbers';
import type { ExpansionValveLink } from './networkTypes';

const STAGES = 3;
/** Fluid that passes while one stretch takes over a change, kg, and the longest that takes, s. */
const HOLD_KG = 0.006;
const LONGEST_S = 6;
/** Of what a bulb that hangs quite free feels: the bay's share, and how many times as slow it is. */
const BAY_SHARE = 0.3;
const SLOWER = 6;

/** K, a step on; 0 in memory: not felt anything yet. */
export function feelBulb(core: NetworkCore, l: number, spec: ExpansionValveLink, dtS: number): number {
  const { numbers, links } = core;
  const { meter, memory } = numbers;
  const cell = links.bulbCell[l];
  const first = METER_NUMBERS * l + METER.bulbLine0K;
  const flow = Math.abs(numbers.flow[cell]);
  const lag = flow * LONGEST_S > HOLD_KG ? HOLD_KG / flow : LONGEST_S;
  const share = dtS / (lag + dtS);
  let felt = numbers.temperature[cell];
  for (let i = first; i < first + STAGES; i++) {
    meter[i] = meter[i] > 0 ? meter[i] + share * (felt - meter[i]) : felt;
    felt = meter[i];
  }
  const loose = meter[METER_NUMBERS * l + METER.bulbLoose];
  if (loose > 0) felt += loose * BAY_SHARE * (numbers.surroundings[cell] - felt);
  const bulbLag = spec.bulbLagS * (1 + SLOWER * loose);
  const at = 3 * l;
  memory[at] = memory[at] > 0 ? memory[at] + ((felt - memory[at]) * dtS) / (bulbLag + dtS) : felt;
  return memory[at];
}
