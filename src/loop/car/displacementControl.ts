/**
 * Stroke of a variable compressor: proportional and integral on what it holds, never under its least.
 *
 *   e = (felt - set point) / band,   d(memory)/dt = e / lag,   stroke = memory + e / 2, kept in least .. 1
 *
 * `suction`: a bellows in the compressor feels its suction (absolute) and bleeds the crankcase; a clutch turns it, and the
 * switches only protect. `coil`: the car feels the coil's coldest fin and sets the stroke; there is no clutch, the shaft
 * turns with the engine, and with nothing asked the stroke is none. The form is the trade's; lags and bands [guess].
 */
import type { Network } from '../network';
import type { CarLoop, CarPart } from './assembleLoop';
import { AT } from './carNumbers';
import { stepClutch } from './clutch';
import { coldestFinK } from './coldestFinK';
import { isSeized } from './compressorWear';
import { coolingAsked, switchesAllow } from './coolingAsked';
import type { VehicleData } from './vehicles';

type Control = NonNullable<VehicleData['compressor']['displacementControl']>;

const SHAFT_LAG_S = 0.1;
/** The memory's part of a deviation at once. */
const AT_ONCE = 0.5;
const FELT_LAG_S = 2;

export function stepVariable(
  network: Network,
  vehicle: VehicleData,
  control: Control,
  loop: CarLoop,
  coil: CarPart,
  dtS: number,
): void {
  if (control.holds === 'suction') {
    stepClutch(network, vehicle, loop, dtS);
    const turning = network.reserve[AT.compressorRevPerS] > 0;
    stroke(network, loop, control, network.pressurePa(loop.low), turning, dtS);
    return;
  }
  const r = network.reserve;
  const asked = coolingAsked(r, vehicle) && switchesAllow(r);
  if (asked) r[AT.clutchOnS] += dtS;
  r[AT.clutchIn] = asked ? 1 : 0;
  turnWithEngine(network, vehicle, loop, dtS);
  r[AT.controlCoilK] += ((coldestFinK(network, coil) - r[AT.controlCoilK]) * dtS) / (FELT_LAG_S + dtS);
  stroke(network, loop, control, r[AT.controlCoilK], asked, dtS);
  if (!asked) setStroke(network, loop, 0);
}

/** A hub that breaks when the compressor seizes: then the pulley turns alone. */
function turnWithEngine(network: Network, vehicle: VehicleData, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  const target = isSeized(r) ? 0 : r[AT.engineRevPerS] * (vehicle.compressor.pulleyRatio ?? 1);
  const speed = r[AT.compressorRevPerS] + ((target - r[AT.compressorRevPerS]) * dtS) / (SHAFT_LAG_S + dtS);
  r[AT.compressorRevPerS] = speed < 0.01 ? 0 : speed;
  network.setSpeed(loop.compressor, r[AT.compressorRevPerS]);
}

function stroke(
  network: Network,
  loop: CarLoop,
  { setPoint, band, least, lag }: Control,
  felt: number,
  turning: boolean,
  dtS: number,
): void {
  const r = network.reserve;
  if (!turning) {
    // it starts on a small stroke
    r[AT.controlShare] = least;
    setStroke(network, loop, least);
    return;
  }
  const off = (felt - setPoint) / band;
  const memory = r[AT.controlShare] + (off * dtS) / lag;
  r[AT.controlShare] = memory < least ? least : memory > 1 ? 1 : memory;
  const asked = r[AT.controlShare] + AT_ONCE * off;
  setStroke(network, loop, asked < least ? least : asked > 1 ? 1 : asked);
}

function setStroke(network: Network, loop: CarLoop, share: number): void {
  network.reserve[AT.strokeShare] = share;
  network.setStroke(loop.compressor, share);
}
