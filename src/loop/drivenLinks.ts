/**
 * Links that a pressure difference drives (valve, check valve, relief, regulator, pump), taken implicitly.
 *
 * At the start of a step each gets a gain, m = gain (p1 - p2), the chord of its flow law. The smaller of its two vessels
 * owns it: the owner's pressure search lets the flow follow the trial pressure, and the other end's give is taken into
 * the gain. So a link moves at most what brings its two pressures level, and a hose full of liquid stays quiet. What
 * boils in an owner while its link holds it level goes on giving: without that it would give every second step only.
 */

import { boreFlow } from './boreFlow';
import { type DriveScratch, type NetworkCore, totalPressurePa } from './networkCore';
import { TOTAL } from './networkNumbers';
import type { Bore, LinkSpec } from './networkTypes';
import { AIR_GAS_CONSTANT, airGasOf, drawAt, type PortDraw } from './portDraw';
import { saturationPressureAt } from './saturationAt';
import { valveFlow } from './valveFlow';

/** Share of what a cell holds that one link may take in a step. */
const MOST_TAKEN = 0.3;
/** The same where the owner itself gives: all its links together are held back while it solves. */
export const MOST_OF_OWN = 0.8;
const MOST_AIR = 0.2;
const UNLIMITED_KG = 1e9;
/** The give of an owner holds its links' as well, so what it gave would lift it by more than that says: this often [guess]. */
const GOES_ON = 4;

/** True for links this file looks after. */
export function isDriven(spec: LinkSpec): boolean {
  const { kind } = spec;
  return kind === 'valve' || kind === 'check' || kind === 'relief' || kind === 'regulator' || kind === 'pump';
}

/** The end of a link that solves for its flow: whichever is solved first, so the smaller; never the room. */
export function ownerOf(core: NetworkCore, from: number, to: number): number {
  if (from === 0) return to;
  if (to === 0) return from;
  const order = core.plan.solveOrder;
  return order.indexOf(to) < order.indexOf(from) ? to : from;
}

/** Splits `m` kg of link `l` into refrigerant and air, each no more than there is, into `moved` and `movedAir`. */
export function settleMoved(drive: DriveScratch, l: number, m: number): void {
  const air = m * drive.airShare[l];
  const refrigerant = m - air;
  const most = drive.most[l];
  const mostAir = drive.mostAir[l];
  drive.moved[l] = refrigerant > most ? most : refrigerant < -most ? -most : refrigerant;
  drive.movedAir[l] = air > mostAir ? mostAir : air < -mostAir ? -mostAir : air;
}

/** Reads both ends of link `l`, which moved `beforeKgPerS` in the last step, and prepares its gain for a step of `dtS`. */
export function prepareDriven(
  core: NetworkCore,
  l: number,
  spec: LinkSpec,
  beforeKgPerS: number,
  dtS: number,
): void {
  const { drive, links, numbers } = core;
  const from = links.fromVessel[l];
  const to = links.toVessel[l];
  const owner = drive.owner[l];
  drive.moved[l] = drive.movedAir[l] = 0;
  drive.sign[l] = 0;
  const behindPa = totalPressurePa(core, from);
  const pFrom = spec.kind === 'regulator' && behindPa > spec.setPa ? spec.setPa : behindPa;
  const pTo = spec.kind === 'pump' ? spec.ultimatePa : totalPressurePa(core, to);
  if (spec.kind === 'relief') latchRelief(core, l, spec.opensAbovePa, spec.shutsBelowPa, pFrom - pTo);
  const opening = spec.kind === 'relief' ? numbers.memory[3 * l] * numbers.opening[l] : numbers.opening[l];
  const goesOn = spec.kind === 'valve' && wouldGive(core, l, beforeKgPerS, pFrom - pTo, dtS);
  const forward = goesOn ? beforeKgPerS > 0 : pFrom >= pTo;
  if (opening <= 0 || pFrom === pTo || (!forward && spec.kind !== 'valve')) return;
  const flow = goesOn
    ? startFlow(core, l, spec, opening, forward, pTo, pFrom)
    : startFlow(core, l, spec, opening, forward, pFrom, pTo);
  // an owner follows its own pressure, which a regulator's far end never feels
  const high = forward ? (owner === from ? behindPa : pFrom) : pTo;
  const low = forward ? pTo : pFrom;
  if (flow <= 0) return;
  const far = owner === from ? to : from;
  let gain = flow / Math.abs(high - low);
  gain /=
    1 +
    gain *
      dtS *
      stiffness(
        core,
        far,
        owner === from ? links.toCell[l] : links.fromCell[l],
        l,
        owner === from ? pFrom : pTo,
      );
  drive.gain[l] = gain;
  drive.farPa[l] = owner === from ? pTo : pFrom;
  drive.sign[l] = (owner === from) === forward ? -1 : 1;
}

/**
 * Whether an owner that gave in the last step and now stands a little under the other end would, had it not given, stand
 * over it: what boils in it will lift it again within the step.
 */
function wouldGive(core: NetworkCore, l: number, beforeKgPerS: number, overPa: number, dtS: number): boolean {
  if (beforeKgPerS * overPa >= 0) return false;
  const { links, drive, numbers, plan } = core;
  const giver = beforeKgPerS > 0 ? links.fromVessel[l] : links.toVessel[l];
  if (giver !== drive.owner[l] || plan.cellCount[giver] !== 1) return false;
  return Math.abs(overPa) * numbers.compliance[giver] < GOES_ON * Math.abs(beforeKgPerS) * dtS;
}

