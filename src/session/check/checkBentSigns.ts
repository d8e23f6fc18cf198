/**
 * No scenario scores a sign that the model bends: where a hidden fault has one on this car in about this weather, no rule
 * that judges finding or diagnosis may look at the signals that tell it: what is there, what an instrument shows of it, and
 * what is reckoned from it.
 */
import type { Rule } from '../../../shared/schema/rubric';
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { BentSign } from '../../faults/bentSign';
import { bentSigns } from '../../faults/bentSigns';
import { parseQuantity } from '../../units/quantity';
import { word } from '../../words/words';
import type { Findings } from './findings';

const TELLS: Readonly<Record<string, readonly string[]>> = {
  low: [
    'lowSide.gaugePressurePa',
    'lowSide.pressurePa',
    'lowGauge.gaugePressurePa',
    'chargingGauge.gaugePressurePa',
    'point1.pressurePa',
    'point4.pressurePa',
  ],
  high: [
    'highSide.gaugePressurePa',
    'highSide.pressurePa',
    'highSide.maxGaugePressurePa',
    'highGauge.gaugePressurePa',
    'point2.pressurePa',
    'point3.pressurePa',
  ],
  vent: ['vent.temperatureK', 'airThermometer.temperatureK'],
  superheat: ['superheatK', 'lineThermometer.temperatureK'],
  subcooling: ['subcoolingK', 'point3.temperatureK', 'lineThermometer.temperatureK'],
  suction: ['point1.temperatureK', 'lineThermometer.temperatureK'],
  lineStep: ['lineThermometer.temperatureK'],
  cycling: ['clutch.cyclesPerMin'],
  discharge: ['compressor.dischargeTemperatureK', 'point2.temperatureK', 'lineThermometer.temperatureK'],
  airflow: ['vent.airflowRatio'],
};
const JUDGES: readonly string[] = ['finding', 'diagnosis'];
/** Half of the way between the weathers of the table. */
const NEAR_K = 5.5;
const ZERO_C = 273.15;

export function checkBentSigns(
  data: ScenarioData,
  rules: readonly Rule[],
  findings: Findings,
  bent: readonly BentSign[] = bentSigns,
): void {
  const { vehicle, weather, rubric } = data;
  const ambientC = parseQuantity(weather.temperature, 'temperature') - ZERO_C;
  const own = rubric.add ?? [];
  for (const { channel, fault } of bent.filter((sign) => isIn(sign, data, ambientC))) {
    for (const rule of rules.filter(({ domain }) => JUDGES.includes(domain))) {
      const signal = (TELLS[channel] ?? []).find((id) => looksAt(rule, id));
      if (signal === undefined) continue;
      const at = own.findIndex(({ id }) => id === rule.id);
      const path = at < 0 ? ['rubric', 'use'] : ['rubric', 'add', at];
      findings.error(path, 'SCN133', word('check.bentSign', { rule: rule.id, signal, fault, vehicle }));
    }
  }
}

const isIn = (sign: BentSign, { vehicle, faults }: ScenarioData, ambientC: number): boolean =>
  sign.vehicle === vehicle &&
  faults.some(({ fault }) => fault === sign.fault) &&
  sign.ambientsC.some((bentC) => Math.abs(bentC - ambientC) < NEAR_K);

/** In any condition of the rule, however deep. */
function looksAt(part: unknown, signal: string): boolean {
  if (typeof part !== 'object' || part === null) return false;
  if ('signal' in part && part.signal === signal) return true;
  return Object.values(part).some((inner) => looksAt(inner, signal));
}
