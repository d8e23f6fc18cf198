/**
 * Ice in a metering device. Water over what dissolves at the outlet's temperature falls out there; below freezing a share
 * of it sticks and chokes the area. Once the device's body is well above freezing the plug lets go and is swept away.
 *
 *   d ice/dt = stick m over(T_out)  where T_out < 0 °C;   thawing, from T_body > 3 °C until it is gone: -ice / 8 s
 *   open = 1 / (1 + (ice / half)^4)
 *
 * The body follows what streams out and the line before it, so choked it warms, comes free and cools again: cooling comes
 * and goes (vehicle service texts). Ice is water of the vessel behind the device; like what a desiccant holds it neither
 * flows nor boils, and is counted there. Its heat is too little to book. All figures [guess].
 */
import { METER } from './meterNumbers';
import { WATER } from './moveSpecies';
import type { NetworkCore } from './networkCore';
import { METER_NUMBERS } from './networkNumbers';
import { freeWaterShare } from './waterInRefrigerant';

const FREEZING_K = 273.15;
const THAWS_K = 276.15;
const THAW_S = 8;
const GONE_KG = 1e-7;
const STICKS = 0.01;
const HALVES_KG = 1e-5;
/** Flow that brings the body to its own temperature by 1/e, kg; and s in which it takes the line's. */
const BODY_KG = 0.15;
const LINE_S = 150;

/** Share of the area that ice leaves open. */
export function openBesideIce(core: NetworkCore, l: number): number {
  const ice = core.numbers.meter[METER_NUMBERS * l + METER.iceKg];
  if (ice <= 0) return 1;
  const square = (ice * ice) / (HALVES_KG * HALVES_KG);
  return 1 / (1 + square * square);
}

/** Freezes and melts, with what went through in this step: kg/s of refrigerant, negative against the link. */
export function stepIce(core: NetworkCore, l: number, dtS: number): void {
  const { numbers: n, links, plan } = core;
  const at = METER_NUMBERS * l;
  const from = links.fromVessel[l];
  const to = links.toVessel[l];
  // a drier changed for new takes away what was counted as held
  const ice = Math.min(n.meter[at + METER.iceKg], n.adsorbed[to]);
  if (ice <= 0 && n.extra[WATER - 1][from] <= 0) return;
  const outletK = plan.isobars[to].saturationTemperatureK;
  const lineK = n.wall[links.fromCell[l]];
  const flow = n.linkFlow[l] > 0 ? n.linkFlow[l] : 0;
  const body = bodyK(n.meter[at + METER.bodyK], flow, outletK, lineK, dtS);
  n.meter[at + METER.bodyK] = body;
  if (body > THAWS_K) n.meter[at + METER.thawing] = 1;
  let now = ice;
  if (n.meter[at + METER.thawing] === 1) now = ice / (1 + dtS / THAW_S);
  else if (outletK < FREEZING_K) now += STICKS * flow * dtS * freeWaterShare(core, from, outletK);
  if (now < GONE_KG && now <= ice) now = n.meter[at + METER.thawing] = 0;
  n.meter[at + METER.iceKg] = now;
  n.adsorbed[to] += now - ice;
}

function bodyK(before: number, flow: number, outletK: number, lineK: number, dtS: number): number {
  if (!(before > 0)) return lineK;
  const wet = flow / BODY_KG;
  return (before + dtS * (wet * outletK + lineK / LINE_S)) / (1 + dtS * (wet + 1 / LINE_S));
}
