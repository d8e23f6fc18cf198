/**
 * Molar mass and saturation pressure of what may be mixed in, so that no tables of it are needed:
 *
 *   ln(p / pc) = (Tc / T) (a t + b t^1.5 + c t^2.5 + d t^4),   t = 1 - T / Tc      form: Wagner 1973
 *
 * a to d are our own fit to saturation lines of the equations of state the tables are made from, within 0.07 % from 215 K
 * to 2 K under the critical point. The hydrocarbon is 55 mol% propane and 45 isobutane [guess], each by Antoine's equation
 * with constants from memory (1 % off at 20 °C), added up.
 */
import { exp } from '../numerics/exp';
import type { ForeignId } from './foreign';

interface Line {
  readonly criticalK: number;
  readonly criticalPa: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

type Fitted = Exclude<ForeignId, 'hydrocarbon'>;
const LINES: Readonly<Record<Fitted, Line>> = {
  'R-134a': { criticalK: 374.212, criticalPa: 4059276, a: -7.62155, b: 1.66738, c: -2.15883, d: -2.43122 },
  'R-12': { criticalK: 385.12, criticalPa: 4136166, a: -6.91501, b: 1.58301, c: -1.46366, d: -1.79166 },
  'R-1234yf': { criticalK: 367.85, criticalPa: 3384374, a: -7.40072, b: 1.65888, c: -1.86518, d: -2.19193 },
};
export const FOREIGN_KG_PER_MOL: Readonly<Record<ForeignId, number>> = {
  'R-134a': 0.102032,
  'R-12': 0.120913,
  'R-1234yf': 0.114042,
  hydrocarbon: 0.0504,
};

const COLDEST_K = 150;
const MOST_OF_CRITICAL = 0.995;
const LN_10 = 2.302585092994046;
const PROPANE_SHARE = 0.55;
const PA_PER_BAR = 1e5;

/** Pa; held at the ends outside 150 K and 0.995 of the critical temperature. */
export function foreignSaturationPa(fluid: ForeignId, temperatureK: number): number {
  const warm = temperatureK < COLDEST_K ? COLDEST_K : temperatureK;
  if (fluid === 'hydrocarbon') {
    const propane = exp(LN_10 * (4.53678 - 1149.36 / (warm + 24.906)));
    const isobutane = exp(LN_10 * (4.3281 - 1132.108 / (warm + 0.918)));
    return PA_PER_BAR * (PROPANE_SHARE * propane + (1 - PROPANE_SHARE) * isobutane);
  }
  const { criticalK, criticalPa, a, b, c, d } = LINES[fluid];
  const most = MOST_OF_CRITICAL * criticalK;
  const t = warm > most ? most : warm;
  const tau = 1 - t / criticalK;
  const root = Math.sqrt(tau);
  const square = tau * tau;
  return (
    criticalPa * exp((criticalK / t) * (a * tau + b * tau * root + c * square * root + d * square * square))
  );
}
