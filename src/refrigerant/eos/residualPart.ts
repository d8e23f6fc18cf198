/**
 * Residual part of the reduced Helmholtz energy:
 *
 *   sum n delta^d tau^t exp(-delta^l)  +  sum n delta^d tau^t exp(-eta (delta - epsilon)^2 - beta (tau - gamma)^2)
 *
 * with the derivatives delta d/ddelta, delta^2 d2/ddelta2, tau d/dtau, tau^2 d2/dtau2, delta tau d2/ddelta dtau.
 * The factors that hold tau are kept between calls, so a search for density at one temperature is cheap.
 */
import { exp } from '../../numerics/exp';
import { ln } from '../../numerics/ln';
import type { FluidData } from './fluidData';

export interface ResidualPart {
  setTau(tau: number): void;
  evaluate(delta: number): void;
  value: number;
  deltaFirst: number;
  deltaSecond: number;
  tauFirst: number;
  tauSecond: number;
  mixed: number;
}

const HIGHEST_POWER = 16;
const EXPONENTIALS = 5;

export function createResidual(data: FluidData): ResidualPart {
  const { power, gauss } = data.residual;
  const powers = power.length;
  const count = powers + gauss.length;
  const factor = new Float64Array(count);
  const tauFirst = new Float64Array(count);
  const tauSecond = new Float64Array(count);
  const deltaPower = new Float64Array(HIGHEST_POWER);
  const decay = new Float64Array(EXPONENTIALS);

  const part: ResidualPart = {
    value: 0,
    deltaFirst: 0,
    deltaSecond: 0,
    tauFirst: 0,
    tauSecond: 0,
    mixed: 0,
    setTau(tau) {
      const logOfTau = ln(tau);
      for (let i = 0; i < powers; i++) {
        const [n, , t] = power[i];
        factor[i] = n * exp(t * logOfTau);
        tauFirst[i] = t;
        tauSecond[i] = t * (t - 1);
      }
      for (let i = 0; i < gauss.length; i++) {
        const [n, , t, , , beta, gamma] = gauss[i];
        const offset = tau - gamma;
        const k = t - 2 * beta * tau * offset;
        factor[powers + i] = n * exp(t * logOfTau - beta * offset * offset);
        tauFirst[powers + i] = k;
        tauSecond[powers + i] = k * k - t - 2 * beta * tau * tau;
      }
    },
    evaluate(delta) {
      deltaPower[0] = 1;
      for (let i = 1; i < HIGHEST_POWER; i++) deltaPower[i] = deltaPower[i - 1] * delta;
      decay[0] = 1;
      for (let l = 1; l < EXPONENTIALS; l++) decay[l] = exp(-deltaPower[l]);
      part.value = part.deltaFirst = part.deltaSecond = part.tauFirst = part.tauSecond = part.mixed = 0;
      for (let i = 0; i < powers; i++) {
        const [, d, , l] = power[i];
        const inExponent = l === 0 ? 0 : l * deltaPower[l];
        const k = d - inExponent;
        addTerm(i, factor[i] * deltaPower[d] * decay[l], k, k * (k - 1) - l * inExponent);
      }
      for (let i = 0; i < gauss.length; i++) {
        const [, d, , eta, epsilon] = gauss[i];
        const offset = delta - epsilon;
        const k = d - 2 * eta * delta * offset;
        const term = factor[powers + i] * deltaPower[d] * exp(-eta * offset * offset);
        addTerm(powers + i, term, k, k * k - d - 2 * eta * delta * delta);
      }
    },
  };

  function addTerm(i: number, term: number, first: number, second: number): void {
    part.value += term;
    part.deltaFirst += term * first;
    part.deltaSecond += term * second;
    part.tauFirst += term * tauFirst[i];
    part.tauSecond += term * tauSecond[i];
    part.mixed += term * first * tauFirst[i];
  }
  return part;
}
