/**
 * The smallest honest plant, for tests of the session alone: one bottle of gas that warms towards the room and leaks,
 * a can that can be let into it, one hose with a gauge. Ideal gas, p V = m R T; explicit Euler at 20 ms.
 * It answers to the same commands and signals as a car, so far as it has the parts.
 */

import { hashFloats, hashText } from '../../src/numerics/hash';
import { keyedNormal } from '../../src/numerics/keyedRandom';
import type { Command, IdSet, Outcome, PlantEvent } from '../../src/plant/commandSpecs';
import type { Books, Plant, PlantSnapshot } from '../../src/plant/plantPort';
import type { SignalKind, SignalSpec } from '../../src/plant/signalTypes';

const STEP_S = 0.02;
const ATMOSPHERE_PA = 101_325;
const GAS_CONSTANT = 81.5; // J/(kg K), R-134a
const VOLUME_M3 = 0.0035;
const ROOM_K = 305;
const LABEL_KG = 0.1;
const SWITCH_PA = 120_000;

export interface OnePlantOptions {
  readonly seed?: number;
  readonly leakKgPerSPerPa?: number;
  readonly startKg?: number;
}

interface Desk {
  goggles: boolean;
  gloves: boolean;
  rpm: number;
  ac: boolean;
  doorOpen: boolean;
  caps: Record<string, boolean>;
  port: string | null;
  open: boolean;
  route: string;
  caught: boolean;
  tapped: boolean;
  turn: number;
  air: string | null;
  replaced: string[];
}

type Reader = readonly [id: string, unit: string, kind: SignalKind, read: () => number];

