/** `list`: ids an author may write, as a shell sees them. */
import { describe, expect, it } from 'vitest';
import list from '../../src/cli/verbs/list';
import { scenarios } from '../../src/session/scenario/library';
import { callVerb } from '../support/callVerb';

const call = (args: readonly string[]) => callVerb([list], args);

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

const KINDS = [
  ...['vehicles', 'faults', 'scenarios', 'tools', 'commands', 'signals', 'ports', 'rules', 'rubrics'],
  ...['measures', 'events', 'conditions', 'forms', 'domains', 'watches', 'tasks', 'parts', 'places'],
  ...['zones', 'routes', 'papers', 'jurisdictions', 'keys', 'units', 'waits', 'templates', 'codes'],
];

describe('list', () => {
  it.each(KINDS)('%s have ids', async (kind) => {
    const { code, out } = await call(['list', kind, '--json']);
    const entries: { id: string }[] = JSON.parse(out);
    expect(code).toBe(0);
    expect(entries.length).toBeGreaterThan(1);
    expect(entries.every(({ id }) => typeof id === 'string' && id !== '')).toBe(true);
  });

  it.each(KINDS)('%s are told in words, every id at the left and no raw figures', async (kind) => {
    const entries: { id: string }[] = JSON.parse((await call(['list', kind, '--json'])).out);
    const [headings, ...rest] = (await call(['list', kind])).out.trimEnd().split('\n');
    expect(headings).toMatch(/^id( |$)/);
    const lines = rest.slice(rest.findIndex((line) => /^-+( {2}-+)*$/.test(line)) + 1);
    expect(lines.length).toBeGreaterThan(1);
    const left = new Set(lines.map((line) => line.split('  ')[0].trimEnd()));
    expect(entries.filter(({ id }) => !left.has(id))).toEqual([]);
    expect(lines.filter((line) => /\s$|"|\[object|null|undefined|\d\.\d{4}/.test(line))).toEqual([]);
  });

  it('tells faults in figures of the trade, with the cars that can have them', async () => {
    const { out } = await call(['list', 'faults']);
    const told = (id: string): string => {
      const [, rest = ''] = new RegExp(`\\n${id} ([^]*?)(?=\\n\\S|$)`).exec(out) ?? [];
      return rest.replace(/\s+/g, ' ');
    };
    expect(told('low-charge')).toContain('100 % to 20 %');
    expect(told('leak-seal')).toMatch(/0 g a year .*2,000 g a/);
    expect(told('overcharge')).toContain('every car');
    expect(told('missing-orifice')).toContain('sedan');
    expect(told('missing-orifice')).not.toContain('hatchback');
    expect(out).not.toMatch(/kg\/s|kg/);
  });

  it('says for each id of a command what it may be on each vehicle', async () => {
    const commands: Listed[] = JSON.parse((await call(['list', 'commands', '--json'])).out);
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
    const keys: Listed[] = JSON.parse((await call(['list', 'keys', '--json'])).out);
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
    const places: Listed[] = JSON.parse((await call(['list', 'places', '--json'])).out);
    const at = places.filter(
      ({ vehicle, faults }) => vehicle === 'sedan' && faults?.includes('leak-evaporator'),
    );
    expect(at.map(({ id }) => id)).toEqual(['evaporator']);
  });

  it('never says what is wrong with a car', async () => {
    expect((await call(['list', 'scenarios'])).out).not.toContain('fan-dead');
    expect((await call(['list', 'scenarios', '--json'])).out).not.toContain('fan-dead');
  });

  it('names the nearest kind for a slip', async () => {
    expect(await call(['list', 'vehicle'])).toMatchObject({
      code: 2,
      notes: expect.stringContaining('vehicles'),
    });
  });
});
