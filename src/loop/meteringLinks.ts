/** Orifice tube and expansion valve as links: read the inlet, ask the law, book both ends. Throttling keeps enthalpy. */
import { airLeftKg, bookLink } from './bookFlow';
import { saturationOf } from './drivenLinks';
import { expansionValveFlow, expansionValveLift, SPRING_PA_PER_K } from './expansionValve';
import { type NetworkCore, totalPressurePa } from './networkCore';
import type { ExpansionValveLink, OrificeTubeLink } from './networkTypes';
import { orificeTubeFlow } from './orificeTube';
import { drawAt } from './portDraw';
import { saturationPressureAt } from './saturationAt';

const MOST_TAKEN = 0.5;

export function stepOrificeTube(core: NetworkCore, l: number, spec: OrificeTubeLink, dtS: number): void {
  const forward = readInlet(core, l);
  const { refrigerant, inlet, numbers } = core;
  const critical = refrigerant.criticalPressurePa;
  const open = numbers.opening[l];
  const flow = orificeTubeFlow(
    spec.boreM,
    spec.lengthM,
    open,
    inlet,
    critical,
    refrigerant.criticalTemperatureK,
  );
  pass(core, l, flow, forward, dtS);
}

/** Memory: bulb temperature (K), lift. */
export function stepExpansionValve(
  core: NetworkCore,
  l: number,
  spec: ExpansionValveLink,
  dtS: number,
): void {
  const { numbers, links, inlet } = core;
  const low = links.toVessel[l];
  const felt = numbers.temperature[links.bulbCell[l]];
  const at = 3 * l;
  const bulbK =
    numbers.memory[at] > 0
      ? numbers.memory[at] + ((felt - numbers.memory[at]) * dtS) / (spec.bulbLagS + dtS)
      : felt;
  numbers.memory[at] = bulbK;
  const bulb = core.bulbs[l];
  const bulbPa = saturationPressureAt(bulb.cursor, numbers.pressure[low], bulbK, bulb.mostPressurePa);
  const lift = expansionValveLift(
    bulbPa,
    totalPressurePa(core, low),
    spec.staticSuperheatK,
    spec.gradientK,
    spec.maximumOperatingPa,
    SPRING_PA_PER_K[spec.bulbFluid],
  );
  numbers.memory[at + 1] = lift;
  const forward = readInlet(core, l);
  const share = spec.bleedShare + (1 - spec.bleedShare) * lift;
  const flow = expansionValveFlow(spec.areaM2 * share * numbers.opening[l], inlet);
  pass(core, l, flow, forward, dtS);
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
