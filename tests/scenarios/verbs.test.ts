/** The verbs about scenarios, as a shell sees them. */
import { describe, expect, it } from 'vitest';
import { dispatch } from '../../src/cli/dispatch';
import { type Io, processIo, toJson } from '../../src/cli/io';
import type { Verb } from '../../src/cli/verb';
import check from '../../src/cli/verbs/check';
import list from '../../src/cli/verbs/list';
import play from '../../src/cli/verbs/play';
import replay from '../../src/cli/verbs/replay';
import sit from '../../src/cli/verbs/sit';
import states from '../../src/cli/verbs/states';
import { scenarios } from '../../src/session/scenario/library';

const verbs: readonly Verb[] = [check, list, play, replay, sit, states];

interface Called {
  readonly code: number;
  readonly out: string;
  readonly notes: string;
  readonly files: ReadonlyMap<string, string>;
}

async function call(
  args: readonly string[],
  files: Record<string, string> = {},
  input = '',
): Promise<Called> {
  const held = new Map(Object.entries(files));
  let out = '';
  let notes = '';
  const io: Io = {
    ...processIo,
    json: (value) => {
      out += `${toJson(value, 2)}\n`;
    },
    line: (value) => {
      out += `${toJson(value, 0)}\n`;
    },
    text: (text) => {
      out += text;
    },
    note: (text) => {
      notes += `${text}\n`;
    },
    async *inputLines() {
      yield* input.split('\n');
    },
    readFile: (file) => held.get(file) ?? processIo.readFile(file),
    writeFile: (file, content) => {
      held.set(file, String(content));
    },
  };
  const code = await dispatch(verbs, args, io);
  return { code, out, notes, files: held };
}

interface Listed {
  readonly id: string;
  readonly vehicle?: string;
  readonly faults?: readonly string[];
  readonly args?: readonly {
    readonly name: string;
    readonly kind: string;
    readonly may?: Readonly<Record<string, readonly string[]>>;
  }[];
}

const SCENARIO = 'warm-at-the-lights';

describe('play', () => {
  it('prints the same bytes each time, in the shape that is promised', async () => {
    const args = ['play', SCENARIO, '--plan', 'careless', '--json'];
    const [first, second] = [await call(args), await call(args)];
    expect(first).toMatchObject({ code: 0 });
    expect(second.out).toBe(first.out);
    const printed = JSON.parse(first.out);
    expect(Object.keys(printed)).toEqual([
      ...[
        'score',
        'reported',
        'passed',
        'domains',
        'critical',
        'findings',
        'logHash',
        'stateHash',
        'minutes',
      ],
    ]);
    expect(Object.keys(printed.findings[0])).toEqual(['rule', 'step', 'severity', 'sentence']);
    expect(printed).toMatchObject({ passed: false, minutes: 5 });
  });

  it('takes a plan from a file, and says which line was refused', async () => {
    const lines = 'schema: 1\nlines: [begin, uncouple charging, { run-on: 10 s }, finish]\n';
    const { code, out, notes } = await call(['play', SCENARIO, '--plan', 'p.yaml'], { 'p.yaml': lines });
    expect(code).toBe(0);
    expect(JSON.parse(out).minutes).toBeCloseTo(1 / 6, 12);
    expect(notes).toBe('line 2 was refused: This coupler is not on a port.\n');
  });

  it('is bad usage for what is not there', async () => {
    expect(await call(['play', 'warm-at-the-light', '--plan', 'nothing'])).toMatchObject({
      code: 2,
      out: '',
    });
    expect((await call(['play', 'warm-at-the-light', '--plan', 'nothing'])).notes).toContain(
      'did you mean "warm-at-the-lights"?',
    );
    expect(await call(['play', SCENARIO, '--plan', 'nothing', '--seed', 'x'])).toMatchObject({ code: 2 });
    expect(await call(['play', SCENARIO, '--plan', 'nothing', '--mode', 'explore'])).toMatchObject({
      code: 2,
      notes: '--mode is "explore"; it can be practice, assessed.\n',
    });
    expect(
      await call(['play', SCENARIO, '--plan', 'p.yaml'], { 'p.yaml': 'schema: 1\nlinse: []\n' }),
    ).toMatchObject({
      code: 2,
      notes: expect.stringContaining('p.yaml:2:1 SCN001 unknown key "linse"; did you mean "lines"?'),
    });
  });
});

