/**
 * Puts a plant together: car, hidden faults, bench, instruments, and the desk that remembers what a person has set.
 */
import type { CanSpec } from '../equipment/cans';
import type { OilKind } from '../equipment/oils';
import type { PlaceSpec } from '../equipment/place';
import type { TemperatureSetting } from '../equipment/temperatureControl';
import type { ToolId } from '../equipment/tools';
import type { ForeignId } from '../loop/foreign';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import { assemblePlant } from './assemblePlant';
import { makeExecutive } from './executive';
import type { Plant } from './plantPort';

export interface HiddenFault {
  readonly id: string;
  /** 0 healthy .. 1 the worst met in practice. */
  readonly severity: number;
  readonly onsetStep: number;
  /** Part of the loop where it is, for a fault that has a place. */
  readonly site?: string;
  /** Which gas, of a fault that mixes one in. */
  readonly gas?: ForeignId;
}

/** How the car was found. */
export interface FoundCar {
  readonly temperature?: TemperatureSetting;
  /** Wears a conversion's fittings. */
  readonly converted?: boolean;
  /** Lettered for its own side, gone, or lettered for the other side; a blank one where nothing is said. */
  readonly caps?: readonly { readonly port: string; readonly is: 'own' | 'missing' | 'misleading' }[];
  /** Of ports that lie under a cover; on where nothing is said. */
  readonly covers?: readonly { readonly port: string; readonly is: 'on' | 'off' }[];
}

export interface PlantOptions {
  readonly vehicleId: string;
  readonly refrigerant: RefrigerantId;
  /** In the loop, what the oil holds included; of no meaning where `start` is `evacuated`. */
  readonly chargeKg: number;
  readonly start: 'equalised' | 'soaked' | 'evacuated';
  readonly weather: {
    readonly temperatureK: number;
    readonly relativeHumidity: number;
    readonly pressurePa: number;
    /** On the level; none where nothing is said. */
    readonly sunWPerM2?: number;
  };
  readonly faults: readonly HiddenFault[];
  readonly bench: {
    readonly hoses: readonly ('charging' | 'gauge-set')[];
    readonly cans: readonly CanSpec[];
    /** What its cans and its charging tank hold; the loop's own where nothing is said. */
    readonly refrigerant?: RefrigerantId;
    /** None where nothing is said. */
    readonly tools?: readonly ToolId[];
    /** Its pumps and detector are made for gas that burns. */
    readonly rated?: boolean;
    /** In the recovery machine's tank at the start, kg. */
    readonly tankHeldKg?: number;
    /** In the oil injector and round the dye; what belongs in the car where nothing is said. */
    readonly oil?: OilKind;
  };
  /** A garage of the usual size where nothing is said. */
  readonly place?: PlaceSpec;
  /** A gas heater burns in it. */
  readonly heaterOn?: boolean;
  /** Leak sealer that somebody has put into the loop. */
  readonly foundSealerKg?: number;
  readonly found?: FoundCar;
  /** Ids of papers that lie in the car, besides the label and the service information. */
  readonly papers?: readonly string[];
  /** Only the errors of the instruments depend on it. */
  readonly seed: number;
}

/** Throws `RangeError` for an unknown vehicle or fault, and for a fault that does not apply to the vehicle. */
export function buildPlant(options: PlantOptions): Plant {
  return makeExecutive(assemblePlant(options));
}
