/**
 * Gas through a long, thin bore: a service hose under vacuum. Sum of Poiseuille's viscous and Knudsen's molecular flow,
 * from textbooks of vacuum technique, from memory:
 *
 *   C = pi d^4 p / (128 eta L) + pi d^3 v / (12 L),   v = sqrt(8 p1 / (pi rho1)),   m = C (p1 - p2) rho1 / p1
 *
 * with p the mean pressure. Viscosity is air's at 20 degC, 1.8e-5 Pa s; refrigerant vapour has two thirds of it. A hose of
 * 1.5 m and 4.8 mm gives 4.8e-7 p + 9e-6 m3/s. It counts below about 1 kPa; over that the valves in series decide.
 */
import type { Bore } from './networkTypes';

const PI = 3.141592653589793;
const AIR_VISCOSITY_PA_S = 1.8e-5;

export function boreFlow(
  { diameterM: d, lengthM }: Bore,
  upstreamPa: number,
  downstreamPa: number,
  densityKgPerM3: number,
): number {
  const meanPa = 0.5 * (upstreamPa + downstreamPa);
  const speedMPerS = Math.sqrt((8 * upstreamPa) / (PI * densityKgPerM3));
  const viscous = (PI * d * d * d * d * meanPa) / (128 * AIR_VISCOSITY_PA_S * lengthM);
  const molecular = (PI * d * d * d * speedMPerS) / (12 * lengthM);
  return ((viscous + molecular) * (upstreamPa - downstreamPa) * densityKgPerM3) / upstreamPa;
}
