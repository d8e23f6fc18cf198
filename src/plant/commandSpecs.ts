/**
 * Every command a trainee, a plan or a key can give, as data: the log, the page, `sit`, plans and `list commands` all
 * read this one table. A command is a flat object `{ do: id, ...args }`; numbers are whole numbers in the unit stated.
 * What an id may be in a given car and at a given moment is answered by the plant (`Plant.choices`).
 */

import { OIL_KINDS } from '../equipment/oils';
import { CLUTCH_DOINGS, GASES, SUMS, TOLD } from './taskDesk';

/** Sets of ids whose members depend on the vehicle, the bench or a registry. */
export const ID_SETS = [
  'port',
  'covered-port',
  'part',
  'hose',
  'any-hose',
  'can',
  'can-inlet',
  'gauge',
  'air-place',
  'line-place',
  'zone',
  'channel',
  'sheet',
  'cause',
  'replaceable',
  'device',
  'device-place',
  'tank',
  'leak-place',
  'loop-place',
  'cleanable',
] as const;
export type IdSet = (typeof ID_SETS)[number];

export type ArgSpec =
  | { readonly kind: 'choice'; readonly of: readonly string[] }
  | { readonly kind: 'id'; readonly of: IdSet }
  | { readonly kind: 'ids'; readonly of: IdSet }
  | {
      readonly kind: 'whole';
      readonly unit: string;
      readonly min: number;
      readonly max: number;
      readonly step: number;
    };

export interface CommandSpec {
  /** Which job region the command belongs to: groups lists in the twin and in `list commands`. */
  readonly group:
    | 'gear'
    | 'look'
    | 'car'
    | 'connect'
    | 'measure'
    | 'charge'
    | 'service'
    | 'search'
    | 'card'
    | 'session';
  /** Arguments in the order a person types them. */
  readonly args: Readonly<Record<string, ArgSpec>>;
}

const onOff = { kind: 'choice', of: ['on', 'off'] } as const;
const openShut = { kind: 'choice', of: ['open', 'shut'] } as const;
const upTo = (max: number, unit: string, step = 1, min = 0) =>
  ({ kind: 'whole', unit, min, max, step }) as const;
const oilKind = { kind: 'choice', of: OIL_KINDS } as const;
const sixteenths = { kind: 'whole', unit: '1/16 turn', min: 0, max: 16, step: 1 } as const;

