/** Orifice tube and expansion valve as links: read the inlet, ask the laws in series, book both ends. Enthalpy is kept. */
import { airLeftKg, bookLink } from './bookFlow';
import { saturationOf } from './drivenLinks';
import { expansionValveLift, LIFT_AT_STOP, SPRING_PA_PER_K } from './expansionValve';
import { followLine, isRestricted, restrictedFlow } from './lineRestriction';
import { openBesideIce, stepIce } from './meterIce';
import { meteringFlow } from './meteringFlow';
import { METER } from './meterNumbers';
import { type NetworkCore, totalPressurePa } from './networkCore';
import { METER_NUMBERS } from './networkNumbers';
import type { ExpansionValveLink, OrificeTubeLink } from './networkTypes';
import { drawAt } from './portDraw';
import { saturationPressureAt } from './saturationAt';
import { feelBulb } from './valveBulb';

const MOST_TAKEN = 0.5;

export function stepOrificeTube(core: NetworkCore, l: number, spec: OrificeTubeLink, dtS: number): void {
  meter(core, l, spec, core.numbers.opening[l], dtS);
}

/** Memory: bulb temperature (K), lift. Faults stop the needle at shares of its whole stroke. */
export function stepExpansionValve(
  core: NetworkCore,
  l: number,
  spec: ExpansionValveLink,
  dtS: number,
): void {
  const { numbers, links } = core;
  const at = METER_NUMBERS * l;
  const low = links.toVessel[l];
  const bulbK = feelBulb(core, l, spec, dtS);
  const bulb = core.bulbs[l];
  const bulbPa =
    numbers.meter[at + METER.bulbCharge] *
    saturationPressureAt(bulb.cursor, numbers.pressure[low], bulbK, bulb.mostPressurePa);
  const lift = expansionValveLift(
    bulbPa,
    totalPressurePa(core, low),
    spec.staticSuperheatK,
    spec.gradientK,
    spec.maximumOperatingPa,
    SPRING_PA_PER_K[spec.bulbFluid],
  );
  const least = LIFT_AT_STOP * numbers.meter[at + METER.leastLift];
  const most = LIFT_AT_STOP * numbers.meter[at + METER.mostLift];
  const stood = Math.max(least, Math.min(most, lift));
  numbers.memory[3 * l + 1] = stood;
  const share = spec.bleedShare + (1 - spec.bleedShare) * stood;
  meter(core, l, spec, share * numbers.opening[l], dtS);
}

/** Reads the inlet, finds the flow through line and device, and books it. */
function meter(
  core: NetworkCore,
  l: number,
  spec: OrificeTubeLink | ExpansionValveLink,
  openShare: number,
  dtS: number,
): void {
  const { numbers } = core;
  const forward = readInlet(core, l);
  const open = openShare * openBesideIce(core, l);
  let flow: number;
  if (isRestricted(numbers.meter, l)) {
    flow = restrictedFlow(core, l, spec, open, forward, dtS);
  } else {
    followLine(core, l);
    flow = meteringFlow(core, spec, open, numbers.meter[METER_NUMBERS * l + METER.area]);
  }
  pass(core, l, flow, forward, dtS);
  stepIce(core, l, dtS);
}

/** Fills `core.inlet` and `core.draw` from the end with the higher pressure; true if that is the link's `from`. */
function readInlet(core: NetworkCore, l: number): boolean {
  const { links, numbers, plan, inlet, draw } = core;
  const pFrom = totalPressurePa(core, links.fromVessel[l]);
  const pTo = totalPressurePa(core, links.toVessel[l]);
  const forward = pFrom >= pTo;
  const vessel = forward ? links.fromVessel[l] : links.toVessel[l];
  const cell = forward ? links.fromCell[l] : links.toCell[l];
  drawAt(numbers, plan, vessel, cell, forward ? links.fromHeight[l] : links.toHeight[l], draw);
  const iso = plan.isobars[vessel];
  const h = draw.enthalpyJPerKg;
  const liquid = h < iso.liquidEnthalpyJPerKg;
  inlet.pressurePa = forward ? pFrom : pTo;
  inlet.downstreamPa = forward ? pTo : pFrom;
  inlet.saturationPa = liquid ? saturationOf(core, vessel, cell) : numbers.pressure[vessel];
  inlet.subcoolingK = liquid ? iso.saturationTemperatureK - numbers.temperature[cell] : 0;
  inlet.quality = liquid ? 0 : h >= iso.vapourEnthalpyJPerKg ? 1 : iso.quality(h);
  inlet.liquidM3PerKg = iso.liquidVolumeM3PerKg;
  inlet.vapourM3PerKg = iso.vapourVolumeM3PerKg;
  inlet.volumeM3PerKg = 1 / draw.densityKgPerM3;
  return forward;
}

/** Books `flow` (kg/s, air included): no more than the inlet cell can give, nor than brings both sides level. */
function pass(core: NetworkCore, l: number, flow: number, forward: boolean, dtS: number): void {
  const { draw, numbers, links, inlet } = core;
  const m = flow * dtS;
  const give = 1 / (1 / numbers.compliance[links.fromVessel[l]] + 1 / numbers.compliance[links.toVessel[l]]);
  const level = (inlet.pressurePa - inlet.downstreamPa) * give;
  const share = 1 - draw.airShare;
  const refrigerant = Math.min(m * share, MOST_TAKEN * draw.availableKg, level);
  const giver = forward ? links.fromVessel[l] : links.toVessel[l];
  const air = Math.min(m * draw.airShare, MOST_TAKEN * airLeftKg(core, giver));
  const sign = forward ? 1 : -1;
  bookLink(core, l, sign * refrigerant, draw.enthalpyJPerKg, sign * air);
  numbers.linkFlow[l] = (sign * refrigerant) / dtS;
  numbers.linkLiquid[l] = share > 0 ? ((refrigerant / share) * draw.liquidShare) / dtS : 0;
}
