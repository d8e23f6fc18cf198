/**
 * The exhaust manifold as a hose feels it: up to 420 °C at idle with a lag of four minutes, cooling in fifteen [guess]. Rubber
 * over 135 °C (what service hoses are printed for, from memory) is spoilt by time: at 400 °C over it for half a minute
 * [guess] there is a hole.
 */
export const MANIFOLD = {
  runningK: 693,
  warmingS: 240,
  coolingS: 900,
  /** Too hot for a hand, and what a hose must not lie on. */
  hotK: 333,
  rubberK: 408,
  /** Over that, times seconds. */
  burnsAtKS: 8000,
  holeCdaM2: 0.4e-6,
} as const;
