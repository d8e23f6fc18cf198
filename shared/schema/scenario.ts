/**
 * A scenario: one lesson, one file, data only. Quantities carry their unit in the text; ids (vehicle, faults, parts,
 * ports) are checked against the registries by `check`, not here. An unknown key is an error.
 */
import { z } from 'zod';
import { conditionSchema } from './condition.ts';
import { DOMAINS } from './domains.ts';
import { PERSONS, PLACES } from './persons.ts';
import { planLinesSchema } from './plan.ts';
import { quantity } from './quantity.ts';
import { ruleSchema, taskId } from './rubric.ts';

const id = z
  .string()
  .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'an id is small letters, digits and single hyphens')
  .max(60);
const ruleId = z
  .string()
  .regex(/^[a-z][a-zA-Z0-9]*$/, 'a rule or rubric id is letters and digits, small letter first');
const sentence = (most: number) => z.string().trim().min(1).max(most);

const temperature = quantity('temperature', { min: 263.15, max: 323.15 });
const humidity = quantity('ratio', { min: 0, max: 1 });

const weather = z.strictObject({
  temperature,
  humidity,
  pressure: quantity('absolutePressure', { min: 60_000, max: 108_000 }).optional(),
  /** On the level; none where nothing is said. */
  sun: quantity('irradiance', { min: 0, max: 1_200 }).optional(),
});

const refrigerant = z.enum(['R-134a', 'R-12', 'R-1234yf']);

const contents = z.strictObject({
  refrigerant,
  charge: quantity('mass', { min: 0, max: 3 }),
  state: z.enum(['equalised', 'soaked', 'evacuated']),
  history: sentence(600),
});

const fault = z.strictObject({
  fault: id,
  severity: z.number().min(0).max(1),
  /** Part of the loop where it is, for a fault that has a place. */
  site: id.optional(),
  /** Which gas, of a fault that mixes one in; the usual one for the car where nothing is said. */
  gas: z.enum(['R-134a', 'R-12', 'R-1234yf', 'hydrocarbon']).optional(),
  onset: quantity('time', { min: 0, max: 7200 }).optional(),
});

const can = z.strictObject({
  id,
  net: quantity('mass', { min: 0, max: 1 }),
  printed: quantity('mass', { min: 0, max: 1.2 }),
  /** Empty can; with its oil, unless that is named below. */
  tare: quantity('mass', { min: 0, max: 0.5 }),
  oil: quantity('mass', { min: 0, max: 0.2 }).optional(),
  sealer: quantity('mass', { min: 0, max: 0.1 }).optional(),
  dye: quantity('mass', { min: 0, max: 0.05 }).optional(),
});

const found = z.strictObject({
  /** Caps: lettered for its own side, missing, or lettered for the other side; blank and on where nothing is said. */
  caps: z
    .array(z.strictObject({ port: id, is: z.enum(['own', 'missing', 'misleading']) }))
    .max(4)
    .optional(),
  /** Covers over ports that lie under one; on where nothing is said. */
  covers: z
    .array(z.strictObject({ port: id, is: z.enum(['on', 'off']) }))
    .max(4)
    .optional(),
  /** Where the temperature control stood; coldest where nothing is said. */
  temperature: z.enum(['coldest', 'middle', 'warmest']).optional(),
  /** Wears the permanent fittings of a conversion already. */
  converted: z.boolean().optional(),
  /** What is left of the label under the hood; the old one where nothing is said. */
  label: z.enum(['none', 'old', 'worn']).optional(),
  /** A gas heater burns in the room. */
  heater: z.enum(['on', 'off']).optional(),
  /** Leak sealer that somebody has put into the loop. */
  sealer: quantity('mass', { min: 0, max: 0.1 }).optional(),
});

/** Where the work is done; a garage of 60 m3 where nothing is said. */
const place = z.strictObject({
  kind: z.enum(['outdoors', 'garage', 'garage-with-pit']),
  volume: quantity('volume', { min: 10, max: 2000 }).optional(),
  /** No air gets in while its door is shut. */
  tight: z.boolean().optional(),
});

/** What the owner answers when asked; does not know where nothing is said. */
const owner = z.strictObject({
  converted: sentence(240).optional(),
  opened: sentence(240).optional(),
  filled: sentence(240).optional(),
  used: sentence(240).optional(),
});

const tool = z.enum([
  'recovery-machine',
  'vacuum-pump',
  'micron-gauge',
  'charging-tank',
  'nitrogen',
  'oil-injector',
  'identifier',
  'detector',
  'soap',
  'uv-lamp',
  'dye',
  'conversion-kit',
  'sealer-test',
  'loose-adapter',
  'shop-air',
  'oxygen',
  'bare-nitrogen',
]);

const bench = z.strictObject({
  hoses: z.array(z.enum(['charging', 'gauge-set'])),
  cans: z.array(can).max(6),
  /** What cans and charging tank hold; what the car holds where nothing is said. */
  refrigerant: refrigerant.optional(),
  /** None twice, hoses neither: `check` says which. Besides hoses, cans and thermometers; none where nothing is said. */
  tools: z.array(tool).optional(),
  /** Pumps and detector are made for gas that burns. */
  rated: z.boolean().optional(),
  /** In the recovery machine's tank at the start. */
  recoveryTank: quantity('mass', { min: 0, max: 14 }).optional(),
  /** In the oil injector and round the dye; what belongs in the car where nothing is said. */
  oil: z.enum(['mineral', 'PAG', 'POE']).optional(),
});

const delivery = z.strictObject({ id, text: sentence(160), done: conditionSchema });
const paper = z.strictObject({ id, title: sentence(80), lines: z.array(sentence(240)).min(1).max(30) });

const variation = z.discriminatedUnion('what', [
  z.strictObject({ what: z.literal('temperature'), from: temperature, to: temperature }),
  z.strictObject({ what: z.literal('humidity'), from: humidity, to: humidity }),
]);

const rubric = z.strictObject({
  use: z.array(ruleId).min(1).max(12),
  drop: z.array(ruleId).max(40).optional(),
  add: z.array(ruleSchema).max(40).optional(),
  weights: z.record(z.enum(DOMAINS), z.number().min(0).max(100)).optional(),
});

const plans = z.strictObject({
  solution: planLinesSchema,
  careless: planLinesSchema,
  nothing: planLinesSchema,
});

export const scenarioSchema = z.strictObject({
  schema: z.literal(1),
  id,
  title: sentence(60),
  author: sentence(80),
  licence: sentence(40),
  language: z.string().regex(/^[a-z]{2}$/, 'a language is two small letters'),
  level: z.int().min(1).max(4),
  minutes: z.int().min(1).max(240),
  /** Where the car stands; `check-first` where nothing is said. */
  jurisdiction: z.enum(PLACES).optional(),
  person: z.enum(PERSONS),
  vehicle: id,
  weather,
  contents,
  faults: z.array(fault).max(4),
  found: found.optional(),
  place: place.optional(),
  complaint: sentence(300),
  owner: owner.optional(),
  papers: z.array(paper).max(8),
  deliver: z.array(delivery).min(1).max(8),
  bench,
  varies: z.array(variation).max(6).optional(),
  rubric,
  answer: z.strictObject({ causes: z.array(id).min(1).max(4), parts: z.array(id).max(4) }),
  plans,
  hints: z
    .array(sentence(400))
    .length(3, 'there are three levels of hints: where to look, what it means, what to do'),
  debrief: sentence(2000),
  teacher: sentence(3000),
  tasks: z.array(taskId).max(12),
});

export type ScenarioData = z.infer<typeof scenarioSchema>;
