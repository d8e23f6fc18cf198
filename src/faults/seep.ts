/**
 * Seepage: a way out so fine that it is told by the grams it lets out in a year, and its area.
 *
 *   area = rate / G,   G = Y sqrt(2 rho x p),  x = 0.5, Y = 2/3
 *
 * G is the choked flow of R-134a vapour resting at 20 °C (571.7 kPa, 27.8 kg/m3) by the law of a small opening. A real
 * seal is a long, rough gap whose flow goes with the squares of the pressures; this one goes about with the pressure.
 *
 * Usual rates: shaft seal 10 to 30 g a year, hoses 10 to 20 g together, an o-ring 2 to 3 g (Schwarz, emission of R-134a
 * from mobile air conditioning, as a trade text gives it); makers' figures for whole new cars mean 15 g, 2.4 % of the
 * charge (a state pollution agency's list under its 2007 law); older heavy vehicles 306 g (a state air board's study).
 */
const YEAR_S = 31_557_600;
const CHOKED_KG_PER_S_M2 = 2658;

/** Worst seepage of a kind, kg/s, at a severity: grows with its square, so that a mild one is a sound seal's. */
export function seepRate(worstKgPerYear: number, severity: number): number {
  return (worstKgPerYear * severity * severity) / YEAR_S;
}

/** Discharge coefficient times area, m2, that lets out `rateKgPerS`. */
export const seepArea = (rateKgPerS: number): number => rateKgPerS / CHOKED_KG_PER_S_M2;
