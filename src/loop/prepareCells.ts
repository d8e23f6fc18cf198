/**
 * Read once at the start of a step, for every cell: conductance to the wall and slip between the phases.
 *
 * Conductance blends liquid, boiling and vapour figures by quality and follows the flow (single phase ~ m^0.8, after
 * Dittus & Boelter; two-phase ~ m^0.4), with floors for still fluid; exponents are 13/16 and 3/8, which square roots give.
 * Slip is Zivi's (rho_l / rho_v)^(1/3) (exponent 21/64) when refrigerant flows; as it stands still it goes over to the
 * cell's own figure. Air blankets the wall: 1 / (1 + 7 y_air) [guess],
 * and oil over what belongs on it: 1 / (1 + 0.6 over) [guess].
 */
import type { NetworkCore } from './networkCore';

const NOMINAL_KG_PER_S = 0.04;
const STILL_SINGLE = 0.12;
const STILL_TWO_PHASE = 0.3;
const MOST_FLOW_FACTOR = 3;
/** Quality over which a wetted wall begins to dry out. */
const DRY_OUT = 0.86;
/** The same, as enthalpy over the latent heat, for a wall on which vapour condenses. */
const DRY_SUPERHEAT = 1.12;
const WET_IN = 0.02;
/** Flow under which the phases part. */
const PARTING_KG_PER_S = 0.007;
const AIR_BLANKET = 7;
const OIL_FILM = 0.6;
const SHAKEN_WETTING = 2;

export function prepareCells(core: NetworkCore, vessel: number, dtS: number): void {
  const { numbers: n, plan, scratch } = core;
  const iso = plan.isobars[vessel];
  const hl = iso.liquidEnthalpyJPerKg;
  const latent = iso.vapourEnthalpyJPerKg - hl;
  const saturationK = iso.saturationTemperatureK;
  const zivi = nearCubeRoot(iso.vapourVolumeM3PerKg / iso.liquidVolumeM3PerKg);
  const airShare =
    n.airPressure[vessel] > 0 ? n.airPressure[vessel] / (n.airPressure[vessel] + n.pressure[vessel]) : 0;
  const wetting =
    (dtS * (1 + SHAKEN_WETTING * n.shaking[vessel])) / ((1 + AIR_BLANKET * airShare) * oilFilm(core, vessel));
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  for (let c = first; c < end; c++) {
    scratch.sourceMass[c] = 0;
    scratch.sourceHeat[c] = 0;
    const flow = n.flow[c] < 0 ? -n.flow[c] : n.flow[c];
    const share = flow < PARTING_KG_PER_S ? flow / PARTING_KG_PER_S : 1;
    const slip = plan.slipAtRest[c] + (zivi - plan.slipAtRest[c]) * share;
    scratch.slip[c] = slip;
    const ratio = flow / NOMINAL_KG_PER_S;
    const r = ratio > MOST_FLOW_FACTOR ? MOST_FLOW_FACTOR : ratio;
    // in a pot nothing streams along the wall: its figures hold as they are
    const root4 = plan.isPot[c] === 1 ? 1 : Math.sqrt(Math.sqrt(r));
    const x = (n.enthalpy[c] - hl) / latent;
    // a wall colder than saturation is wetted even by vapour that is still a little superheated
    const dryFrom = n.wall[c] < saturationK ? 1 : DRY_OUT;
    const dryAt = n.wall[c] < saturationK ? DRY_SUPERHEAT : 1;
    if (x >= dryAt) {
      scratch.wallGain[c] = dtS * singlePhase(root4) * plan.vapourSide[c];
      continue;
    }
    if (x <= -WET_IN) {
      scratch.wallGain[c] = dtS * singlePhase(root4) * plan.liquidSide[c];
      continue;
    }
    const two = Math.max(STILL_TWO_PHASE, root4 * Math.sqrt(root4)) * plan.boiling[c] * wetting;
    const xIn = x > 0 ? x : 0;
    const y = plan.isPot[c] === 1 || x >= 1 ? xIn : (slip * xIn) / (1 - xIn + slip * xIn);
    if (y > dryFrom) {
      const dry = (y - dryFrom) / (dryAt - dryFrom);
      scratch.wallGain[c] = two + dry * (dtS * singlePhase(root4) * plan.vapourSide[c] - two);
    } else if (x < WET_IN) {
      const wet = (x + WET_IN) / (2 * WET_IN);
      const alone = dtS * singlePhase(root4) * plan.liquidSide[c];
      scratch.wallGain[c] = alone + wet * (two - alone);
    } else scratch.wallGain[c] = two;
  }
}

/** 1 with as much oil on the walls as belongs there, more with more. */
function oilFilm({ numbers: n, plan }: NetworkCore, vessel: number): number {
  const belongs = plan.filmOil[vessel];
  if (belongs <= 0) return 1;
  const over = (n.extra[3][vessel] - n.sump[vessel]) / belongs - 1;
  return over > 0 ? 1 + OIL_FILM * over : 1;
}

/** r^(13/16) from r^(1/4), with its floor. */
function singlePhase(root4: number): number {
  const power = root4 * root4 * root4 * Math.sqrt(Math.sqrt(root4));
  return power > STILL_SINGLE ? power : STILL_SINGLE;
}

/** r^(21/64). */
function nearCubeRoot(r: number): number {
  const root4 = Math.sqrt(Math.sqrt(r));
  const root16 = Math.sqrt(Math.sqrt(root4));
  return root4 * root16 * Math.sqrt(Math.sqrt(root16));
}
