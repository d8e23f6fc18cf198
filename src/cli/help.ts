/** Help, from the verbs that are there and nothing else. */
import { say, word } from '../words/words';
import { exampleOf } from './parseCall';
import type { OperandSpec, Verb } from './verb';

export function helpOfAll(verbs: readonly Verb[]): string {
  const rows = verbs.map((verb) => [verb.name, say({ id: verb.summary })] as const);
  return [
    word('cli.usage'),
    '',
    `${word('cli.verbs')}:`,
    ...columns(rows),
    '',
    word('cli.helpHint'),
    '',
  ].join('\n');
}

export function helpOfVerb(verb: Verb): string {
  const operands = verb.operands.map(operandText).join(' ');
  const rows = Object.entries(verb.options).map(([name, spec]) => {
    const form =
      spec.kind === 'flag' ? `--${name}` : `--${name} ${exampleOf(spec)}${spec.many ? ' ...' : ''}`;
    return [form, say({ id: spec.summary })] as const;
  });
  return [
    word('cli.usageOfVerb', { verb: verb.name, operands }).trim(),
    say({ id: verb.summary }),
    '',
    `${word('cli.options')}:`,
    ...columns([...rows, ['--help', word('cli.help')]]),
    '',
  ].join('\n');
}

function operandText({ name, required, many }: OperandSpec): string {
  const text = many ? `${name}...` : name;
  return required ? text : `[${text}]`;
}

function columns(rows: readonly (readonly [string, string])[]): string[] {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`);
}
