/**
 * The compressor as a link. Its body is the wall of the cell it draws from: friction and the gas's heat go there.
 * Standing still, its reeds leak back a little, and give way forwards where the low side is over the high one.
 */
import { airLeftKg, bookLink } from './bookFlow';
import { type NetworkCore, totalPressurePa } from './networkCore';
import { TOTAL } from './networkNumbers';
import type { CompressorLink } from './networkTypes';
import { compress } from './pistonCompressor';
import { airDensityAt, drawAt } from './portDraw';

/** Shares of what a cell holds that may be drawn in, or leak back, in one step. */
const MOST_TAKEN = 0.65;
const MOST_LEAKED = 0.1;
/** Friction, as a share of the work on the gas, that warms the body. */
const FRICTION_SHARE = 0.1;
/**
 * The discharge gas is never given out hotter than this, nor nearer than this to the end of its equation of state, K: the
 * hotter the gas, the more of its heat the head takes, which is what is over here.
 */
const MOST_DISCHARGE_K = 440;
const SHORT_OF_RANGE_K = 5;
/** Shut reeds give way forwards from this difference on, Pa, and pass so much, kg/s per Pa [guess]. */
const REED_GIVES_PA = 15_000;
const REED_PASSES_KG_PER_S_PA = 2e-8;

/**
 * Books flow and work of a step. `numbers.linkWork` holds shaft power, W; `linkFlow` what came through less what leaked
 * back; memory the liquid taken in since the start, kg, and what the cylinders drew in this step, kg/s.
 */
export function stepCompressor(core: NetworkCore, l: number, spec: CompressorLink, dtS: number): void {
  const { numbers, links, plan, draw, compressor: at } = core;
  const from = links.fromVessel[l];
  const to = links.toVessel[l];
  const cell = links.fromCell[l];
  drawAt(numbers, plan, from, cell, links.fromHeight[l], draw);
  at.revPerS = numbers.speed[l];
  at.strokeShare = numbers.stroke[l];
  at.suctionPa = totalPressurePa(core, from);
  at.dischargePa = totalPressurePa(core, to);
  at.suctionEnthalpyJPerKg = draw.enthalpyJPerKg;
  at.suctionTemperatureK = numbers.temperature[cell];
  at.liquidShare = draw.liquidShare;
  at.airShare = draw.airShare;
  at.suctionDensityKgPerM3 = gasDensity(core, from, cell);
  at.bodyTemperatureK = numbers.wall[cell];
  const most = Math.min(MOST_DISCHARGE_K, core.refrigerant.range.maxTemperatureK - SHORT_OF_RANGE_K);
  compress(spec, numbers.opening[l], at, plan.isobars[from], plan.isobars[to], most);
  const given = at.flowKgPerS * (1 - at.airShare);
  const refrigerant = Math.min(given, (MOST_TAKEN * draw.availableKg) / dtS);
  const air = Math.min(at.flowKgPerS * at.airShare, (MOST_TAKEN * airLeftKg(core, from)) / dtS);
  const scale = given > 0 ? refrigerant / given : 1;
  bookWork(core, l, cell, at.gasWorkW * scale, at.bodyHeatW * scale, refrigerant, air, dtS);
  numbers.linkFlow[l] = numbers.memory[3 * l + 1] = refrigerant;
  numbers.linkLiquid[l] = at.liquidKgPerS * scale;
  numbers.memory[3 * l] += numbers.linkLiquid[l] * dtS;
  const differencePa = at.dischargePa - at.suctionPa;
  if (differencePa > 0) leakBack(core, l, spec, differencePa, dtS);
  else if (differencePa < -REED_GIVES_PA) passForward(core, l, -differencePa - REED_GIVES_PA, dtS);
}

/** kg/m3 of the vapour (with its air) over a cell's liquid. */
function gasDensity(core: NetworkCore, vessel: number, cell: number): number {
  const { numbers, plan } = core;
  const iso = plan.isobars[vessel];
  const wet = numbers.enthalpy[cell] < iso.vapourEnthalpyJPerKg;
  const volume = wet ? iso.vapourVolumeM3PerKg : numbers.volume[cell];
  return 1 / volume + airDensityAt(numbers, vessel, numbers.temperature[cell]);
}

function bookWork(
  core: NetworkCore,
  l: number,
  cell: number,
  workW: number,
  bodyW: number,
  refrigerant: number,
  air: number,
  dtS: number,
): void {
  const { numbers, links } = core;
  const friction = FRICTION_SHARE * workW;
  const h = core.compressor.suctionEnthalpyJPerKg;
  const gained = workW - bodyW;
  bookLink(core, l, refrigerant * dtS, h, air * dtS);
  core.scratch.sourceHeat[links.toCell[l]] += gained * dtS;
  const rubbed = friction + numbers.shaftHeat[l];
  core.bodyHeat[cell] += (bodyW + rubbed) * dtS;
  numbers.totals[TOTAL.workInJ] += (workW + rubbed) * dtS;
  numbers.totals[TOTAL.turnedJ] += (workW + rubbed) * dtS;
  numbers.linkWork[l] = workW + friction;
}

function leakBack(
  core: NetworkCore,
  l: number,
  spec: CompressorLink,
  differencePa: number,
  dtS: number,
): void {
  const { numbers, links, plan, draw } = core;
  const to = links.toVessel[l];
  drawAt(numbers, plan, to, links.toCell[l], links.toHeight[l], draw);
  const m = (spec.reedLeakKgPerSPa + numbers.reedLeak[l]) * differencePa * dtS;
  const refrigerant = Math.min(m * (1 - draw.airShare), MOST_LEAKED * draw.availableKg);
  const air = Math.min(m * draw.airShare, MOST_LEAKED * airLeftKg(core, to));
  bookLink(core, l, -refrigerant, draw.enthalpyJPerKg, -air);
  numbers.linkFlow[l] -= refrigerant / dtS;
}

/** A low side that has warmed pushes gas through the reeds of a compressor, standing or not. */
function passForward(core: NetworkCore, l: number, differencePa: number, dtS: number): void {
  const { numbers, links, plan, draw } = core;
  const from = links.fromVessel[l];
  drawAt(numbers, plan, from, links.fromCell[l], links.fromHeight[l], draw);
  const m = REED_PASSES_KG_PER_S_PA * differencePa * dtS;
  const refrigerant = Math.min(m * (1 - draw.airShare), MOST_LEAKED * draw.availableKg);
  const air = Math.min(m * draw.airShare, MOST_LEAKED * airLeftKg(core, from));
  bookLink(core, l, refrigerant, draw.enthalpyJPerKg, air);
  numbers.linkFlow[l] += refrigerant / dtS;
}