describe('replay', () => {
  it('holds for what play saved, and not for a score that was changed', async () => {
    const saved = await call(['play', SCENARIO, '--plan', 'nothing', '--save', 's.json']);
    const file = saved.files.get('s.json') as string;
    const [held] = JSON.parse((await call(['replay', 's.json'], { 's.json': file })).out);
    expect(held).toMatchObject({ holds: true, sameEngine: true, sameScenario: true });
    const forged = JSON.parse(file);
    forged.last.score = 100;
    const replayed = await call(['replay', 's.json'], { 's.json': JSON.stringify(forged) });
    expect(replayed.code).toBe(1);
    expect(JSON.parse(replayed.out)[0]).toMatchObject({ holds: false, now: { score: held.stored.score } });
  });

  it('shows a session of another engine with the score it had, and does not run it', async () => {
    const saved = await call(['play', SCENARIO, '--plan', 'nothing', '--save', 's.json']);
    const other = JSON.parse(saved.files.get('s.json') as string);
    other.log.engineHash = '0123456789abcdef';
    const replayed = await call(['replay', 's.json'], { 's.json': JSON.stringify(other) });
    expect(JSON.parse(replayed.out)[0]).toMatchObject({ sameEngine: false, holds: false, now: null });
  });

  it('does not hold for a log with a command that could not have been given, and names it', async () => {
    const saved = await call(['play', SCENARIO, '--plan', 'nothing', '--save', 's.json']);
    const file = saved.files.get('s.json') as string;
    const wear = { step: 5, command: { do: 'wear', item: 'goggles' } };
    const forgeries: readonly (readonly [insert: object, at: number, command: number])[] = [
      [{ step: 0, command: { do: 'waer', item: 'goggles' } }, 1, 2],
      [{ step: 0, command: { do: 'engine', rpm: 9000 } }, 1, 2],
      [{ step: 0, command: { do: 'uncouple', hose: 'charging' } }, 1, 2],
      [{ step: 9, command: { do: 'rewind', step: 3 } }, 1, 2],
      [{ step: 0, command: { do: 'wear', item: 'goggles' } }, 0, 1],
      [{ ...wear, step: 15_000 }, 2, 3],
      [{ ...wear, step: 15_001 }, 1, 3],
    ];
    for (const [insert, at, command] of forgeries) {
      const forged = JSON.parse(file);
      forged.log.commands.splice(at, 0, insert);
      const replayed = await call(['replay', 's.json'], { 's.json': JSON.stringify(forged) });
      expect(replayed.code).toBe(1);
      expect(JSON.parse(replayed.out)[0]).toMatchObject({ holds: false, now: null, broken: { command } });
      expect(JSON.parse(replayed.out)[0].broken.reason).toMatch(/[.?]$/);
    }
    const longer = JSON.parse(file);
    longer.log.lastStep += 50;
    const replayed = await call(['replay', 's.json'], { 's.json': JSON.stringify(longer) });
    expect(JSON.parse(replayed.out)[0]).toMatchObject({ holds: false, broken: { command: 0 } });
  });

  it('is bad input for what is no session', async () => {
    const { code, notes } = await call(['replay', 's.json'], { 's.json': '{"log":{}}' });
    expect(code).toBe(2);
    expect(notes).toMatch(/^s\.json: log\./);
  });
});

describe('sit', () => {
  const lines = [
    'look around',
    'begin',
    'help',
    'wear goggles',
    'uncouple charging',
    'waer gloves',
    'run 10 s',
  ];

  it('says what a person would see, and refuses with a reason', async () => {
    const { code, out } = await call(['sit', SCENARIO], {}, [...lines, 'finish'].join('\n'));
    expect(code).toBe(0);
    expect(out).toContain('port-a: 13 mm across');
    expect(out).toContain('No. This coupler is not on a port.');
    expect(out).toContain('Did you mean "wear"?');
    expect(out).toContain('Put on: goggles');
    expect(out).toMatch(/\[00:10\]\nGoggles on\./);
    expect(out).toMatch(/Handed over\. Score \d+(\.\d)? of 100, not passed\./);
  });

  it('tells an assessed session no more and no less before hand-over than a practice one', async () => {
    const text = lines.filter((line) => line !== 'help').join('\n');
    const [practice, assessed] = await Promise.all(
      ['practice', 'assessed'].map((mode) => call(['sit', SCENARIO, '--mode', mode], {}, text)),
    );
    expect(assessed.out).toBe(practice.out);
  });

  it('gives a JSON value a line', async () => {
    const { out } = await call(['sit', SCENARIO, '--json'], {}, 'begin\nrun 1 min\n');
    const told = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(told.map(({ step, line, taken }) => ({ step, line, taken }))).toEqual([
      { step: 0, line: null, taken: true },
      { step: 0, line: 'begin', taken: true },
      { step: 3000, line: 'run 1 min', taken: true },
    ]);
  });
});

