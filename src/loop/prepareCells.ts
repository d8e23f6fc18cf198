/**
 * Read once at the start of a step, for every cell: conductance to the wall and slip between the phases.
 *
 * Conductance blends liquid, boiling and vapour figures by quality and follows the flow (single phase ~ m^0.8, after
 * Dittus & Boelter; two-phase ~ m^0.4), with floors for still fluid; exponents are 13/16 and 3/8, which square roots give.
 * Slip is Zivi's (rho_l / rho_v)^(1/3) (exponent 21/64) when refrigerant flows; as it stands still it goes over to the
 * cell's own figure. Air blankets the wall: 1 / (1 + 3 y_air) [guess],
 * and oil over what belongs on it: 1 / (1 + 0.6 over) [guess].
 */
import type { NetworkCore } from './networkCore';

const PER_NOMINAL = 1 / 0.04;
/** Floors, and the flow ratios at which the powers come to them. */
const STILL_SINGLE = 0.12;
const STILL_SINGLE_RATIO = 0.07357;
const STILL_TWO_PHASE = 0.3;
const STILL_TWO_PHASE_RATIO = 0.040337;
const MOST_FLOW_FACTOR = 3;
/** Quality over which a wetted wall begins to dry out. */
const DRY_OUT = 0.86;
/** The same, as enthalpy over the latent heat, for a wall on which vapour condenses. */
const DRY_SUPERHEAT = 1.12;
const WET_IN = 0.02;
/** Flow under which the phases part. */
const PARTING_KG_PER_S = 0.007;
const PER_PARTING = 1 / PARTING_KG_PER_S;
const AIR_BLANKET = 3;
const OIL_FILM = 0.6;
const SHAKEN_WETTING = 2;

export function prepareCells(core: NetworkCore, vessel: number, dtS: number): void {
  const { numbers: n, plan, scratch } = core;
  const { enthalpy, flow, wall } = n;
  const { slipAtRest, isPot, boiling, vapourSide, liquidSide } = plan;
  const { sourceMass, sourceHeat, wallGain, slip } = scratch;
  const iso = plan.isobars[vessel];
  const hl = iso.liquidEnthalpyJPerKg;
  const perLatent = 1 / (iso.vapourEnthalpyJPerKg - hl);
  const saturationK = iso.saturationTemperatureK;
  const zivi = nearCubeRoot(iso.vapourVolumeM3PerKg / iso.liquidVolumeM3PerKg);
  const airShare =
    n.airPressure[vessel] > 0 ? n.airPressure[vessel] / (n.airPressure[vessel] + n.pressure[vessel]) : 0;
  const wetting =
    (dtS * (1 + SHAKEN_WETTING * n.shaking[vessel])) / ((1 + AIR_BLANKET * airShare) * oilFilm(core, vessel));
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  for (let c = first; c < end; c++) {
    sourceMass[c] = 0;
    sourceHeat[c] = 0;
    const streams = flow[c] < 0 ? -flow[c] : flow[c];
    const share = streams < PARTING_KG_PER_S ? streams * PER_PARTING : 1;
    const S = slipAtRest[c] + (zivi - slipAtRest[c]) * share;
    slip[c] = S;
    // by Math.min it stays a bare double; chosen by ? it gets a box for every cell
    const r = Math.min(streams * PER_NOMINAL, MOST_FLOW_FACTOR);
    const x = (enthalpy[c] - hl) * perLatent;
    // a wall colder than saturation is wetted even by vapour that is still a little superheated
    const cold = wall[c] < saturationK;
    const dryAt = cold ? DRY_SUPERHEAT : 1;
    const wetted = x > -WET_IN && x < dryAt;
    const two = wetted ? twoPhase(r, isPot[c]) * boiling[c] * wetting : 0;
    const dryFrom = cold ? 1 : DRY_OUT;
    const xIn = x > 0 ? x : 0;
    const parted = isPot[c] === 1 || x >= 1;
    const gas = parted ? xIn : S * xIn;
    const all = parted ? 1 : 1 - xIn + gas;
    const dries = gas > dryFrom * all;
    if (wetted && !dries && x >= WET_IN) {
      wallGain[c] = two;
      continue;
    }
    const vapour = x >= dryAt || (wetted && dries);
    const alone = dtS * singlePhase(r, isPot[c]) * (vapour ? vapourSide[c] : liquidSide[c]);
    if (!wetted) wallGain[c] = alone;
    else if (dries) wallGain[c] = two + ((gas / all - dryFrom) / (dryAt - dryFrom)) * (alone - two);
    else wallGain[c] = alone + (x + WET_IN) * (0.5 / WET_IN) * (two - alone);
  }
}

/** 1 with as much oil on the walls as belongs there, more with more. */
function oilFilm({ numbers: n, plan }: NetworkCore, vessel: number): number {
  const belongs = plan.filmOil[vessel];
  if (belongs <= 0) return 1;
  const over = (n.extra[3][vessel] - n.sump[vessel]) / belongs - 1;
  return over > 0 ? 1 + OIL_FILM * over : 1;
}

/** r^(13/16), with its floor. In a pot nothing streams along the wall: its figures hold as they are. */
function singlePhase(r: number, isPot: number): number {
  if (isPot === 1) return 1;
  if (r < STILL_SINGLE_RATIO) return STILL_SINGLE;
  const root4 = Math.sqrt(Math.sqrt(r));
  return root4 * root4 * root4 * Math.sqrt(Math.sqrt(root4));
}

/** r^(3/8), with its floor. */
function twoPhase(r: number, isPot: number): number {
  if (isPot === 1) return 1;
  if (r < STILL_TWO_PHASE_RATIO) return STILL_TWO_PHASE;
  const root4 = Math.sqrt(Math.sqrt(r));
  return root4 * Math.sqrt(root4);
}

/** r^(21/64). */
function nearCubeRoot(r: number): number {
  const root4 = Math.sqrt(Math.sqrt(r));
  const root16 = Math.sqrt(Math.sqrt(root4));
  return root4 * root16 * Math.sqrt(Math.sqrt(root16));
}