export function onePlant({ seed = 1, leakKgPerSPerPa = 1e-12, startKg = 0.01 }: OnePlantOptions = {}): Plant {
  const state = Float64Array.of(startKg, 300, 0.34, 0, 0);
  let step = 0;
  let desk: Desk = {
    goggles: false,
    gloves: false,
    rpm: 0,
    ac: false,
    doorOpen: false,
    caps: { 'port-a': true, 'port-b': true },
    port: null,
    open: false,
    route: '',
    caught: false,
    tapped: false,
    turn: 0,
    air: null,
    replaced: [],
  };
  const offsetPa = 1500 * keyedNormal(seed, 'offset', 'charging-gauge', 0);
  const pressurePa = (): number => (state[0] * GAS_CONSTANT * state[1]) / VOLUME_M3;
  const gaugePa = (): number => pressurePa() - ATMOSPHERE_PA;
  const bool = (value: boolean): number => (value ? 1 : 0);
  const readers: Reader[] = [
    [
      'chargingGauge.gaugePressurePa',
      'Pa',
      'reading',
      () => (desk.port && desk.open ? Math.round((gaugePa() + offsetPa) / 1000) * 1000 : NaN),
    ],
    [
      'airThermometer.temperatureK',
      'K',
      'reading',
      () => (desk.air === null ? NaN : Math.round(10 * ventK()) / 10),
    ],
    ['scale.massKg', 'kg', 'reading', () => Math.round((state[2] + 0.11) * 1000) / 1000],
    ['engine.rpm', 'rpm', 'cue', () => desk.rpm],
    ['clutch.turning', 'bool', 'cue', () => state[4]],
    ['ac.on', 'bool', 'control', () => bool(desk.ac)],
    ['door.open', 'bool', 'control', () => bool(desk.doorOpen)],
    ['gear.goggles', 'bool', 'control', () => bool(desk.goggles)],
    ['gear.gloves', 'bool', 'control', () => bool(desk.gloves)],
    ['cap.port-a.on', 'bool', 'control', () => bool(desk.caps['port-a'])],
    ['cap.port-b.on', 'bool', 'control', () => bool(desk.caps['port-b'])],
    ['hose.charging.coupled', 'bool', 'control', () => bool(desk.port !== null)],
    ['hose.charging.couplerOpen', 'bool', 'control', () => bool(desk.open)],
    ['hose.charging.caught', 'bool', 'cue', () => bool(desk.caught)],
    ['can.can-1.valveSixteenths', '1', 'control', () => desk.turn],
    ['can.can-1.tapped', 'bool', 'control', () => bool(desk.tapped)],
    ['can.can-1.tiltDeg', '1', 'control', () => 0],
    ['loop.massKg', 'kg', 'truth', () => state[0]],
    ['label.massKg', 'kg', 'truth', () => LABEL_KG],
    ['lowSide.pressurePa', 'Pa', 'truth', pressurePa],
    ['lowSide.gaugePressurePa', 'Pa', 'truth', gaugePa],
    ['highSide.gaugePressurePa', 'Pa', 'truth', gaugePa],
    ['vent.temperatureK', 'K', 'truth', () => ventK()],
    ['vented.kg', 'kg', 'truth', () => state[3]],
    ['cans.netIntoLoopKg', 'kg', 'truth', () => 0.34 - state[2]],
    ['compressor.sluggedKg', 'kg', 'truth', () => 0],
  ];
  const ventK = (): number => (state[4] === 1 ? 281 : ROOM_K);
  const signals: SignalSpec[] = readers.map(([id, unit, kind]) => ({ id, unit, kind }));
  const indexOf = new Map(signals.map(({ id }, index) => [id, index]));
  const happened: PlantEvent[] = [];
  const done = (...events: PlantEvent[]): Outcome => ({ ok: true, events });
  const refuse = (reason: string): Outcome => ({ ok: false, reason, params: {} });

  const advance = (): readonly PlantEvent[] => {
    happened.length = 0;
    state[1] += (ROOM_K - state[1]) * 0.0002 * STEP_S * (desk.rpm > 0 ? 5 : 1);
    const open = desk.tapped && desk.turn > 0 && desk.port !== null && desk.open;
    const fed = open ? Math.min(state[2], 2.5e-5 * desk.turn * STEP_S) : 0;
    state[2] -= fed;
    state[0] += fed;
    const lost = Math.min(state[0], leakKgPerSPerPa * Math.max(0, gaugePa()) * STEP_S);
    state[0] -= lost;
    state[3] += lost;
    const turning = bool(desk.rpm > 0 && desk.ac && gaugePa() > SWITCH_PA);
    if (turning !== state[4]) happened.push({ id: turning ? 'clutch-in' : 'clutch-out' });
    state[4] = turning;
    if (desk.rpm > 0 && desk.route.includes('fan') && !desk.caught) {
      desk.caught = true;
      happened.push({ id: 'hose-caught', subject: 'charging' });
    }
    step += 1;
    return happened;
  };

  const apply = (command: Command): Outcome => {
    const text = (name: string): string => String(command[name]);
    const number = (name: string): number => Number(command[name]);
    switch (command.do) {
      case 'wear':
      case 'take-off': {
        desk[text('item') as 'goggles' | 'gloves'] = command.do === 'wear';
        return done({ id: command.do === 'wear' ? 'worn' : 'removed', subject: text('item') });
      }
      case 'cap': {
        if (text('to') === 'on' && desk.port === text('port')) return refuse('refused.hoseThere');
        desk.caps[text('port')] = text('to') === 'on';
        return done({ id: text('to') === 'on' ? 'cap-on' : 'cap-off', subject: text('port') });
      }
      case 'couple': {
        if (text('port') !== 'port-b') return refuse('refused.doesNotFit');
        if (desk.caps['port-b'] || desk.port !== null) return refuse('refused.capOn');
        desk.port = text('port');
        desk.route = text('route');
        return done({ id: 'coupled', subject: text('hose') });
      }
      case 'coupler': {
        if (desk.port === null) return refuse('refused.notCoupled');
        desk.open = text('to') === 'open';
        return done({ id: desk.open ? 'coupler-opened' : 'coupler-shut', subject: text('hose') });
      }
      case 'uncouple': {
        if (desk.port === null) return refuse('refused.notCoupled');
        desk.port = null;
        desk.open = false;
        return done({ id: 'uncoupled', subject: text('hose') });
      }
      case 'engine': {
        const before = desk.rpm;
        desk.rpm = number('rpm');
        if (before > 0 === desk.rpm > 0) return done();
        return done({ id: desk.rpm > 0 ? 'engine-started' : 'engine-stopped' });
      }
      case 'ac':
        desk.ac = text('to') === 'on';
        return done();
      case 'door':
        desk.doorOpen = text('to') === 'open';
        return done();
      case 'tap':
        desk.tapped = true;
        return done({ id: 'can-tapped', subject: text('can') });
      case 'can-valve': {
        if (!desk.tapped) return refuse('refused.notTapped');
        desk.turn = number('turn');
        const opened: PlantEvent = { id: desk.turn > 0 ? 'can-opened' : 'can-shut', subject: text('can') };
        const path = desk.turn > 0 && desk.open;
        return done(opened, ...(path ? [{ id: 'can-open-to', subject: 'low' }] : []));
      }
      case 'probe-air':
        desk.air = text('at');
        return done();
      case 'read-sheet':
        return done({ id: 'read', subject: text('sheet') });
      case 'look':
        return done({ id: 'looked', subject: text('at') });
      case 'trace':
        return done({ id: 'traced', subject: text('port') });
      case 'judge-port':
        return done({ id: 'judged', subject: text('port') });
      case 'decide':
        return done({ id: 'decided', subject: text('answer') });
      case 'diagnose':
        return done({ id: 'diagnosed', subject: text('cause') });
      case 'replace':
        desk.replaced.push(text('part'));
        return done({ id: 'replaced', subject: text('part') });
      case 'write-label':
        return done({ id: 'labelled', quantity: number('grams') / 1000, unit: 'kg' });
      case 'note-reading': {
        const channel = text('channel');
        const id =
          channel === 'air'
            ? 'airThermometer.temperatureK'
            : channel === 'scale'
              ? 'scale.massKg'
              : 'chargingGauge.gaugePressurePa';
        const index = indexOf.get(id) as number;
        const quantity = readers[index][3]();
        if (Number.isNaN(quantity)) return refuse('refused.nothingToRead');
        return done({ id: 'noted', subject: channel, quantity, unit: signals[index].unit });
      }
      default:
        return refuse('refused.notHere');
    }
  };

  const choices: Partial<Record<IdSet, readonly string[]>> = {
    port: ['port-a', 'port-b'],
    part: ['bottle', 'fan'],
    hose: ['charging'],
    can: ['can-1'],
    'can-inlet': ['charging'],
    gauge: ['charging'],
    'air-place': ['centre-vent'],
    zone: ['mat', 'fan'],
    channel: ['charging-gauge', 'air', 'scale'],
    sheet: ['label'],
    cause: ['leak', 'healthy'],
    replaceable: ['fan'],
  };
  return {
    get step() {
      return step;
    },
    signals,
    signalIndex(id) {
      const index = indexOf.get(id);
      if (index === undefined) throw new RangeError(`no signal "${id}"`);
      return index;
    },
    value: (index) => readers[index][3](),
    advance,
    apply,
    choices: (set) => choices[set] ?? [],
    snapshot: (): PlantSnapshot => ({ step, numbers: state.slice(), structure: JSON.stringify(desk) }),
    restore(snapshot) {
      step = snapshot.step;
      state.set(snapshot.numbers);
      desk = JSON.parse(snapshot.structure) as Desk;
    },
    stateHash: () => hashText(hashFloats(state) + step + JSON.stringify(desk)),
    books: (): Books => ({
      refrigerantKg: state[0] + state[2] + state[3],
      massErrorRelative: (state[0] + state[2] + state[3]) / (startKg + 0.34) - 1,
      energyErrorRelative: 0,
      massByVesselKg: { bottle: state[0], 'can-1': state[2] },
      ventedKg: state[3],
    }),
  };
}
