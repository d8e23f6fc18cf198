/** Every fault there is, in a fixed order. A new one is a file and a line here. */
import type { VehicleData } from '../loop/car/vehicles';
import { airInLoop } from './airInLoop';
import { blowerDead } from './blowerDead';
import { bulbChargeLost } from './bulbChargeLost';
import { bulbLoose } from './bulbLoose';
import { cabinFilterBlocked } from './cabinFilterBlocked';
import { clutchNotEngaging } from './clutchNotEngaging';
import { clutchSlipping } from './clutchSlipping';
import { clutchStuckOn } from './clutchStuckOn';
import { coilAirLow } from './coilAirLow';
import { coilIced } from './coilIced';
import { condenserAirBlocked } from './condenserAirBlocked';
import { condenserFanDead } from './condenserFanDead';
import { condenserFanLate } from './condenserFanLate';
import { condenserFanSlow } from './condenserFanSlow';
import { doorLeakingHeat } from './doorLeakingHeat';
import { drierRestricted } from './drierRestricted';
import type { Fault } from './fault';
import { leak } from './leak';
import { leakCondenser } from './leakCondenser';
import { leakCore } from './leakCore';
import { leakEvaporator } from './leakEvaporator';
import { leakHose } from './leakHose';
import { leakingReed } from './leakingReed';
import { leakJoint } from './leakJoint';
import { leakSeal } from './leakSeal';
import { liquidLineRestricted } from './liquidLineRestricted';
import { lowCharge } from './lowCharge';
import { lowSwitchWrong } from './lowSwitchWrong';
import { missingOrifice } from './missingOrifice';
import { mixedRefrigerant } from './mixedRefrigerant';
import { moisture } from './moisture';
import { overcharge } from './overcharge';
import { oversizedOrifice } from './oversizedOrifice';
import { restrictedMetering } from './restrictedMetering';
import { tooLittleOil } from './tooLittleOil';
import { tooMuchOil } from './tooMuchOil';
import { txvStuckClosed } from './txvStuckClosed';
import { txvStuckOpen } from './txvStuckOpen';
import { weakCompressor } from './weakCompressor';
import { wrongRefrigerant } from './wrongRefrigerant';

export const FAULT_GROUPS = {
  /** What is in the loop. */
  contents: [
    lowCharge,
    overcharge,
    airInLoop,
    moisture,
    tooMuchOil,
    tooLittleOil,
    mixedRefrigerant,
    wrongRefrigerant,
  ],
  /** Ways out of it. */
  leaks: [leak, leakSeal, leakHose, leakJoint, leakCore, leakCondenser, leakEvaporator],
  /** Air over the heat exchangers, and the controls. */
  air: [
    condenserFanDead,
    condenserFanSlow,
    condenserFanLate,
    condenserAirBlocked,
    coilAirLow,
    cabinFilterBlocked,
    blowerDead,
    coilIced,
    doorLeakingHeat,
    lowSwitchWrong,
  ],
  /** Metering device and liquid line. */
  metering: [
    restrictedMetering,
    oversizedOrifice,
    missingOrifice,
    txvStuckOpen,
    txvStuckClosed,
    bulbChargeLost,
    bulbLoose,
    liquidLineRestricted,
    drierRestricted,
  ],
  /** Compressor and clutch. */
  compressor: [weakCompressor, leakingReed, clutchNotEngaging, clutchSlipping, clutchStuckOn],
} as const satisfies Readonly<Record<string, readonly Fault[]>>;
export type FaultGroup = keyof typeof FAULT_GROUPS;

export const faults: readonly Fault[] = Object.values(FAULT_GROUPS).flat();

const byId = new Map(faults.map((fault) => [fault.id, fault]));

export const faultIds: readonly string[] = [...byId.keys()];

/** Throws `RangeError` for an id that no fault has. */
export function faultOf(id: string): Fault {
  const fault = byId.get(id);
  if (!fault) throw new RangeError(`no fault "${id}"; there is ${faultIds.join(', ')}`);
  return fault;
}

export function faultsFor(vehicle: VehicleData): readonly Fault[] {
  return faults.filter((fault) => fault.applies(vehicle));
}

/** The first two that cannot be in one car together, or undefined. */
export function clash(ids: readonly string[]): readonly [string, string] | undefined {
  for (const a of ids) {
    const other = ids.find(
      (b) => b !== a && (faultOf(a).excludes.includes(b) || faultOf(b).excludes.includes(a)),
    );
    if (other !== undefined) return [a, other];
  }
  return undefined;
}
