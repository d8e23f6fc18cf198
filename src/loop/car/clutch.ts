/**
 * The clutch: in where cooling is asked for and every switch allows it. It passes torque up to what its faces can:
 *
 *   capacity = 25 N m (share sound) fade(T_face),   I 2 pi dN/dt = capacity (1 - 0.15 slip) - load,   slip = 1 - N / N_pulley
 *
 * Under its capacity the hub comes up to the pulley's speed within a tenth of a second. Over it the hub falls behind: the
 * pressures follow its speed and the load follows them, so it hunts round the speed at which the load is what it can
 * pass. What rubs is heat: a tenth goes through the hub into the compressor's body (work, in the books), the rest into the
 * faces, which lose it to the bay and fade between 520 and 650 K. No current, or too little, and it does not pull in.
 *
 * 25 N m is 45 N m at the peak of a stroke (from memory) over a peak 1.8 times the mean; all other numbers [guess].
 */
import type { Network } from '../network';
import type { CarLoop } from './assembleLoop';
import { AT } from './carNumbers';
import { compressorTorqueNm, TWO_PI } from './compressorTorque';
import { coolingAsked, switchesAllow } from './coolingAsked';
import type { VehicleData } from './vehicles';

const CLUTCH_LAG_S = 0.1;
const CAPACITY_NM = 25;
const INERTIA_KG_M2 = 0.006;
/** Dry faces grip less the faster they slide. */
const LESS_WHEN_SLIPPING = 0.15;
/** Least share of the voltage that pulls the plate in, and that holds it there; common practice, no source. */
const PULLS_IN_AT = 0.6;
const HOLDS_AT = 0.3;
const SLIPS_FROM = 0.01;
const BODY_SHARE = 0.1;
const FACE_JPERK = 1500;
const FACE_WPERK = 4;
const FADES_FROM_K = 520;
const FADED_AT_K = 650;
const FADED_SHARE = 0.03;

export function stepClutch(network: Network, vehicle: VehicleData, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  const least = r[AT.clutchIn] > 0.5 ? HOLDS_AT : PULLS_IN_AT;
  const pulled = coolingAsked(r, vehicle) && switchesAllow(r) && r[AT.clutchCurrent] >= least;
  if (pulled && r[AT.clutchIn] < 0.5) r[AT.clutchCycles] += 1;
  r[AT.clutchIn] = pulled ? 1 : 0;
  if (pulled) r[AT.clutchOnS] += dtS;
  const passed = Math.max(pulled ? r[AT.clutchHealth] : 0, r[AT.clutchStuck]);
  turn(network, vehicle, loop, passed * CAPACITY_NM * fade(r[AT.clutchFaceK]), dtS);
}

function turn(network: Network, vehicle: VehicleData, loop: CarLoop, capacityNm: number, dtS: number): void {
  const r = network.reserve;
  const was = r[AT.compressorRevPerS];
  const pulley = r[AT.engineRevPerS] * (vehicle.compressor.pulleyRatio ?? 1);
  const target = capacityNm > 0 ? pulley : 0;
  let speed = was + ((target - was) * dtS) / (CLUTCH_LAG_S + dtS);
  let loadNm = 0;
  if (target > 0) {
    loadNm = compressorTorqueNm(network, vehicle, loop);
    const slip = Math.max(0, 1 - was / pulley);
    const rise = ((capacityNm * (1 - LESS_WHEN_SLIPPING * slip) - loadNm) * dtS) / (TWO_PI * INERTIA_KG_M2);
    speed = Math.min(speed, was + rise);
  }
  speed = speed < 0.01 ? 0 : speed;
  r[AT.compressorRevPerS] = speed;
  network.setSpeed(loop.compressor, speed);
  const slip = target > 0 ? Math.max(0, 1 - speed / pulley) : 0;
  r[AT.clutchSlip] = slip;
  warm(network, loop, slip > SLIPS_FROM ? Math.min(capacityNm, loadNm) * TWO_PI * (pulley - speed) : 0, dtS);
}

function warm(network: Network, loop: CarLoop, rubbedW: number, dtS: number): void {
  const r = network.reserve;
  network.setShaftHeat(loop.compressor, BODY_SHARE * rubbedW);
  const lost = FACE_WPERK * (r[AT.clutchFaceK] - r[AT.bayK]);
  r[AT.clutchFaceK] += (((1 - BODY_SHARE) * rubbedW - lost) * dtS) / FACE_JPERK;
}

function fade(faceK: number): number {
  const past = (faceK - FADES_FROM_K) / (FADED_AT_K - FADES_FROM_K);
  return past <= 0 ? 1 : Math.max(FADED_SHARE, 1 - past * (1 - FADED_SHARE));
}
