/**
 * Most that a wide, short passage lets through while liquid flashes in it: homogeneous and in equilibrium, choked.
 *
 *   G = sqrt(G_s^2 + 2 (p - p_s) / v_l),   G_s = sqrt(p_s / v) (0.6055 + 0.1356 ln w - 0.0131 ln^2 w) / sqrt(w)
 *   w = x v_v / v + c T / (v p_s k^2),     k = d ln p / d ln T of saturation, 7.5
 *
 * The omega method (Leung 1986, coefficients from memory); T by p = pc exp(7 (1 - Tc / T)), good to a kelvin or two; by
 * that line k is 7 Tc / T: for R-134a 8.1 at 50 degC, 7.5 at 76 degC, 7 where it ends; one k for all, and c, [guess].
 */
import { ln } from '../numerics/ln';
import type { MeteringInlet } from './meteringInlet';

const LIQUID_J_PER_KG_K = 1450;
const STEEPNESS = 7.5;
const CURVE = 7;
const LEAST_OMEGA = 1;

/** kg/(s m2). */
export function homogeneousFlux(inlet: MeteringInlet, criticalPa: number, criticalK: number): number {
  const { pressurePa, saturationPa, volumeM3PerKg, liquidM3PerKg, vapourM3PerKg, quality } = inlet;
  const boiling = saturationPa < pressurePa && quality <= 0 ? saturationPa : pressurePa;
  const volume = quality > 0 ? volumeM3PerKg : liquidM3PerKg;
  const nearness = boiling < criticalPa ? ln(boiling / criticalPa) : 0;
  const boilingK = criticalK / (1 - nearness / CURVE);
  const gas = quality > 0 ? (quality * vapourM3PerKg) / volume : 0;
  const omega =
    (gas < 1 ? gas : 1) +
    ((1 - quality) * LIQUID_J_PER_KG_K * boilingK) / (volume * boiling * STEEPNESS * STEEPNESS);
  const lnOmega = ln(omega > LEAST_OMEGA ? omega : LEAST_OMEGA);
  const shape = 0.6055 + 0.1356 * lnOmega - 0.0131 * lnOmega * lnOmega;
  const flashing = (boiling * shape * shape) / (volume * (omega > LEAST_OMEGA ? omega : LEAST_OMEGA));
  return Math.sqrt(flashing + (2 * (pressurePa - boiling)) / liquidM3PerKg);
}
