import { describe, expect, test } from 'vitest';
import { dispatch } from '../../src/cli/dispatch';
import { type Io, toJson } from '../../src/cli/io';
import loop from '../../src/cli/verbs/loop';

/** The shortest run there is, on a car that stands: three seconds. */
const SHORT = ['--vehicle', 'sedan', '--minutes', '0.05', '--engine', 'off'];

async function call(args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  let out = '';
  let notes = '';
  const io = {
    json: (value: unknown) => {
      out += toJson(value, 0);
    },
    line: (value: unknown) => {
      out += `${toJson(value, 0)}\n`;
    },
    note: (text: string) => {
      notes += text;
    },
    readFile: (file: string) => files[file] ?? '',
  } as Io;
  const code = await dispatch([loop], ['loop', ...args], io);
  return { code, out, notes };
}

const withCases = (text: string) => call(['--cases', 'cases.jsonl'], { 'cases.jsonl': text });
const ONE = '{"vehicle":"sedan","ambient":"30 degC","minutes":0.05,"engine":"off"}';

describe('the answer of loop', () => {
  test('has the keys that were promised, each a finite number', async () => {
    const { code, out } = await call([...SHORT, '--ambient', '30 degC', '--json']);
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    for (const side of ['highSideGaugePa', 'lowSideGaugePa'])
      expect(Object.keys(answer[side])).toEqual(['mean', 'min', 'max', 'last']);
    for (const key of [
      'ventK',
      'superheatK',
      'subcoolingK',
      'cyclesPerMin',
      'duty',
      'capacityW',
      'compressorW',
      'liquidToCompressorKg',
      'massErrorRelative',
      'energyErrorRelative',
      'realTimeFactor',
    ])
      expect(answer[key]).toEqual(expect.any(Number));
    expect(answer.stateHash).toMatch(/^[0-9a-f]{16}$/);
  });

  test('keeps the last reading between the least and the most', async () => {
    // a car that has just started moves so fast that the end, between two samples, lies outside them
    const args = ['--vehicle', 'sedan', '--ambient', '30 degC', '--minutes', '0.084', '--average', '1 s'];
    const { highSideGaugePa, lowSideGaugePa } = JSON.parse((await call(args)).out);
    for (const { min, max, last } of [highSideGaugePa, lowSideGaugePa]) {
      expect(last).toBeGreaterThanOrEqual(min);
      expect(last).toBeLessThanOrEqual(max);
    }
  });
});

describe('where there is nothing to saturate', () => {
  const saturated = ['superheatK', 'suctionSuperheatK', 'subcoolingK'] as const;
  test('an empty loop has neither superheat nor condensing temperature, a full one has both', async () => {
    const asked = [...SHORT, '--ambient', '30 degC'];
    const empty = JSON.parse((await call([...asked, '--charge', '0%'])).out);
    const full = JSON.parse((await call(asked)).out);
    expect([empty.condensingOverAmbientK, full.condensingOverAmbientK]).toEqual([null, expect.any(Number)]);
    for (const name of saturated) {
      expect([empty[name], empty.running[name]]).toEqual([null, null]);
      expect([full[name], full.running[name]]).toEqual([expect.any(Number), expect.any(Number)]);
    }
  });
});

test('a clutch that never lets go is in for all of the time and no more', async () => {
  const args = ['--vehicle', 'sedan', '--ambient', '30 degC', '--minutes', '1', '--average', '20 s'];
  const { duty } = JSON.parse((await call([...args, '--fault', 'clutch-stuck-on=1'])).out);
  expect(duty).toBeGreaterThan(0.99);
  expect(duty).toBeLessThanOrEqual(1);
});

describe('loop refuses', () => {
  test.each([
    ['a car', ['--vehicle', 'sedan'], '--cases and --vehicle exclude each other'],
    ['a fault', ['--fault', 'leak=0.1'], '--cases and --fault exclude each other'],
    ['a trace', ['--trace', 'out.csv'], '--cases and --trace exclude each other'],
  ])('%s beside a file of cases', async (_, args, note) => {
    const { code, out, notes } = await call(['--cases', 'cases.jsonl', ...args], { 'cases.jsonl': ONE });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(notes).toContain(note);
  });

  test.each([
    [
      'too cold, in the unit asked',
      ['--ambient', '-40 degC'],
      '-40 degC; it has to be from -10 degC to 50 degC',
    ],
    [
      'too hot, in the unit asked',
      ['--ambient', '200 degF'],
      '200 degF; it has to be from 14 degF to 122 degF',
    ],
    ['too much charge', ['--ambient', '30 degC', '--charge', '400%'], 'from 0 % to 250 %'],
    [
      'too short an average',
      ['--ambient', '30 degC', '--average', '0 min'],
      'from 0.0166667 min to 1440 min',
    ],
    ['a fast engine', ['--ambient', '30 degC', '--rpm', '9000'], 'from 500 rpm to 6000 rpm'],
    ['a hexadecimal engine speed', ['--ambient', '30 degC', '--rpm', '0x600'], 'plain decimal number'],
    ['a power of ten', ['--ambient', '30 degC', '--rpm', '1e3'], 'plain decimal number'],
    ['a hexadecimal severity', ['--ambient', '30 degC', '--fault', 'leak=0x1'], 'severity from 0 to 1'],
    [
      'a fault given twice',
      ['--ambient', '30 degC', '--fault', 'leak=0.1', '--fault', 'leak=0.2'],
      'leak stands there twice',
    ],
  ])('%s', async (_, args, note) => {
    const { code, out, notes } = await call([...SHORT, ...args]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(notes).toContain(note);
  });
});

describe('a file of cases', () => {
  test('may begin with a byte order mark and have any line ends', async () => {
    const { code, out } = await withCases(`\uFEFF${ONE}\r\n\r\n${ONE}\n`);
    expect(code).toBe(0);
    const lines = out.trim().split('\n');
    expect(lines).toHaveLength(2);
    expect(JSON.parse(lines[0]).case).toEqual({
      vehicle: 'sedan',
      ambient: '30 degC',
      minutes: '0.05',
      engine: 'off',
    });
  });

  test.each([
    ['nothing in it', '\n \n', 'cases.jsonl:1:1 holds no case'],
    [
      'an unknown car',
      `${ONE}\n{"vehicle":"coach","ambient":"30 degC"}`,
      'cases.jsonl:2:1 --vehicle is "coach"',
    ],
    ['a bad quantity', `${ONE}\n\n{"vehicle":"sedan","ambient":"30"}`, 'cases.jsonl:3:1 --ambient'],
    ['no ambient', '{"vehicle":"sedan"}', 'cases.jsonl:1:1 --vehicle and --ambient'],
  ])('with %s is refused with its place, before anything is run', async (_, text, note) => {
    const { code, out, notes } = await withCases(text);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(notes).toContain(note);
  });
});
