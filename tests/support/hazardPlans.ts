/** For every critical rule of safety a short plan on a small scenario that breaks it alone, and one that comes near and does not. */
import type { ScenarioData } from '../../shared/schema/scenario';
import { rubrics, scenarioById } from '../../src/session/scenario/library';
import { type Scenario, scenarioOf } from '../../src/session/scenario/scenario';

export interface HazardPlan {
  readonly rule: string;
  readonly on: Partial<ScenarioData>;
  readonly broken: readonly string[];
  /** What comes near; on another car where `nearOn` says so. */
  readonly near: readonly string[];
  readonly nearOn?: Partial<ScenarioData>;
  /** What no place allows the one without the other. */
  readonly also?: readonly string[];
}

const CAN = { id: 'can-1', net: '340 g', printed: '369 g', tare: '110 g' };
const HOSES = ['charging', 'gauge-set'] as const;
const BENCH = { hoses: [...HOSES], cans: [CAN] };
const bench = (more: Partial<ScenarioData['bench']>) => ({ bench: { ...BENCH, ...more } });
const holding = (
  refrigerant: 'R-134a' | 'R-12' | 'R-1234yf',
  charge: string,
  state: 'equalised' | 'soaked' = 'equalised',
) => ({
  contents: { refrigerant, charge, state, history: 'Invented.' },
});
const SEDAN = { vehicle: 'sedan', ...holding('R-134a', '720 g') } as const;
const PICKUP = { vehicle: 'pickup', ...holding('R-12', '1000 g') } as const;
const COMPACT = { vehicle: 'compact', ...holding('R-1234yf', '450 g') } as const;
const ELECTRIC = { vehicle: 'electric', ...holding('R-1234yf', '530 g') } as const;

/** A sound hatchback in a garage of the usual size, and a person who is trained for gas that burns. */
export function hazardScenario(on: Partial<ScenarioData>): Scenario {
  const { data } = scenarioById('warm-at-the-lights');
  const { varies: _, ...rest } = data;
  return scenarioOf(
    {
      ...rest,
      id: 'hazard',
      vehicle: 'hatchback',
      ...holding('R-134a', '480 g'),
      weather: { temperature: '22 degC', humidity: '45%' },
      person: 'certified',
      faults: [],
      papers: [],
      bench: BENCH,
      rubric: { use: ['service', 'hazards'] },
      ...on,
    },
    rubrics,
  );
}

const DRESSED = ['begin', 'wear goggles', 'wear gloves', 'wear overall', 'door open'];
const LOW_OPEN = ['cap port-b off', 'couple charging port-b', 'coupler charging open'];
/** Low and high port of the cars with two ports: a is low but on the hatchback. */
const GAUGES = ['cap port-a off', 'couple gauge-low port-a', 'coupler gauge-low open'];
/** Undone under pressure and done up again. */
const letOut = (time: string): string[] => ['open-loop suction', `run-on ${time}`, 'close-loop suction'];
const recovering = (time: string): string[] => [
  ...GAUGES,
  ...['manifold low 16', 'attach recovery-machine utility', 'run recovery-machine on', `run-on ${time}`],
];
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
    broken: [...DRESSED, 'adapter gauge-low on', ...GAUGES],
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
    near: [...DRESSED, ...recovering('1 min')],
    nearOn: { ...SEDAN, ...bench({ tools: ['recovery-machine'] }) },
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

/** The law: the same deed where it is forbidden and where it is not. */
function lawPlans(): HazardPlan[] {
  const use = { rubric: { use: ['service', 'hazards', 'lawful'] } };
  const feed = [...LOW_OPEN.slice(0, 2), 'tap can-1 charging', LOW_OPEN[2], 'can-valve can-1 1'];
  const feedA = feed.map((line) => line.replace('port-b', 'port-a'));
  const empty = { contents: { ...holding('R-134a', '480 g').contents, state: 'evacuated' as const } };
  const in_ = (jurisdiction: ScenarioData['jurisdiction'], person: ScenarioData['person']) => ({
    ...use,
    jurisdiction,
    person,
  });
  const leaking = { faults: [{ fault: 'leak-condenser', severity: 0.6 }] };
  const recoverer = { ...SEDAN, ...bench({ tools: ['recovery-machine'] as const as never }) };
  const converted = {
    ...{ ...PICKUP, contents: { ...PICKUP.contents, state: 'evacuated' as const } },
    ...{ ...bench({ refrigerant: 'R-134a' }), found: { converted: true } },
  };
  const otherGas = { ...empty, ...bench({ refrigerant: 'R-1234yf', tools: ['loose-adapter'] }) };
  const adapted = [...DRESSED, 'adapter charging on', ...feed];
  return [
    {
      rule: 'lawService',
      ...{ on: in_('australia', 'owner'), broken: [...DRESSED, ...LOW_OPEN] },
      ...{ nearOn: in_('united-states', 'owner'), near: [...DRESSED, ...LOW_OPEN] },
    },
    {
      rule: 'lawCharge',
      ...{ on: { ...empty, ...in_('european-union', 'owner') }, broken: [...DRESSED, ...feed] },
      ...{ nearOn: { ...empty, ...in_('european-union', 'certified') }, near: [...DRESSED, ...feed] },
    },
    {
      rule: 'lawTopUp',
      ...{ on: in_('australia', 'certified'), broken: [...DRESSED, ...feed] },
      ...{ nearOn: { ...empty, ...in_('australia', 'certified') }, near: [...DRESSED, ...feed] },
    },
    {
      rule: 'lawLeakFilled',
      ...{ on: { ...leaking, ...in_('united-kingdom', 'certified') }, broken: [...DRESSED, ...feed] },
      ...{ nearOn: in_('united-kingdom', 'certified'), near: [...DRESSED, ...feed] },
    },
    {
      rule: 'lawRecover',
      ...{
        on: { ...recoverer, ...in_('united-states', 'owner') },
        broken: [...DRESSED, ...recovering('1 s')],
      },
      ...{
        nearOn: { ...recoverer, ...in_('united-states', 'certified') },
        near: [...DRESSED, ...recovering('1 s')],
      },
    },
    {
      rule: 'lawOldGas',
      ...{ on: { ...PICKUP, ...in_('united-states', 'owner') }, broken: [...DRESSED, ...feedA] },
      ...{ nearOn: { ...PICKUP, ...in_('united-states', 'certified') }, near: [...DRESSED, ...feedA] },
    },
    {
      ...{ rule: 'lawConvert', also: ['lawCharge'] },
      ...{ on: { ...converted, ...in_('european-union', 'owner') }, broken: [...DRESSED, ...feedA] },
      ...{ nearOn: { ...converted, ...in_('united-states', 'owner') }, near: [...DRESSED, ...feedA] },
    },
    {
      ...{ rule: 'lawOtherGas', also: ['forcedFitting'] },
      ...{ on: { ...otherGas, ...in_('united-states', 'certified') }, broken: adapted },
      near: adapted.slice(0, -2),
    },
    {
      rule: 'beyondTraining',
      ...{ on: { ...ELECTRIC, ...use }, broken: [...DRESSED, ...GAUGES] },
      near: [...DRESSED, ...GAUGES.slice(0, 2), 'uncouple gauge-low'],
    },
  ];
}
