/**
 * Every kind of quantity a person may write in a file or a command, with the units it may be written in.
 * value in SI = (number + shift) * factor. The first unit of a kind is the SI one or its nearest round multiple.
 * Inch 0.0254 m, mile 1609.344 m: exact (NIST Special Publication 811, 2008).
 */
import { KG_PER_GRAM, KG_PER_OUNCE, KG_PER_POUND } from './mass';
import {
  PA_PER_BAR,
  PA_PER_INCH_OF_MERCURY,
  PA_PER_KPA,
  PA_PER_MICRON,
  PA_PER_MPA,
  PA_PER_PSI,
} from './pressure';
import { CELSIUS_ZERO_K } from './temperature';

export interface Unit {
  readonly factor: number;
  readonly shift?: number;
}

interface Kind {
  /** What the result is in. */
  readonly si: string;
  readonly units: Readonly<Record<string, Unit>>;
}

const GAUGE: Readonly<Record<string, Unit>> = {
  Pa: { factor: 1 },
  kPa: { factor: PA_PER_KPA },
  MPa: { factor: PA_PER_MPA },
  bar: { factor: PA_PER_BAR },
  psi: { factor: PA_PER_PSI },
};

function absolute(units: Readonly<Record<string, Unit>>): Readonly<Record<string, Unit>> {
  return Object.fromEntries(Object.entries(units).map(([name, unit]) => [`${name} abs`, unit]));
}

const PER_MINUTE = 1 / 60;
const DEGREE = 3.141592653589793 / 180;

export const KINDS = {
  mass: {
    si: 'kg',
    units: {
      kg: { factor: 1 },
      g: { factor: KG_PER_GRAM },
      mg: { factor: 1e-6 },
      oz: { factor: KG_PER_OUNCE },
      lb: { factor: KG_PER_POUND },
    },
  },
  temperature: {
    si: 'K',
    units: {
      K: { factor: 1 },
      degC: { factor: 1, shift: CELSIUS_ZERO_K },
      '°C': { factor: 1, shift: CELSIUS_ZERO_K },
      degF: { factor: 5 / 9, shift: CELSIUS_ZERO_K * 1.8 - 32 },
      '°F': { factor: 5 / 9, shift: CELSIUS_ZERO_K * 1.8 - 32 },
    },
  },
  temperatureDifference: { si: 'K', units: { K: { factor: 1 } } },
  gaugePressure: {
    si: 'Pa over the atmosphere',
    units: { ...GAUGE, inHg: { factor: PA_PER_INCH_OF_MERCURY } },
  },
  absolutePressure: { si: 'Pa', units: { ...absolute(GAUGE), 'micron abs': { factor: PA_PER_MICRON } } },
  pressureDifference: { si: 'Pa', units: GAUGE },
  time: {
    si: 's',
    units: { s: { factor: 1 }, ms: { factor: 0.001 }, min: { factor: 60 }, h: { factor: 3600 } },
  },
  ratio: { si: 'share of one', units: { '%': { factor: 0.01 } } },
  length: {
    si: 'm',
    units: {
      m: { factor: 1 },
      cm: { factor: 0.01 },
      mm: { factor: 0.001 },
      km: { factor: 1000 },
      in: { factor: 0.0254 },
    },
  },
  area: { si: 'm2', units: { m2: { factor: 1 }, cm2: { factor: 1e-4 }, mm2: { factor: 1e-6 } } },
  volume: {
    si: 'm3',
    units: { m3: { factor: 1 }, L: { factor: 0.001 }, mL: { factor: 1e-6 }, cm3: { factor: 1e-6 } },
  },
  speed: {
    si: 'm/s',
    units: { 'm/s': { factor: 1 }, 'km/h': { factor: 1 / 3.6 }, mph: { factor: 1609.344 / 3600 } },
  },
  rotation: { si: 'turns per second', units: { '1/s': { factor: 1 }, rpm: { factor: PER_MINUTE } } },
  angle: { si: 'rad', units: { rad: { factor: 1 }, deg: { factor: DEGREE }, '°': { factor: DEGREE } } },
  power: { si: 'W', units: { W: { factor: 1 }, kW: { factor: 1000 } } },
  conductance: { si: 'W/K', units: { 'W/K': { factor: 1 } } },
  heatCapacity: { si: 'J/K', units: { 'J/K': { factor: 1 }, 'kJ/K': { factor: 1000 } } },
  massFlow: {
    si: 'kg/s',
    units: { 'kg/s': { factor: 1 }, 'g/s': { factor: 0.001 }, 'g/min': { factor: 0.001 * PER_MINUTE } },
  },
  volumeFlow: {
    si: 'm3/s',
    units: {
      'm3/s': { factor: 1 },
      'm3/h': { factor: 1 / 3600 },
      'L/s': { factor: 0.001 },
      'L/min': { factor: 0.001 * PER_MINUTE },
    },
  },
  irradiance: { si: 'W/m2', units: { 'W/m2': { factor: 1 } } },
} as const satisfies Readonly<Record<string, Kind>>;

export type QuantityKind = keyof typeof KINDS;

export function unitsOf(kind: QuantityKind): Readonly<Record<string, Unit>> {
  return KINDS[kind].units;
}
