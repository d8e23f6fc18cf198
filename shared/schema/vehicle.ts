/**
 * Shape of shared/vehicles/ID.yaml: everything about a car that its refrigerant loop, its air and its papers need.
 * Where parts lie is in ID.layout.yaml; ids of parts and ports are the same in both.
 *
 * Quantities carry their unit in the text (`480 g`, `1.70 mm`, `32 degC`); reading turns them into SI, so what ships is
 * numbers. Unknown keys are errors.
 */
import { z } from 'zod';
import { parseQuantity, QuantityError } from '../../src/units/quantity';
import type { QuantityKind } from '../../src/units/unitTable';
import { YamlError, type YamlSource } from './readYaml.ts';

/** A quantity of one kind, written with its unit; becomes SI. */
export const quantity = (kind: QuantityKind) =>
  z.string().transform((text, context) => {
    try {
      return parseQuantity(text, kind);
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
      context.addIssue({ code: 'custom', message: error.message });
      return z.NEVER;
    }
  });

const id = z.string().regex(/^[a-z][a-z0-9-]*$/);
const text = z.string().min(1).max(200);
const share = quantity('ratio');
const refrigerant = z.enum(['R-134a', 'R-12', 'R-1234yf']);

/** A stretch of the loop: a pipe of one or more cells, or a pot. In order of flow. */
const component = z.strictObject({
  part: id,
  kind: z.enum(['pipe', 'pot']),
  cells: z.int().min(1).max(12).default(1),
  volume: quantity('volume'),
  wall: quantity('heatCapacity'),
  /** Refrigerant to wall at 40 g/s: boiling or condensing, vapour, liquid. */
  twoPhase: quantity('conductance'),
  vapour: quantity('conductance'),
  liquid: quantity('conductance'),
  /** Wall to the air around it: the bay, or the heat exchanger's own air. */
  around: z.enum(['bay', 'condenser-air', 'evaporator-air']),
  outside: quantity('conductance').optional(),
  slipAtRest: z.number().positive().default(1),
  outletHeight: share.optional(),
  outletBlend: share.optional(),
  liquidBleed: share.optional(),
  /** Water that the desiccant in it can hold. */
  desiccant: quantity('mass').optional(),
  /** Liquid stands here when the car has stood: first in pots marked `reservoir`, never where marked `dry`. */
  atRest: z.enum(['reservoir', 'wet', 'dry']).default('wet'),
});

const side = z.strictObject({ id, parts: z.array(component).min(1).max(12) });

const orificeTube = z.strictObject({
  kind: z.literal('orifice-tube'),
  bore: quantity('length'),
  length: quantity('length'),
});
const expansionValve = z.strictObject({
  kind: z.literal('expansion-valve'),
  area: quantity('area'),
  bleed: share,
  staticSuperheat: quantity('temperatureDifference'),
  gradient: quantity('temperatureDifference'),
  bulbLag: quantity('time'),
  maximumOperating: quantity('absolutePressure'),
  bulb: id,
  /** A bulb clamped on the suction line, or an element inside the valve's block that the suction gas flows through. */
  sensing: z.enum(['bulb', 'block']).default('bulb'),
  /** Sealed in the bulb, whatever is in the loop. */
  bulbFluid: refrigerant,
});

const metering = z.union([orificeTube, expansionValve]);

/**
 * How a compressor of variable displacement finds its stroke: its own valve holds the suction at a set point (a clutch
 * turns it), or the car holds the coil at one (it always turns with the engine, and idles at no stroke).
 */
const displacementControl = z.discriminatedUnion('holds', [
  z.strictObject({
    holds: z.literal('suction'),
    setPoint: quantity('absolutePressure'),
    /** Off the set point by this, the stroke runs from least to full within the lag. */
    band: quantity('pressureDifference'),
    least: share,
    lag: quantity('time'),
  }),
  z.strictObject({
    holds: z.literal('coil'),
    setPoint: quantity('temperature'),
    band: quantity('temperatureDifference'),
    least: share,
    lag: quantity('time'),
  }),
]);

/** An electric motor: turns whether or not the engine does, as fast as the coil needs, and starts softly. */
const electricDrive = z.strictObject({
  supply: z.enum(['high-voltage', 'low-voltage']),
  setPoint: quantity('temperature'),
  band: quantity('temperatureDifference'),
  lag: quantity('time'),
  least: quantity('rotation'),
  most: quantity('rotation'),
  /** From standing to its most. */
  softStart: quantity('time'),
});

const compressor = z.strictObject({
  kind: z.enum(['fixed', 'variable', 'electric']).default('fixed'),
  displacement: quantity('volume'),
  clearance: share,
  volumetricEfficiency: share,
  isentropicEfficiency: share,
  /** Through shut reeds at 1 MPa across. */
  reedLeak: quantity('massFlow'),
  /** Its turns for one of the engine's; none on an electric one. */
  pulleyRatio: z.number().positive().optional(),
  oil: quantity('mass'),
  displacementControl: displacementControl.optional(),
  drive: electricDrive.optional(),
});

const fan = z.strictObject({
  part: id,
  flow: quantity('massFlow'),
  /** `clutch`: whenever the compressor is asked for; `pressure`: by the high side; `engine`: on its belt, `flow` at 1,500 rpm. */
  runs: z.enum(['clutch', 'pressure', 'engine']),
  on: quantity('gaugePressure').optional(),
  off: quantity('gaugePressure').optional(),
});

