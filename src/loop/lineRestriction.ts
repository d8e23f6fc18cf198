/**
 * A restriction in the drier or the liquid line, in series with the metering device behind it: both pass the same flow,
 * and the pressure between them follows from that, quasi-steady.
 *
 *   restriction(p_up -> p) = device(p -> p_down),   h kept
 *
 * The restriction is a valve (valveFlow.ts, so it chokes as liquid flashes in it); two of them add as 1/A^2. Its flow only
 * falls as p rises and the device's is 0 at p_down, so there is a root between; it is found by false position (Illinois)
 * with a bounded number of rounds, from where it was a step ago. Against the flow the tighter of the two decides.
 * Behind a restriction the pipe is as cold as what has flashed there: that is the cold spot. Its wall follows [guess].
 */

import { meteringFlow } from './meteringFlow';
import { METER } from './meterNumbers';
import type { NetworkCore } from './networkCore';
import { METER_NUMBERS } from './networkNumbers';
import type { ExpansionValveLink, OrificeTubeLink } from './networkTypes';
import { valveFlow } from './valveFlow';

const ROUNDS = 24;
const CLOSE = 1e-4;
/** Fluid that brings the pipe's wall to its own temperature by 1/e, kg; and s in which standing it takes the line's [guess]. */
const WALL_KG = 0.1;
const STANDING_S = 90;
const LEAST_PA = 0.05;

/** kg/s, air included, with `core.inlet` and `core.draw` read at the higher end. Leaves pressure and walls in `meter`. */
export function restrictedFlow(
  core: NetworkCore,
  l: number,
  spec: OrificeTubeLink | ExpansionValveLink,
  openShare: number,
  forward: boolean,
  dtS: number,
): number {
  const { upstream: up } = core;
  const { meter } = core.numbers;
  const at = METER_NUMBERS * l;
  const drier = inverseSquare(meter[at + METER.drierAreaM2]);
  const line = inverseSquare(meter[at + METER.lineAreaM2]);
  const area = 1 / Math.sqrt(drier + line);
  keepUpstream(core, l, forward);
  let flow: number;
  if (forward) {
    flow = solveBetween(core, l, spec, openShare, area);
  } else {
    flow = Math.min(
      meteringFlow(core, spec, openShare, meter[at + METER.area]),
      through(core, area, up.downstreamPa),
    );
    meter[at + METER.beforePa] = up.downstreamPa;
  }
  const before = meter[at + METER.beforePa];
  const wall = core.numbers.wall[core.links.fromCell[l]];
  const moved = forward ? flow : 0;
  const drierPa = up.pressurePa - (drier / (drier + line)) * (up.pressurePa - before);
  const behindDrier = drier > 0 ? wall - coolingK(core, l, drierPa) : wall;
  warm(meter, at + METER.behindDrierK, moved, behindDrier, wall, dtS);
  warm(meter, at + METER.lineEndK, moved, wall - coolingK(core, l, before), wall, dtS);
  core.inlet.pressurePa = up.pressurePa;
  return flow;
}

/** True where something stands in the way. */
export function isRestricted(meter: Float64Array, l: number): boolean {
  const at = METER_NUMBERS * l;
  return meter[at + METER.drierAreaM2] > 0 || meter[at + METER.lineAreaM2] > 0;
}

/** With nothing in the way the line is of one pressure and one temperature. */
export function followLine(core: NetworkCore, l: number): void {
  const { meter, wall } = core.numbers;
  const at = METER_NUMBERS * l;
  meter[at + METER.beforePa] = core.inlet.pressurePa;
  meter[at + METER.behindDrierK] = meter[at + METER.lineEndK] = wall[core.links.fromCell[l]];
}

function inverseSquare(areaM2: number): number {
  return areaM2 > 0 ? 1 / (areaM2 * areaM2) : 0;
}

function keepUpstream(core: NetworkCore, l: number, forward: boolean): void {
  const { inlet, draw, numbers, links, upstream: up } = core;
  const vessel = forward ? links.fromVessel[l] : links.toVessel[l];
  up.pressurePa = inlet.pressurePa;
  up.downstreamPa = inlet.downstreamPa;
  up.saturationPa = inlet.saturationPa;
  up.quality = inlet.quality;
  up.volumeM3PerKg = inlet.volumeM3PerKg;
  up.gas = draw.vapourVolumeShare;
  up.airPart = up.pressurePa > 0 ? numbers.airPressure[vessel] / up.pressurePa : 0;
}

function through(core: NetworkCore, areaM2: number, downPa: number): number {
  const { upstream: up } = core;
  const critical = core.refrigerant.criticalPressurePa;
  return valveFlow(areaM2, up.pressurePa, downPa, 1 / up.volumeM3PerKg, up.gas, up.saturationPa, critical);
}

