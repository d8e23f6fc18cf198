import { describe, expect, test } from 'vitest';
import { dispatch } from '../../src/cli/dispatch';
import { type Io, toJson } from '../../src/cli/io';
import { defineVerb, UsageError } from '../../src/cli/verb';

const verbs = [
  defineVerb({
    name: 'find',
    summary: 'cli.verbs',
    options: { deep: { kind: 'flag', summary: 'cli.json' } },
    run: ({ options }, io) => {
      io.json({ deep: options.deep });
      return 1;
    },
  }),
  defineVerb({
    name: 'refuse',
    summary: 'cli.verbs',
    options: {},
    run: () => {
      throw new UsageError('no such fluid');
    },
  }),
  defineVerb({
    name: 'break',
    summary: 'cli.verbs',
    options: {},
    run: async () => {
      throw new Error('our own fault');
    },
  }),
];

async function call(...args: string[]): Promise<{ code: number; out: string; notes: string }> {
  let out = '';
  let notes = '';
  const io = {
    json: (value: unknown) => {
      out += toJson(value, 0);
    },
    text: (text: string) => {
      out += text;
    },
    note: (text: string) => {
      notes += `${text}\n`;
    },
  } as Io;
  const code = await dispatch(verbs, args, io);
  return { code, out, notes };
}

describe('the dispatcher', () => {
  test('passes on what the verb answers and its code', async () => {
    expect(await call('find', '--deep')).toEqual({ code: 1, out: '{"deep":true}', notes: '' });
  });

  test('lists the verbs that are there, and no other', async () => {
    const { code, out } = await call('--help');
    expect(code).toBe(0);
    expect([...out.matchAll(/^ {2}(\S+)/gm)].map((match) => match[1])).toEqual(['find', 'refuse', 'break']);
  });

  test('says what one verb takes', async () => {
    const { code, out } = await call('find', '--help');
    expect(code).toBe(0);
    expect(out).toContain('--deep');
  });

  test.each([
    ['no verb', [], 2, 'No verb given'],
    ['an unknown verb', ['fnid'], 2, 'Did you mean "find"?'],
    ['an unknown option', ['find', '--depe'], 2, 'Did you mean --deep?'],
    ['bad input', ['refuse'], 2, 'no such fluid'],
    ['a fault of its own', ['break'], 3, 'our own fault'],
  ])('answers %s on the error stream only', async (_, args, code, note) => {
    const answer = await call(...args);
    expect(answer.code).toBe(code);
    expect(answer.out).toBe('');
    expect(answer.notes).toContain(note);
  });
});

describe('JSON on standard output', () => {
  test('never turns a number it cannot hold into null', () => {
    expect(() => toJson({ pressurePa: Number.NaN }, 0)).toThrow('"pressurePa" is NaN');
  });
});
