import { describe, expect, test } from 'vitest';
import { layoutOf } from '../../src/layout/layouts';
import { type CautionFacts, cautionBefore } from '../../src/panels/cautions';
import type { Command } from '../../src/plant/commandSpecs';
import type { SessionView } from '../../src/session/corePort';

const hose = {
  id: 'charging',
  port: 'port-b',
  couplerOpen: true,
  route: ['side-middle', 'fender', 'mat'],
  caught: false,
  couplerM: 0.013,
};
const FITTING = { capLetter: null, covered: null, diameterM: 0.013 } as const;
const can = { id: 'can-1', onto: 'charging', valveSixteenths: 0, tiltDeg: 0, place: 'scale' } as const;
const port = { id: 'port-b', capOn: false, traced: false, judged: null, hose: 'charging', ...FITTING };

function facts(part: Partial<SessionView> = {}, rest: Partial<CautionFacts> = {}): CautionFacts {
  const view = {
    worn: ['goggles', 'gloves', 'overall'],
    ports: [port],
    hoses: [hose],
    cans: [can],
    ...part,
  } as SessionView;
  return {
    view,
    layout: layoutOf('hatchback'),
    engineRuns: false,
    doorOpen: true,
    highValveOpen: false,
    hoodOpen: true,
    heaterBurns: false,
    isElectric: false,
    isIsolated: false,
    gasKnown: false,
    sealerKnown: false,
    tools: [],
    hubStands: false,
    ...rest,
  };
}

const open: Command = { do: 'can-valve', can: 'can-1', turn: 4 };

describe('a caution comes', () => {
  test('before a can is opened on a port that nobody has shown to be low', () => {
    expect(cautionBefore(open, facts())).toEqual({
      id: 'whichPort',
      safe: [{ do: 'trace', port: 'port-b' }],
    });
  });

  test('before an engine starts with a hose where something turns, or with the door shut', () => {
    const start: Command = { do: 'engine', rpm: 800 };
    expect(
      cautionBefore(start, facts({ hoses: [{ ...hose, route: ['side-middle', 'fan', 'nose'] }] }))?.id,
    ).toBe('hoseInZone');
    expect(cautionBefore(start, facts({}, { doorOpen: false }))?.id).toBe('doorStart');
  });

  test('before the door is shut on a running engine', () => {
    expect(cautionBefore({ do: 'door', to: 'shut' }, facts({}, { engineRuns: true }))?.id).toBe('doorShut');
  });

  test('before refrigerant is touched without goggles, with gloves put on too where they are missing', () => {
    expect(cautionBefore({ do: 'uncouple', hose: 'charging' }, facts({ worn: [] }))).toEqual({
      id: 'goggles',
      safe: [
        { do: 'wear', item: 'goggles' },
        { do: 'wear', item: 'gloves' },
      ],
    });
  });

  test('before a can on the middle hose is joined to the high side, from either end', () => {
    const middle = { ...can, onto: 'utility' };
    expect(cautionBefore(open, facts({ cans: [middle] }, { highValveOpen: true }))?.id).toBe('highOpen');
    const high: Command = { do: 'manifold', side: 'high', turn: 8 };
    expect(cautionBefore(high, facts({ cans: [{ ...middle, valveSixteenths: 3 }] }))?.id).toBe('canOpen');
  });
});

describe('a caution of the place comes', () => {
  test.each([
    ['heater', { do: 'open-loop', part: 'suction' }, { heaterBurns: true }],
    ['hotWater', { do: 'place', can: 'can-1', at: 'hot-water' }, {}],
    ['strongGas', { do: 'run', device: 'oxygen', to: 'on' }, {}],
    ['bridge', { do: 'bypass', what: 'high-switch', to: 'on' }, {}],
    ['overfill', { do: 'bypass', what: 'tank-limit', to: 'on' }, {}],
    ['adapter', { do: 'adapter', hose: 'gauge-low', to: 'on' }, {}],
    ['pit', { do: 'pit', to: 'in' }, {}],
    ['plug', { do: 'isolate', to: 'on' }, { isElectric: true }],
    ['live', { do: 'replace', part: 'compressor' }, { isElectric: true }],
    ['unknownGas', { do: 'run', device: 'recovery-machine', to: 'on' }, {}],
    [
      'sealer',
      { do: 'run', device: 'recovery-machine', to: 'on' },
      { gasKnown: true, tools: ['sealer-test'] },
    ],
    ['fan', { do: 'replace', part: 'fan2' }, {}],
    ['letOut', { do: 'open-loop', part: 'suction' }, {}],
    ['wrongOil', { do: 'fill-oil', kind: 'PAG', mL: 30 }, { isElectric: true }],
  ] as const)('%s', (id, command, rest) => {
    expect(cautionBefore(command as Command, facts({}, rest))?.id).toBe(id);
  });

  test('before a can is opened on a gas nobody has looked at, and on a hub that stands', () => {
    const low = facts({ ports: [{ ...port, traced: true }] });
    expect(cautionBefore(open, { ...low, tools: ['identifier'] })?.id).toBe('canOnUnknown');
    expect(cautionBefore(open, { ...low, hubStands: true })?.id).toBe('standing');
    expect(cautionBefore(open, { ...low, tools: ['identifier'], gasKnown: true })).toBeNull();
  });

  test('before a start with a hose on the exhaust, told as hot and not as turning', () => {
    const onHot = facts({ hoses: [{ ...hose, route: ['side-middle', 'exhaust'] }] });
    expect(cautionBefore({ do: 'engine', rpm: 800 }, onHot)?.id).toBe('hoseOnHot');
  });

  test('again for the next hazard once one was answered', () => {
    const bare = facts({ worn: [] });
    const undo: Command = { do: 'open-loop', part: 'suction' };
    expect(cautionBefore(undo, bare)?.id).toBe('goggles');
    expect(cautionBefore(undo, bare, (id) => id === 'goggles')?.id).toBe('letOut');
  });

  test('before a start under an open hood in loose clothes', () => {
    const start: Command = { do: 'engine', rpm: 800 };
    const loose = facts({ worn: ['goggles', 'gloves'] });
    expect(cautionBefore(start, loose)?.id).toBe('looseClothes');
    expect(cautionBefore(start, { ...loose, hoodOpen: false })).toBeNull();
  });
});

describe('no caution comes', () => {
  test.each([
    ['bypass', { do: 'bypass', what: 'low-switch', to: 'off' }, {}],
    ['isolate', { do: 'isolate', to: 'on' }, {}],
    ['replace', { do: 'replace', part: 'compressor' }, { isElectric: true, isIsolated: true }],
    ['run', { do: 'run', device: 'recovery-machine', to: 'on' }, { gasKnown: true }],
  ] as const)('of the place for a %s that is in order', (_, command, rest) => {
    expect(cautionBefore(command as Command, facts({}, rest))).toBeNull();
  });

  test.each([
    ['once the line was followed', open, facts({ ports: [{ ...port, traced: true }] })],
    ['once the port was called low', open, facts({ ports: [{ ...port, judged: 'low' }] })],
    ['for turning a valve that is open already', open, facts({ cans: [{ ...can, valveSixteenths: 2 }] })],
    ['for shutting it', { do: 'can-valve', can: 'can-1', turn: 0 } as Command, facts()],
    [
      'for stopping an engine',
      { do: 'engine', rpm: 0 } as Command,
      facts({}, { engineRuns: true, doorOpen: false }),
    ],
    ['for a start in good order', { do: 'engine', rpm: 800 } as Command, facts()],
  ] as const)('%s', (_, command, given) => {
    expect(cautionBefore(command, given)).toBeNull();
  });
});
