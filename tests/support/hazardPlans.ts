/** For every critical rule a short plan on a small scenario that breaks it alone, and one that comes near and does not. */
import {
  bench,
  CAN,
  COMPACT,
  DRESSED,
  ELECTRIC,
  GAUGES,
  type HazardPlan,
  holding,
  LOW_OPEN,
  letOut,
  PICKUP,
  recovering,
  SEDAN,
} from './hazardCars';
import { lawPlans } from './lawPlans';

const TANKS = { rubric: { use: ['service', 'hazards', 'recoverAndRecharge'] } };
const TANK_TOOLS = { tools: ['charging-tank', 'vacuum-pump', 'micron-gauge', 'recovery-machine'] as const };
const MIXED = { ...SEDAN, faults: [{ fault: 'mixed-refrigerant', severity: 0.6 }] };

export const hazardPlans: readonly HazardPlan[] = [
  {
    rule: 'eyes',
    on: {},
    broken: ['begin', 'wear gloves', 'wear overall', ...LOW_OPEN],
    near: ['begin', 'wear gloves', 'wear overall', ...LOW_OPEN.slice(0, 2), 'uncouple charging'],
  },
  {
    rule: 'aired',
    on: {},
    broken: [...DRESSED, 'door shut', 'engine 800'],
    near: [...DRESSED, 'engine 1500', 'run-on 20 s', 'engine 0', 'door shut', 'run-on 5 s'],
  },
  {
    rule: 'caught',
    on: {},
    broken: [
      ...[...DRESSED, 'cap port-b off', 'couple charging port-b side-middle,belt,side-middle,fender,mat'],
      ...['engine 800', 'run-on 1 s'],
    ],
    near: [
      ...[...DRESSED, 'cap port-b off', 'couple charging port-b side-middle,belt,side-middle,fender,mat'],
      ...['engine 800', 'run-on 0.4 s', 'engine 0', 'run-on 1 s'],
    ],
  },
  {
    rule: 'canOnHigh',
    on: SEDAN,
    broken: [
      ...[...DRESSED, 'cap port-b off', 'couple gauge-high port-b', 'tap can-1 utility', 'can-valve can-1 4'],
      ...['coupler gauge-high open', 'manifold high 1'],
    ],
    near: [
      ...[...DRESSED, 'cap port-b off', 'couple gauge-high port-b', 'tap can-1 utility', 'can-valve can-1 4'],
      ...['coupler gauge-high open', 'run-on 5 s'],
    ],
  },
  {
    rule: 'relief',
    on: {
      ...PICKUP,
      ...holding('R-12', '1600 g'),
      weather: { temperature: '43 degC', humidity: '45%' },
      faults: [{ fault: 'condenser-air-blocked', severity: 1 }],
    },
    broken: [...DRESSED, 'blower 4', 'windows open', 'engine 2500', 'ac on', 'run-on 40 s'],
    near: [
      ...DRESSED,
      'blower 4',
      'windows open',
      'engine 2500',
      'ac on',
      'run-on 10 s',
      'engine 0',
      'run-on 10 s',
    ],
  },
  {
    rule: 'tankOnRunning',
    on: { ...SEDAN, ...TANKS, ...bench(TANK_TOOLS as never) },
    broken: [
      ...[
        ...DRESSED,
        'cap port-b off',
        'couple gauge-high port-b',
        'coupler gauge-high open',
        'manifold high 16',
      ],
      ...['attach charging-tank utility', 'tank-valve charging-tank 1', 'engine 800'],
    ],
    near: [
      ...[
        ...DRESSED,
        'cap port-b off',
        'couple gauge-high port-b',
        'coupler gauge-high open',
        'manifold high 16',
      ],
      ...['attach charging-tank utility', 'tank-valve charging-tank 1', 'manifold high 0', 'engine 800'],
    ],
  },
  {
    rule: 'pumpOnCharge',
    on: { ...SEDAN, ...TANKS, ...bench(TANK_TOOLS as never) },
    broken: [
      ...[...DRESSED, ...GAUGES, 'attach vacuum-pump utility', 'manifold low 16', 'run vacuum-pump on'],
      'run-on 2 s',
    ],
    near: [...DRESSED, ...GAUGES, 'attach vacuum-pump utility', 'run vacuum-pump on', 'run-on 2 s'],
  },
  {
    rule: 'pitGas',
    on: { place: { kind: 'garage-with-pit' } },
    broken: [...DRESSED, ...letOut('0.7 s'), 'pit in', 'run-on 2 s'],
    near: [...DRESSED, ...letOut('0.2 s'), 'pit in', 'run-on 2 s'],
  },
  {
    rule: 'flameGas',
    on: { found: { heater: 'on' } },
    broken: [...DRESSED, 'door shut', ...letOut('0.5 s'), 'run-on 40 s'],
    near: [...DRESSED, 'door shut', 'heater off', ...letOut('0.5 s'), 'run-on 40 s'],
  },
  {
    rule: 'sparkGas',
    on: { ...COMPACT, ...bench({ tools: ['recovery-machine'] }) },
    broken: [...DRESSED, ...recovering('5 s')],
    near: [...DRESSED, ...recovering('5 s')],
    nearOn: { ...COMPACT, ...bench({ tools: ['recovery-machine'], rated: true }) },
  },
  {
    rule: 'wrongGas',
    on: bench({ tools: ['oxygen'] }),
    broken: [...DRESSED, ...LOW_OPEN, 'attach oxygen charging', 'run oxygen on', 'run-on 2 s'],
    near: [...DRESSED, ...LOW_OPEN.slice(0, 2), 'attach oxygen charging', 'run oxygen on', 'run-on 2 s'],
  },
  {
    rule: 'forcedFitting',
    on: { ...PICKUP, ...bench({ tools: ['loose-adapter'], refrigerant: 'R-134a' }) },
    broken: [...DRESSED, 'adapter gauge-low on', ...GAUGES, 'run-on 2 s'],
    near: [...DRESSED, 'adapter gauge-low on', ...GAUGES.slice(0, 2), 'uncouple gauge-low'],
  },
  {
    rule: 'highVoltage',
    on: ELECTRIC,
    broken: [...DRESSED, 'isolate on'],
    near: [...DRESSED, 'isolate on', 'isolate off'],
    nearOn: { ...ELECTRIC, person: 'high-voltage-trained' },
  },
  {
    rule: 'highVoltage',
    on: { ...ELECTRIC, person: 'high-voltage-trained' },
    broken: [...DRESSED, 'isolate on', 'run-on 20 s', 'open-loop compressor'],
    near: [...DRESSED, 'isolate on', 'run-on 270 s', 'open-loop compressor'],
  },
  {
    rule: 'oilInsulates',
    on: { ...ELECTRIC, ...bench({ tools: ['oil-injector'], oil: 'PAG' }) },
    broken: [
      ...[...DRESSED, 'cap port-a off', 'couple charging port-a', 'coupler charging open'],
      ...['attach oil-injector charging', 'inject-oil 5', 'run-on 2 s'],
    ],
    near: [
      ...[...DRESSED, 'cap port-a off', 'couple charging port-a', 'coupler charging open'],
      ...['attach oil-injector charging', 'inject-oil 5', 'run-on 2 s'],
    ],
    nearOn: { ...ELECTRIC, ...bench({ tools: ['oil-injector'], oil: 'POE' }) },
  },
  {
    rule: 'canBurst',
    on: bench({ cans: [{ ...CAN, net: '90 g' }] }),
    broken: [...DRESSED, 'place can-1 hot-water', 'run-on 4 min'],
    near: [...DRESSED, 'place can-1 hot-water', 'run-on 1 min', 'place can-1 mat', 'run-on 10 s'],
  },
  {
    rule: 'tankOverfilled',
    on: { ...SEDAN, ...bench({ tools: ['recovery-machine'], recoveryTank: '11.9 kg' }) },
    broken: [...DRESSED, 'bypass tank-limit on', ...recovering('1 min')],
    near: [...DRESSED, 'bypass tank-limit on', ...recovering('20 s')],
  },
  {
    rule: 'cleanTank',
    on: { ...MIXED, ...bench({ tools: ['recovery-machine'] }) },
    broken: [...DRESSED, ...recovering('1 min')],
    // Asked the identifier first, which says that it is one gas.
    near: [
      ...[...DRESSED, 'cap port-a off', 'identify port-a', 'run-on 80 s'],
      ...recovering('1 min').slice(1),
    ],
    nearOn: { ...SEDAN, ...bench({ tools: ['recovery-machine', 'identifier'] }) },
  },
  {
    rule: 'gasMixed',
    on: MIXED,
    broken: [
      ...DRESSED,
      'cap port-a off',
      'couple charging port-a',
      'tap can-1 charging',
      'can-valve can-1 4',
      'coupler charging open',
      'run-on 2 s',
    ],
    near: [
      ...DRESSED,
      'cap port-a off',
      'couple charging port-a',
      'tap can-1 charging',
      'can-valve can-1 4',
      'run-on 2 s',
    ],
  },
  {
    rule: 'bridgedHigh',
    on: {
      ...SEDAN,
      faults: [{ fault: 'condenser-fan-dead', severity: 1 }],
      weather: { temperature: '43 degC', humidity: '45%' },
    },
    broken: [
      ...DRESSED,
      'bypass high-switch on',
      'blower 4',
      'windows open',
      'engine 1500',
      'ac on',
      'run-on 30 s',
    ],
    near: [
      ...DRESSED,
      'bypass high-switch on',
      'blower 4',
      'windows open',
      'engine 1500',
      'ac on',
      'run-on 10 s',
      'engine 0',
    ],
  },
  {
    rule: 'fanHands',
    on: {
      ...SEDAN,
      ...holding('R-134a', '720 g', 'soaked'),
      weather: { temperature: '45 degC', humidity: '30%' },
    },
    broken: [...DRESSED, 'engine 900', 'run-on 2 min', 'engine 0', 'run-on 1 min', 'replace fan'],
    near: [...DRESSED, 'engine 900', 'run-on 2 min', 'engine 0', 'run-on 2 s', 'replace fan'],
  },
  {
    rule: 'looseClothes',
    on: {},
    broken: ['begin', 'wear goggles', 'door open', 'engine 800', 'cap port-b off'],
    near: ['begin', 'wear goggles', 'door open', 'engine 800', 'wear overall', 'cap port-b off'],
  },
  {
    rule: 'blownOff',
    on: {},
    broken: [...DRESSED, ...letOut('1 s')],
    near: [...DRESSED, ...letOut('0.6 s')],
  },
  ...lawPlans(),
];
