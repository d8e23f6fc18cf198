/** A scenario file that cannot be played is refused by `sit` and `play` with the lines that `check` finds. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dispatch } from '../../src/cli/dispatch';
import { type Io, processIo } from '../../src/cli/io';
import play from '../../src/cli/verbs/play';
import sit from '../../src/cli/verbs/sit';

const text = readFileSync('scenarios/filled-in-a-hurry.yaml', 'utf8');
const air = text.split('\n').find((line) => line.includes('fault: air-in-loop')) ?? 'no air';

async function call(args: readonly string[], file: string) {
  let out = '';
  let notes = '';
  const io: Io = {
    ...processIo,
    text: (said) => {
      out += said;
    },
    note: (said) => {
      notes += said;
    },
    async *inputLines() {},
    readFile: () => file,
  };
  return { code: await dispatch([play, sit], args, io), out, notes };
}

const unplayable: readonly (readonly [name: string, was: string | RegExp, is: string, told: RegExp])[] = [
  [
    'a site that is nowhere',
    air,
    '  - { fault: leak, severity: 0.5, site: moon }',
    /^h\.yaml:20:\d+ SCN106 "moon"/,
  ],
  [
    'faults that exclude each other',
    air,
    '  - { fault: low-charge, severity: 0.5 }\n  - { fault: overcharge, severity: 0.5 }',
    /^h\.yaml:21:\d+ SCN104/,
  ],
  [
    'rules without their tools',
    / {2}tools:\n( {4}- .*\n)+/,
    '  tools: []\n',
    /h\.yaml:\d+:\d+ SCN130 vacuumHeld/,
  ],
  ['no hoses', 'hoses: [gauge-set]', 'hoses: []', /h\.yaml:\d+:\d+ SCN130 hoseClear/],
  [
    'two cans of one id',
    '  tools:\n',
    '    - { id: can-1, net: 10 oz, printed: 12 oz, tare: 110 g }\n  tools:\n',
    /^h\.yaml:\d+:\d+ SCN122 "can-1"/,
  ],
  ['a can called like a hose', 'id: can-1', 'id: utility', /^h\.yaml:\d+:\d+ SCN123/],
];

describe.each([['sit'], ['play']])('%s refuses', (verb) => {
  const args = verb === 'play' ? ['play', 'h.yaml', '--plan', 'nothing'] : ['sit', 'h.yaml'];
  test.each(unplayable)('%s', async (_, was, is, told) => {
    const { code, out, notes } = await call(args, text.replace(was, is));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(notes).toMatch(told);
    expect(notes).not.toMatch(/^ +at /m);
  });
});

test('sit takes a file that is right', async () => {
  const { code, out } = await call(['sit', 'h.yaml'], text);
  expect(code).toBe(0);
  expect(out).toContain('Filled in a hurry');
});
