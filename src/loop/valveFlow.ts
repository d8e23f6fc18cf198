/**
 * Flow through a small opening (valve, valve core, hole), after the sizing equations of IEC 60534-2-1, from memory:
 *
 *   liquid:  m = CdA sqrt(2 rho dp),      dp up to FL2 (p1 - FF psat), FF = 0.96 - 0.28 sqrt(psat / pc)
 *   gas:     m = CdA Y sqrt(2 rho x p1),  x = dp / p1 up to xT, Y = 1 - x / (3 xT)
 *
 * A mixture is blended by the vapour's share of the volume. Near level pressures the root is made linear, so that the
 * integrator can come to rest.
 */
const PRESSURE_RECOVERY = 0.8;
const GAS_CHOKE = 0.5;
/** Pressure difference under which flow is linear in it: a share of the upstream pressure, at most this. */
const SEAT_PA = 2000;
const SEAT_SHARE = 0.05;

/**
 * kg/s for `areaM2` (discharge coefficient times area) from `upstreamPa` down to `downstreamPa`.
 * `saturationPa`: of the liquid at its own temperature.
 */
export function valveFlow(
  areaM2: number,
  upstreamPa: number,
  downstreamPa: number,
  densityKgPerM3: number,
  vapourVolumeShare: number,
  saturationPa: number,
  criticalPa: number,
): number {
  const drop = upstreamPa - downstreamPa;
  if (drop <= 0 || areaM2 <= 0) return 0;
  const share = SEAT_SHARE * upstreamPa;
  const seat = share < SEAT_PA ? share : SEAT_PA;
  if (drop < seat) {
    return (
      (areaM2 *
        rooted(upstreamPa, seat, densityKgPerM3, vapourVolumeShare, saturationPa, criticalPa) *
        drop) /
      seat
    );
  }
  return areaM2 * rooted(upstreamPa, drop, densityKgPerM3, vapourVolumeShare, saturationPa, criticalPa);
}

function rooted(
  p1: number,
  drop: number,
  rho: number,
  gas: number,
  saturationPa: number,
  criticalPa: number,
): number {
  let flow = 0;
  if (gas > 0) {
    const x = drop / p1 < GAS_CHOKE ? drop / p1 : GAS_CHOKE;
    flow += gas * (1 - x / (3 * GAS_CHOKE)) * Math.sqrt(2 * rho * x * p1);
  }
  if (gas < 1) {
    const ratio = 0.96 - 0.28 * Math.sqrt(Math.min(1, saturationPa / criticalPa));
    const most = PRESSURE_RECOVERY * (p1 - ratio * Math.min(p1, saturationPa));
    flow += (1 - gas) * Math.sqrt(2 * rho * (drop < most ? drop : most));
  }
  return flow;
}