const condenserAir = z.strictObject({
  conductance: quantity('conductance'),
  atFlow: quantity('massFlow'),
  fans: z.array(fan).min(1).max(3),
  /** Air that driving brings, per m/s, and what rises by itself with everything standing. */
  ramPerSpeed: quantity('massFlow'),
  still: quantity('massFlow'),
  recirculated: share,
});

const evaporatorAir = z.strictObject({
  conductance: quantity('conductance'),
  atFlow: quantity('massFlow'),
  /** Dry air at blower steps 0, 1, 2, ... */
  steps: z.array(quantity('massFlow')).min(2).max(8),
  blowerHeat: quantity('power'),
  holdsWater: quantity('mass'),
});

/** A rear unit: a branch of the low side with its own metering device, from the high side's end to where it joins. */
const rear = z.strictObject({
  /** The part of the low side that both branches drain to. */
  joins: id,
  /** The coil first. */
  parts: z.array(component).min(1).max(3),
  metering,
  air: evaporatorAir,
});

const cabin = z.strictObject({
  air: quantity('mass'),
  interior: quantity('heatCapacity'),
  interiorToAir: quantity('conductance'),
  body: quantity('conductance'),
  leakage: quantity('massFlow'),
  openWindows: quantity('massFlow'),
});

const switches = z.strictObject({
  /** Low-pressure switch: where it feels, opens and closes. */
  low: z.strictObject({
    at: z.enum(['low', 'high']),
    opens: quantity('gaugePressure'),
    closes: quantity('gaugePressure'),
  }),
  /** High-pressure cut-out; one not `fitted` is what a conversion puts in. */
  high: z.strictObject({
    opens: quantity('gaugePressure'),
    closes: quantity('gaugePressure'),
    fitted: z.boolean().default(true),
  }),
  /** On the coldest fin of the evaporator. */
  fin: z
    .strictObject({ opens: quantity('temperature'), closes: quantity('temperature'), lag: quantity('time') })
    .optional(),
  relief: z.strictObject({
    opens: quantity('gaugePressure'),
    closes: quantity('gaugePressure'),
    area: quantity('area'),
  }),
  /** On the compressor: feels its body or the gas that leaves, whichever is hotter. */
  thermal: z.strictObject({ opens: quantity('temperature'), closes: quantity('temperature') }),
});

const port = z.strictObject({
  id,
  part: id,
  /** Which cell of the part, from its inlet. */
  cell: z.int().min(0).default(0),
  height: z.enum(['top', 'bottom', 'bulk']),
});

const label = z.strictObject({
  refrigerant,
  charge: quantity('mass'),
  tolerance: quantity('mass'),
  oil: text,
  oilAmount: quantity('volume'),
});

/** What the car takes once it has been converted to another refrigerant. */
const conversion = z.strictObject({
  refrigerant,
  charge: quantity('mass'),
  tolerance: quantity('mass'),
  oil: text,
  oilAmount: quantity('volume'),
});

/** One line of the service information: what a healthy car shows. */
const serviceLine = z.strictObject({
  ambient: quantity('temperature'),
  lowFrom: quantity('gaugePressure'),
  lowTo: quantity('gaugePressure'),
  highFrom: quantity('gaugePressure'),
  highTo: quantity('gaugePressure'),
  ventFrom: quantity('temperature'),
  ventTo: quantity('temperature'),
});

export const vehicleSchema = z.strictObject({
  id,
  year: z.int().min(1960).max(2030),
  label,
  conversion: conversion.optional(),
  service: z.strictObject({
    /** 0 where there is none. */
    engine: quantity('rotation'),
    humidity: share,
    minutes: quantity('time'),
    lines: z.array(serviceLine).min(1),
  }),
  highSide: side,
  lowSide: side,
  metering,
  compressor: compressor.superRefine((data, context) => {
    const wrong = (key: string, message: string): void =>
      context.addIssue({ code: 'custom', path: [key], message });
    if ((data.kind === 'electric') !== (data.drive !== undefined))
      wrong('drive', 'goes with an electric compressor, and only with one');
    if ((data.kind === 'variable') !== (data.displacementControl !== undefined))
      wrong('displacementControl', 'goes with a variable compressor, and only with one');
    if ((data.kind === 'electric') === (data.pulleyRatio !== undefined))
      wrong('pulleyRatio', 'goes with a compressor on the belt, and only with one');
  }),
  condenserAir,
  evaporatorAir,
  rear: rear.optional(),
  cabin,
  switches,
  ports: z.array(port).min(2),
});

/** A car in SI numbers, as shipped. */
export type VehicleData = z.infer<typeof vehicleSchema>;
export type ComponentData = z.infer<typeof component>;

/** The data to ship; throws `YamlError` with file, line and column of the first thing wrong. */
export function checkVehicle(source: YamlSource): VehicleData {
  const result = vehicleSchema.safeParse(source.data);
  if (result.success) return result.data;
  const issue = result.error.issues[0];
  const path = issue.path.filter((step): step is string | number => typeof step !== 'symbol');
  throw new YamlError(source.at(path), 'vehicle-shape', `${path.join('.')}: ${issue.message}`);
}
