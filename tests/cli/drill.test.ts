import { describe, expect, test } from 'vitest';
import { dispatch } from '../../src/cli/dispatch';
import { type Io, toJson } from '../../src/cli/io';
import drill from '../../src/cli/verbs/drill';

async function call(...args: readonly string[]) {
  let out = '';
  let notes = '';
  const io = {
    line: (value: unknown) => {
      out += `${toJson(value, 0)}\n`;
    },
    note: (text: string) => {
      notes += text;
    },
  } as Io;
  const code = await dispatch([drill], ['drill', ...args], io);
  return { code, out, notes };
}

describe('the answer of drill', () => {
  test('is a line a seed, the levels in turns, the same bytes each time', async () => {
    const first = await call('--seed', '1..8', '--json');
    expect(first.code).toBe(0);
    const bays = first.out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(bays.map(({ seed }) => seed)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(bays.map(({ level }) => level)).toEqual([1, 2, 3, 4, 1, 2, 3, 4]);
    expect((await call('--seed', '1..8', '--json')).out).toBe(first.out);
  });

  test('says what is asked, what is right, the way there and what guesses would say', async () => {
    const { out } = await call('--seed', '12', '--level', '3', '--json');
    const bay = JSON.parse(out);
    expect(bay.level).toBe(3);
    expect(bay.choices).toContain(bay.answer);
    expect(bay.trace.length).toBeGreaterThan(1);
    expect(bay.trace[bay.trace.length - 1].part).toMatch(/^(compressor|valve|orifice)$/);
    for (const guess of Object.values(bay.lazy)) expect(bay.choices).toContain(guess);
  });

  test('refuses what is no seed and no level', async () => {
    for (const seed of ['0', '-1', '5..2', 'x', '1.5', '1...3'])
      expect((await call('--seed', seed)).code).toBe(2);
    for (const level of ['0', '5', '2.5', 'hard']) expect((await call('--level', level)).code).toBe(2);
  });
});
