import { describe, expect, test } from 'vitest';
import { parseCall } from '../../src/cli/parseCall';
import { defineVerb, UsageError } from '../../src/cli/verb';

const verb = defineVerb({
  name: 'try',
  summary: 'cli.verbs',
  options: {
    vehicle: { kind: 'text', summary: 'cli.verbs', example: 'ID', required: true },
    fault: { kind: 'text', summary: 'cli.verbs', many: true },
    seed: { kind: 'text', summary: 'cli.verbs' },
    json: { kind: 'flag', summary: 'cli.verbs' },
  },
  operands: [
    { name: 'FILE', required: true },
    { name: 'PLAN', required: false },
  ],
  run: () => 0,
});

describe('parsing a call', () => {
  test('takes options in both forms, repeated ones, flags and operands in any order', () => {
    const { options, operands } = parseCall(verb, [
      ...['a.yaml', '--fault', 'leak=0.4', '--vehicle=car', '--json', '--fault=fan=1', 'plan'],
    ]);
    expect(options).toEqual({ vehicle: 'car', fault: ['leak=0.4', 'fan=1'], seed: undefined, json: true });
    expect(operands).toEqual(['a.yaml', 'plan']);
  });

  test('ends the options at --', () => {
    expect(parseCall(verb, ['--vehicle', 'car', '--', '--odd']).operands).toEqual(['--odd']);
  });

  test('takes a negative number for a value', () => {
    expect(parseCall(verb, ['--vehicle', 'car', '--seed', '-4', 'a']).options.seed).toBe('-4');
  });

  test.each([
    ['an unknown option with its nearest', ['--vehicel', 'car', 'a'], 'Did you mean --vehicle?'],
    ['an unknown option far from all', ['--zzzzzz', 'a'], 'no option --zzzzzz'],
    ['an option of every object', ['--constructor', 'a'], 'no option --constructor'],
    ['a missing value', ['a', '--vehicle'], '--vehicle needs a value: --vehicle ID'],
    ['an option where a value should be', ['a', '--vehicle', '--json'], '--vehicle needs a value'],
    ['a value for a flag', ['a', '--vehicle', 'car', '--json=yes'], '--json takes no value'],
    ['an option twice', ['a', '--vehicle', 'x', '--vehicle', 'y'], '--vehicle is given twice'],
    ['a missing option', ['a'], 'try needs --vehicle ID'],
    ['a missing operand', ['--vehicle', 'car'], 'try needs FILE'],
    ['an operand too many', ['--vehicle', 'car', 'a', 'b', 'c'], 'no use for "c"'],
  ])('refuses %s', (_, args, message) => {
    expect(() => parseCall(verb, args)).toThrow(UsageError);
    expect(() => parseCall(verb, args)).toThrow(message);
  });
});
