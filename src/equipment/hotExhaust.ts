/**
 * The exhaust manifold as a hose feels it: up to 420 °C at idle with a lag of two and a half minutes, cooling in fifteen [guess]. Rubber
 * over 135 °C (what service hoses are printed for, from memory) is spoilt by time: after 20 s at 400 K
 * over it [guess] there is a hole.
 */
export const MANIFOLD = {
  runningK: 693,
  warmingS: 150,
  coolingS: 900,
  /** Too hot for a hand, and what a hose must not lie on. */
  hotK: 333,
  rubberK: 408,
  /** Over that, times seconds. */
  burnsAtKS: 8000,
  holeCdaM2: 0.4e-6,
} as const;