describe('states', () => {
  it('shows every transition as walked by a shipped plan or with a reason why not', async () => {
    const { code, out } = await call(['states', '--json']);
    const { states: all, walked, unwalked } = JSON.parse(out);
    expect(code).toBe(0);
    expect(all.length).toBeGreaterThan(20);
    expect(walked.length).toBeGreaterThan(unwalked.length);
    expect(unwalked.filter(({ reason }: { reason: string | null }) => reason === null)).toEqual([]);
  });
});

describe('list', () => {
  it.each([
    ...['vehicles', 'faults', 'scenarios', 'tools', 'commands', 'signals', 'ports', 'rules', 'rubrics'],
    ...['measures', 'events', 'conditions', 'forms', 'domains', 'watches', 'tasks', 'parts', 'places'],
    ...['zones', 'routes', 'papers', 'jurisdictions', 'keys', 'units', 'waits'],
  ])('%s have ids', async (kind) => {
    const { code, out } = await call(['list', kind, '--json']);
    const entries: { id: string }[] = JSON.parse(out);
    expect(code).toBe(0);
    expect(entries.length).toBeGreaterThan(1);
    expect(entries.every(({ id }) => typeof id === 'string' && id !== '')).toBe(true);
  });

  it('says for each id of a command what it may be on each vehicle', async () => {
    const commands: Listed[] = JSON.parse((await call(['list', 'commands'])).out);
    const may = (command: string, name: string) =>
      commands.find(({ id }) => id === command)?.args?.find((arg) => arg.name === name)?.may;
    expect(may('couple', 'port')).toEqual({ any: ['port-a', 'port-b'] });
    expect(may('look', 'at')?.sedan).toContain('accumulator');
    expect(may('look', 'at')?.hatchback).not.toContain('accumulator');
    const open = commands.flatMap(({ id, args = [] }) =>
      args
        .filter(({ kind, may }) => kind.startsWith('id') && Object.values(may ?? {}).flat().length === 0)
        .map(({ name }) => `${id} ${name}`),
    );
    expect(open).toEqual([]);
  });

  it('knows every key that a shipped scenario is written with, and that conditions and rules are told elsewhere', async () => {
    const keys: Listed[] = JSON.parse((await call(['list', 'keys'])).out);
    const known = new Set(keys.map(({ id }) => id));
    const elsewhere = new Set(['deliver[].done', 'rubric.add[]', 'plans']);
    const missing = new Set<string>();
    const walk = (path: string, value: unknown): void => {
      if (path !== '' && !known.has(path)) missing.add(path);
      if (elsewhere.has(path) || typeof value !== 'object' || value === null) return;
      if (Array.isArray(value)) for (const one of value) walk(`${path}[]`, one);
      else
        for (const [key, inner] of Object.entries(value)) walk(path === '' ? key : `${path}.${key}`, inner);
    };
    for (const { data } of scenarios) walk('', data);
    expect([...missing]).toEqual([]);
    expect(keys.find(({ id }) => id === 'weather.temperature')).toMatchObject({
      required: true,
      is: 'quantity',
      of: ['temperature'],
    });
    expect(keys.find(({ id }) => id === 'rubric.add[]')).toMatchObject({ is: 'rule' });
  });

  it('places a leak only where check lets it be', async () => {
    const places: Listed[] = JSON.parse((await call(['list', 'places'])).out);
    const at = places.filter(
      ({ vehicle, faults }) => vehicle === 'sedan' && faults?.includes('leak-evaporator'),
    );
    expect(at.map(({ id }) => id)).toEqual(['evaporator']);
  });

  it('never says what is wrong with a car', async () => {
    expect((await call(['list', 'scenarios'])).out).not.toContain('fan-dead');
  });

  it('names the nearest kind for a slip', async () => {
    expect(await call(['list', 'vehicle'])).toMatchObject({
      code: 2,
      notes: expect.stringContaining('vehicles'),
    });
  });
});
