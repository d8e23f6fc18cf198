/** A session file that cannot be one is told as a scenario file is: what is wrong, in which line and column. */
import { readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import { jsonSlip, placeInJson } from '../../shared/schema/jsonPlaces';
import { dispatch } from '../../src/cli/dispatch';
import { type Io, processIo } from '../../src/cli/io';
import play from '../../src/cli/verbs/play';
import replay from '../../src/cli/verbs/replay';
import whatIf from '../../src/cli/verbs/whatIf';

const files = new Map<string, string>();

async function call(...args: readonly string[]) {
  let notes = '';
  const io: Io = {
    ...processIo,
    text: () => undefined,
    json: () => undefined,
    note: (said) => {
      notes += said;
    },
    readFile: (file) => files.get(file) ?? readFileSync(file, 'utf8'),
    writeFile: (file, text) => {
      files.set(file, String(text));
    },
  };
  return { code: await dispatch([play, replay, whatIf], args, io), notes };
}

const NO_CODE = 2;
let good = '';

beforeAll(async () => {
  await call('play', 'scenarios/weighed-in.yaml', '--plan', 'nothing', '--save', 's.json');
  good = `${JSON.stringify(JSON.parse(files.get('s.json') ?? ''), null, 2)}\n`;
});

const spoilt: readonly (readonly [string, (text: string) => string, string])[] = [
  ['nothing', () => '', '1:1 the file holds nothing'],
  ['null', () => 'null', '1:1 file: expected a group of keys, found nothing'],
  ['a list', () => '[]', '1:1 file: expected a group of keys, found a list'],
  ['an empty group', () => '{}', '1:1 "log" is missing'],
  ['no JSON', () => '{\n  "log": nothing\n}', '2:10 this cannot be read'],
  ['a comma at the end', (text) => text.replace(/\n}\n$/, ',\n}\n'), ' this cannot be read'],
  ['a wrong way', (text) => text.replace(/"mode": "\w+"/, '"mode": "idle"'), 'log.mode: one of explore,'],
  ['a text for a number', (text) => text.replace(/"seed": \d+/, '"seed": "one"'), 'found text'],
  ['a key of no one', (text) => text.replace('{', '{\n"more": 1,'), '2:1 unknown key "more"'],
];

it.each(spoilt)('%s', async (_, spoil, said) => {
  files.set('broken.json', spoil(good));
  for (const verb of ['replay', 'what-if']) {
    const { code, notes } = await call(verb, 'broken.json');
    expect(code).toBe(NO_CODE);
    expect(notes).toMatch(/^broken\.json:\d+:\d+ /);
    expect(notes).toContain(said);
    expect(notes).not.toMatch(/Invalid|received|undefined|JSON at|token/);
  }
});

it('finds a value and a key however it is laid out', () => {
  const text = '{"a":[1,\n {"b": "x\\"}", "c":null}],"b":2}';
  expect(placeInJson(text, ['a', 1, 'b'])).toEqual({ line: 2, column: 8 });
  expect(placeInJson(text, ['a', 1, 'c'], 'key')).toEqual({ line: 2, column: 16 });
  expect(placeInJson(text, ['a', 1, 'd'])).toEqual({ line: 2, column: 2 });
  expect(placeInJson(text, ['b'])).toEqual({ line: 2, column: 31 });
  expect(jsonSlip(text)).toBe(null);
  expect(jsonSlip(`${text}}`)).toEqual({ line: 2, column: 33 });
  expect(jsonSlip('['.repeat(200_000))).toEqual({ line: 1, column: 1 });
});