export const commandSpecs = {
  wear: { group: 'gear', args: { item: { kind: 'choice', of: ['goggles', 'gloves', 'overall'] } } },
  'take-off': { group: 'gear', args: { item: { kind: 'choice', of: ['goggles', 'gloves', 'overall'] } } },

  'read-sheet': { group: 'look', args: { sheet: { kind: 'id', of: 'sheet' } } },
  look: { group: 'look', args: { at: { kind: 'id', of: 'part' } } },
  trace: { group: 'look', args: { port: { kind: 'id', of: 'port' } } },
  'judge-port': {
    group: 'look',
    args: { port: { kind: 'id', of: 'port' }, side: { kind: 'choice', of: ['low', 'high'] } },
  },

  door: { group: 'car', args: { to: openShut } },
  engine: { group: 'car', args: { rpm: { kind: 'whole', unit: 'rpm', min: 0, max: 3000, step: 50 } } },
  ac: { group: 'car', args: { to: onOff } },
  hood: { group: 'car', args: { to: openShut } },
  clean: { group: 'car', args: { part: { kind: 'id', of: 'cleanable' } } },
  blower: { group: 'car', args: { speed: { kind: 'whole', unit: 'step', min: 0, max: 4, step: 1 } } },
  windows: { group: 'car', args: { to: openShut } },
  air: { group: 'car', args: { to: { kind: 'choice', of: ['fresh', 'recirculated'] } } },
  heater: { group: 'car', args: { to: onOff } },
  pit: { group: 'car', args: { to: { kind: 'choice', of: ['in', 'out'] } } },
  isolate: { group: 'car', args: { to: onOff } },
  bypass: {
    group: 'car',
    args: { what: { kind: 'choice', of: ['low-switch', 'high-switch', 'tank-limit'] }, to: onOff },
  },

  adapter: { group: 'connect', args: { hose: { kind: 'id', of: 'hose' }, to: onOff } },
  chock: { group: 'car', args: { to: onOff } },
  temperature: { group: 'car', args: { to: { kind: 'choice', of: ['coldest', 'middle', 'warmest'] } } },

  cover: { group: 'connect', args: { port: { kind: 'id', of: 'covered-port' }, to: onOff } },
  cap: { group: 'connect', args: { port: { kind: 'id', of: 'port' }, to: onOff } },
  couple: {
    group: 'connect',
    args: {
      hose: { kind: 'id', of: 'hose' },
      port: { kind: 'id', of: 'port' },
      route: { kind: 'ids', of: 'zone' },
    },
  },
  coupler: { group: 'connect', args: { hose: { kind: 'id', of: 'hose' }, to: openShut } },
  uncouple: { group: 'connect', args: { hose: { kind: 'id', of: 'hose' } } },
  route: { group: 'connect', args: { hose: { kind: 'id', of: 'hose' }, route: { kind: 'ids', of: 'zone' } } },
  manifold: { group: 'connect', args: { side: { kind: 'choice', of: ['low', 'high'] }, turn: sixteenths } },

  zero: { group: 'measure', args: { gauge: { kind: 'id', of: 'gauge' } } },
  'probe-air': { group: 'measure', args: { at: { kind: 'id', of: 'air-place' } } },
  'probe-line': { group: 'measure', args: { at: { kind: 'id', of: 'line-place' } } },
  'note-reading': { group: 'measure', args: { channel: { kind: 'id', of: 'channel' } } },

  tap: { group: 'charge', args: { can: { kind: 'id', of: 'can' }, onto: { kind: 'id', of: 'can-inlet' } } },
  untap: { group: 'charge', args: { can: { kind: 'id', of: 'can' } } },
  'can-valve': { group: 'charge', args: { can: { kind: 'id', of: 'can' }, turn: sixteenths } },
  tilt: {
    group: 'charge',
    args: {
      can: { kind: 'id', of: 'can' },
      degrees: { kind: 'whole', unit: 'deg', min: 0, max: 180, step: 5 },
    },
  },
  shake: { group: 'charge', args: { can: { kind: 'id', of: 'can' } } },
  place: {
    group: 'charge',
    args: {
      can: { kind: 'id', of: 'can' },
      at: { kind: 'choice', of: ['hand', 'scale', 'mat', 'bath', 'hot-water'] },
    },
  },
  'mark-can': { group: 'charge', args: { can: { kind: 'id', of: 'can' }, grams: upTo(1000, 'g') } },
  'store-can': { group: 'charge', args: { can: { kind: 'id', of: 'can' } } },
  purge: { group: 'charge', args: { hose: { kind: 'id', of: 'any-hose' }, to: openShut } },

  attach: {
    group: 'service',
    args: { device: { kind: 'id', of: 'device' }, onto: { kind: 'id', of: 'device-place' } },
  },
  detach: { group: 'service', args: { device: { kind: 'id', of: 'device' } } },
  run: { group: 'service', args: { device: { kind: 'id', of: 'device' }, to: onOff } },
  'tank-valve': { group: 'service', args: { tank: { kind: 'id', of: 'tank' }, turn: sixteenths } },
  'stand-tank': {
    group: 'service',
    args: { tank: { kind: 'id', of: 'tank' }, way: { kind: 'choice', of: ['upright', 'inverted'] } },
  },
  regulator: {
    group: 'service',
    args: { kPa: { kind: 'whole', unit: 'kPa', min: 0, max: 1600, step: 50 } },
  },
  'inject-oil': {
    group: 'service',
    args: { mL: { kind: 'whole', unit: 'mL', min: 5, max: 120, step: 5 } },
  },
  'convert-port': { group: 'service', args: { port: { kind: 'id', of: 'port' } } },
  'disable-port': { group: 'service', args: { port: { kind: 'id', of: 'port' } } },
  'fill-oil': { group: 'service', args: { kind: oilKind, mL: upTo(500, 'mL', 5, 5) } },
  'renew-seals': { group: 'service', args: {} },
  'fit-cut-out': { group: 'service', args: {} },
  arrange: { group: 'service', args: { what: { kind: 'choice', of: ['recovery'] } } },
  identify: { group: 'service', args: { port: { kind: 'id', of: 'port' } } },
  'test-sealer': { group: 'service', args: { port: { kind: 'id', of: 'port' } } },

  sniff: {
    group: 'search',
    args: {
      at: { kind: 'id', of: 'leak-place' },
      from: { kind: 'choice', of: ['below', 'above'] },
      paceMmPerS: { kind: 'whole', unit: 'mm/s', min: 5, max: 150, step: 5 },
      gapMm: { kind: 'whole', unit: 'mm', min: 1, max: 30, step: 1 },
    },
  },
  soap: { group: 'search', args: { at: { kind: 'id', of: 'leak-place' } } },
  lamp: { group: 'search', args: { at: { kind: 'id', of: 'leak-place' } } },
  'inject-dye': {
    group: 'search',
    args: { mL: { kind: 'whole', unit: 'mL', min: 5, max: 30, step: 5 } },
  },
  'open-loop': { group: 'search', args: { part: { kind: 'id', of: 'loop-place' } } },
  'close-loop': { group: 'search', args: { part: { kind: 'id', of: 'loop-place' } } },

  ask: { group: 'card', args: { about: { kind: 'choice', of: ['converted', 'opened', 'filled', 'used'] } } },
  'note-loop': {
    group: 'card',
    args: { kind: { kind: 'choice', of: ['orifice-tube', 'expansion-valve'] } },
  },
  'note-gas': { group: 'card', args: { gas: { kind: 'choice', of: GASES } } },
  'note-clutch': { group: 'card', args: { doing: { kind: 'choice', of: CLUTCH_DOINGS } } },
  sum: { group: 'card', args: { of: { kind: 'choice', of: SUMS }, amount: upTo(5000, 'g, mL or count') } },
  'note-old': { group: 'card', args: { grams: upTo(5000, 'g'), mL: upTo(1000, 'mL') } },
  decide: {
    group: 'card',
    args: { answer: { kind: 'choice', of: ['charge', 'do-not-charge', 'stop-charging', 'refer'] } },
  },
  diagnose: {
    group: 'card',
    args: { cause: { kind: 'id', of: 'cause' }, sure: { kind: 'choice', of: ['sure', 'likely', 'open'] } },
  },
  replace: { group: 'card', args: { part: { kind: 'id', of: 'replaceable' } } },
  'write-label': { group: 'card', args: { grams: { kind: 'whole', unit: 'g', min: 0, max: 2000, step: 5 } } },
  'label-conversion': {
    group: 'card',
    args: {
      refrigerant: { kind: 'choice', of: ['R-12', 'R-134a', 'R-1234yf'] },
      grams: upTo(5000, 'g'),
      oil: oilKind,
      mL: upTo(1000, 'mL'),
    },
  },
  'hand-over': { group: 'card', args: { told: { kind: 'choice', of: TOLD } } },

  hint: { group: 'session', args: { level: { kind: 'whole', unit: 'level', min: 1, max: 3, step: 1 } } },
  rewind: {
    group: 'session',
    args: { step: { kind: 'whole', unit: 'step', min: 0, max: 100_000_000, step: 1 } },
  },
  begin: { group: 'session', args: {} },
  finish: { group: 'session', args: {} },
} as const satisfies Record<string, CommandSpec>;

export type CommandId = keyof typeof commandSpecs;

/** A command as it stands in a log or a plan. `ids` arguments are one string, ids joined by commas ("" for none). */
export interface Command {
  readonly do: CommandId;
  readonly [arg: string]: string | number;
}

/** What came of a command. A refusal changes nothing and is not logged; its reason is a word id with parameters. */
export type Outcome =
  | { readonly ok: true; readonly events: readonly PlantEvent[] }
  | { readonly ok: false; readonly reason: string; readonly params: Readonly<Record<string, string>> };

/**
 * A thing that happened, as evidence for the record: a command's effect or something the model brought about
 * (a hose caught, a relief opening). `quantity` is in SI with its unit named.
 */
export interface PlantEvent {
  readonly id: string;
  readonly subject?: string;
  readonly quantity?: number;
  readonly unit?: string;
}