/** Restriction less device at a pressure between, kg/s; moves `core.inlet` there. */
function excess(
  core: NetworkCore,
  l: number,
  spec: OrificeTubeLink | ExpansionValveLink,
  openShare: number,
  areaM2: number,
  p: number,
): number {
  moveInlet(core, p);
  const area = core.numbers.meter[METER_NUMBERS * l + METER.area];
  return through(core, areaM2, p) - meteringFlow(core, spec, openShare, area);
}

function solveBetween(
  core: NetworkCore,
  l: number,
  spec: OrificeTubeLink | ExpansionValveLink,
  openShare: number,
  areaM2: number,
): number {
  const { upstream: up } = core;
  const { meter } = core.numbers;
  const at = METER_NUMBERS * l + METER.beforePa;
  let low = up.downstreamPa;
  let high = up.pressurePa;
  let atLow = through(core, areaM2, low);
  let atHigh = excess(core, l, spec, openShare, areaM2, high);
  const close = CLOSE * atLow;
  if (atLow <= 0 || atHigh >= 0) {
    meter[at] = high;
    return 0;
  }
  let p = meter[at] > low && meter[at] < high ? meter[at] : low - (atLow * (high - low)) / (atHigh - atLow);
  let side = 0;
  for (let i = 0; i < ROUNDS; i++) {
    const found = excess(core, l, spec, openShare, areaM2, p);
    if (found <= close && found >= -close) break;
    if (found > 0) {
      if (side > 0) atHigh *= 0.5;
      side = 1;
      low = p;
      atLow = found;
    } else {
      if (side < 0) atLow *= 0.5;
      side = -1;
      high = p;
      atHigh = found;
    }
    p = low - (atLow * (high - low)) / (atHigh - atLow);
  }
  meter[at] = p;
  return through(core, areaM2, p);
}

/** `core.inlet` as it would be at a lower pressure with the same enthalpy; without rising it stays what it was. */
function moveInlet(core: NetworkCore, p: number): void {
  const { inlet, draw, probe, upstream: up } = core;
  inlet.pressurePa = p;
  inlet.downstreamPa = up.downstreamPa;
  if (up.quality >= 1) {
    // gas: as an ideal one
    inlet.saturationPa = (up.saturationPa * p) / up.pressurePa;
    inlet.volumeM3PerKg = (up.volumeM3PerKg * up.pressurePa) / p;
    return;
  }
  const h = draw.enthalpyJPerKg;
  const partial = p * (1 - up.airPart * up.gas);
  probe.setPressurePa(partial > LEAST_PA ? partial : LEAST_PA);
  inlet.liquidM3PerKg = probe.liquidVolumeM3PerKg;
  inlet.vapourM3PerKg = probe.vapourVolumeM3PerKg;
  if (h < probe.liquidEnthalpyJPerKg) {
    inlet.quality = 0;
    inlet.saturationPa = up.saturationPa < p ? up.saturationPa : p;
    inlet.subcoolingK = probe.saturationTemperatureK - probe.temperatureK(h);
    inlet.volumeM3PerKg = up.quality > 0 ? probe.liquidVolumeM3PerKg : up.volumeM3PerKg;
    return;
  }
  const x = probe.quality(h);
  inlet.quality = x < 1 ? x : 1;
  inlet.saturationPa = partial;
  inlet.subcoolingK = 0;
  inlet.volumeM3PerKg =
    (1 - draw.airShare) * (inlet.liquidM3PerKg + inlet.quality * (inlet.vapourM3PerKg - inlet.liquidM3PerKg));
}

/** How much colder what has come down to a pressure is: as it boils, or not at all. */
function coolingK(core: NetworkCore, l: number, p: number): number {
  const { draw, probe, numbers, links, upstream: up } = core;
  if (up.quality >= 1) return 0;
  const partial = p * (1 - up.airPart * up.gas);
  probe.setPressurePa(partial > LEAST_PA ? partial : LEAST_PA);
  if (draw.enthalpyJPerKg < probe.liquidEnthalpyJPerKg) return 0;
  const fall = numbers.temperature[links.fromCell[l]] - probe.saturationTemperatureK;
  return fall > 0 ? fall : 0;
}

function warm(
  meter: Float64Array,
  at: number,
  flowKgPerS: number,
  fluidK: number,
  standingK: number,
  dtS: number,
): void {
  if (!(meter[at] > 0)) meter[at] = standingK;
  const wet = flowKgPerS / WALL_KG;
  const still = 1 / STANDING_S;
  meter[at] = (meter[at] + dtS * (wet * fluidK + still * standingK)) / (1 + dtS * (wet + still));
}