/** kg/s at the start of the step, with the draw of the upstream port noted in `drive`. */
function startFlow(
  core: NetworkCore,
  l: number,
  spec: LinkSpec,
  opening: number,
  forward: boolean,
  pFrom: number,
  pTo: number,
): number {
  const { drive, links, draw, plan, numbers } = core;
  const vessel = forward ? links.fromVessel[l] : links.toVessel[l];
  const cell = forward ? links.fromCell[l] : links.toCell[l];
  drive.most[l] = drive.mostAir[l] = UNLIMITED_KG;
  if (vessel === 0) {
    draw.enthalpyJPerKg = 0;
    draw.densityKgPerM3 = pFrom / (AIR_GAS_CONSTANT * numbers.totals[TOTAL.roomTemperatureK]);
    if (!forward) draw.densityKgPerM3 = pTo / (AIR_GAS_CONSTANT * numbers.totals[TOTAL.roomTemperatureK]);
    draw.airShare = 1;
    draw.liquidShare = 0;
    draw.vapourVolumeShare = 1;
  } else {
    drawAt(numbers, plan, vessel, cell, forward ? links.fromHeight[l] : links.toHeight[l], draw);
    drive.most[l] = (vessel === drive.owner[l] ? MOST_OF_OWN : MOST_TAKEN) * draw.availableKg;
    drive.mostAir[l] = MOST_AIR * (numbers.extra[0][vessel] + numbers.steam[vessel]);
  }
  if (spec.kind === 'regulator') draw.densityKgPerM3 *= pFrom / totalPressurePa(core, vessel);
  drive.enthalpy[l] = draw.enthalpyJPerKg;
  drive.airShare[l] = draw.airShare;
  drive.airGas[l] = vessel === 0 ? 1 : airGasOf(numbers, vessel);
  drive.liquidShare[l] = draw.liquidShare;
  const up = forward ? pFrom : pTo;
  const down = forward ? pTo : pFrom;
  if (spec.kind === 'pump') {
    const swept = opening * spec.speedM3PerS * draw.densityKgPerM3 * (1 - down / up);
    return throughBore(spec.bore, swept, up, 0, draw);
  }
  if (!('areaM2' in spec) || spec.kind === 'expansionValve') return 0;
  const saturation = draw.liquidShare > 0 && vessel !== 0 ? saturationOf(core, vessel, cell) : 0;
  const area = spec.areaM2 * opening;
  const critical = core.refrigerant.criticalPressurePa;
  const { densityKgPerM3, vapourVolumeShare } = draw;
  const flow = valveFlow(area, up, down, densityKgPerM3, vapourVolumeShare, saturation, critical);
  return throughBore(spec.bore, flow, up, down, draw);
}

/** What is left of a flow of gas with a long bore in series; liquid is not slowed by it here. */
function throughBore(
  bore: Bore | undefined,
  flowKgPerS: number,
  upstreamPa: number,
  downstreamPa: number,
  draw: PortDraw,
): number {
  if (!bore || draw.liquidShare > 0 || flowKgPerS <= 0) return flowKgPerS;
  const most = boreFlow(bore, upstreamPa, downstreamPa, draw.densityKgPerM3);
  return (flowKgPerS * most) / (flowKgPerS + most);
}

/** Saturation pressure at the temperature of a cell's liquid, Pa, with what a foreign fluid adds to it. */
export function saturationOf(core: NetworkCore, vessel: number, cell: number): number {
  const { numbers, plan, probe } = core;
  const p = numbers.pressure[vessel];
  const factor = 1 + numbers.foreignFactor[vessel];
  if (numbers.enthalpy[cell] >= plan.isobars[vessel].liquidEnthalpyJPerKg) return p * factor;
  return saturationPressureAt(probe, p, numbers.temperature[cell], core.mostPressurePa) * factor;
}

/** Pa that one kg of link `l`'s flow adds to (or takes from) a vessel at its far end; 0 for the room. */
function stiffness(core: NetworkCore, vessel: number, cell: number, l: number, nearPa: number): number {
  if (vessel === 0) return 0;
  const { numbers, plan, drive, probe } = core;
  const air = drive.airShare[l];
  let give = numbers.compliance[vessel];
  if (plan.cellCount[vessel] === 1) {
    // chord to the near pressure: sees a can fill up, or a full hose begin to flash, within the step
    const p = numbers.pressure[vessel];
    const own = (nearPa - numbers.airPressure[vessel]) / (1 + numbers.foreignFactor[vessel]);
    const target = Math.min(Math.max(own, 20), core.mostPressurePa);
    if (Math.abs(target - p) > 1) {
      probe.setPressurePa(target);
      const level = plan.cellVolume[cell] / probe.volumeM3PerKg(numbers.enthalpy[cell]);
      const chord = Math.abs((level - numbers.mass[cell]) / (target - p));
      if (chord < give) give = chord;
    }
  }
  const refrigerant = ((1 - air) * (1 + numbers.foreignFactor[vessel])) / Math.max(give, 1e-16);
  return refrigerant + air * drive.airGas[l] * numbers.airStiffness[vessel];
}

function latchRelief(
  core: NetworkCore,
  l: number,
  opensPa: number,
  shutsPa: number,
  differencePa: number,
): void {
  const { memory } = core.numbers;
  if (differencePa > opensPa) memory[3 * l] = 1;
  else if (differencePa < shutsPa) memory[3 * l] = 0;
}
