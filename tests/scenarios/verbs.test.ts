/** The verbs about scenarios, as a shell sees them. */
import { describe, expect, it } from 'vitest';
import type { Verb } from '../../src/cli/verb';
import check from '../../src/cli/verbs/check';
import play from '../../src/cli/verbs/play';
import replay from '../../src/cli/verbs/replay';
import sit from '../../src/cli/verbs/sit';
import { callVerb } from '../support/callVerb';

const verbs: readonly Verb[] = [check, play, replay, sit];
const call = (args: readonly string[], files?: Record<string, string>, input?: string) =>
  callVerb(verbs, args, files, input);

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
        'weighed',
        'domains',
        'critical',
        'gates',
        'findings',
        'mode',
        'hints',
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
    expect(notes).toMatch(/^s\.json:1:8 "log\.\w+" is missing$/m);
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
