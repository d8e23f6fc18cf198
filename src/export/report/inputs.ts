/** What the report is made of: the cars, and the printed figures it is held against. */
import type { VehicleData } from '../../loop/car/vehicles';
import type { LoopRun } from '../../plant/runLoop';
import type { SignRow } from '../../plant/signs/signTable';

export interface ReportInputs {
  readonly vehicles: readonly VehicleData[];
  readonly printed: {
    readonly bands: {
      readonly stationary: {
        readonly source: string;
        /** degC, share, from and to in kPa gauge. */
        readonly rows: readonly (readonly number[])[];
        readonly low_ceiling_kPa_gauge: number;
        readonly low_floor_expansion_valve_kPa_gauge: number;
      };
    };
    readonly chargeStudy: {
      readonly source: string;
      readonly knees: {
        readonly lower_share_of_charge: readonly number[];
        readonly upper_share_of_charge: readonly number[];
      };
    };
    /** Fluid, bore mm, length mm, condensing degC, subcooling K, flow g/s. */
    readonly orificeFlow: {
      readonly source: string;
      readonly rows: readonly (readonly (string | number)[])[];
    };
    readonly recovery: { readonly source: string; readonly least_share_recovered: number };
    readonly evacuation: {
      readonly water: { readonly source: string; readonly degC: number; readonly boils_at_micron: number };
    };
    readonly signs: { readonly about: string; readonly rows: readonly SignRow[] };
  };
}

const ZERO_C = 273.15;
const SECONDS_A_MINUTE = 60;
const ENGINE_RPM = 1500;

/** Windows open, blower full, 1,500 rpm: what most printed tables were read at. */
export function standing(vehicle: VehicleData, ambientC: number, over: Partial<LoopRun> = {}): LoopRun {
  return {
    vehicle: vehicle.id,
    vehicleData: vehicle,
    refrigerant: vehicle.label.refrigerant,
    ambientK: ambientC + ZERO_C,
    relativeHumidity: 0.5,
    engineRevPerS: ENGINE_RPM / SECONDS_A_MINUTE,
    durationS: 480,
    averageS: 180,
    cabin: 'open',
    chargeShare: 1,
    faults: [],
    start: 'equalised',
    ...over,
  };
}

export const celsius = (kelvin: number): number => kelvin - ZERO_C;
export const kPa = (pascal: number): number => pascal / 1000;
