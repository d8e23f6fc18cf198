/**
 * Ideal part of the reduced Helmholtz energy, less ln(delta), as a function of tau = Treducing/T alone:
 * value, tau times its first derivative, tau^2 times its second.
 */
import { exp } from '../../numerics/exp';
import { ln } from '../../numerics/ln';
import type { FluidData } from './fluidData';

export interface IdealPart {
  value: number;
  tauFirst: number;
  tauSecond: number;
}

export function evaluateIdeal(data: FluidData, tau: number, out: IdealPart): void {
  const { lead, logTau, power, einstein } = data.ideal;
  const logOfTau = ln(tau);
  const slope = lead[1] + data.referenceShift[1];
  let value = lead[0] + data.referenceShift[0] + slope * tau + logTau * logOfTau;
  let first = slope * tau + logTau;
  let second = -logTau;
  for (const [n, k] of power) {
    const term = n * exp(k * logOfTau);
    value += term;
    first += k * term;
    second += k * (k - 1) * term;
  }
  for (const [n, theta] of einstein) {
    const x = theta * tau;
    const e = exp(-x);
    const occupied = 1 - e;
    value += n * ln(occupied);
    first += (n * x * e) / occupied;
    second -= (n * x * x * e) / (occupied * occupied);
  }
  out.value = value;
  out.tauFirst = first;
  out.tauSecond = second;
}
