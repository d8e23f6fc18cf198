/**
 * Arguments of one verb -> its options and operands, strictly: an unknown option is an error that names the nearest
 * known one; so is a missing value, a value too many, a missing operand. `--` ends the options; `-` is an operand.
 */
import { nearest } from '../words/nearest';
import { word } from '../words/words';
import { type Call, type OptionSpec, UsageError, type Verb } from './verb';

type Values = Record<string, boolean | string | string[] | undefined>;

export function parseCall(verb: Verb, args: readonly string[]): Call {
  const values: Values = {};
  for (const [name, spec] of Object.entries(verb.options)) {
    values[name] = spec.kind === 'flag' ? false : spec.many ? [] : undefined;
  }
  const operands: string[] = [];
  let at = 0;
  while (at < args.length) {
    const arg = args[at++];
    if (arg === '--') {
      operands.push(...args.slice(at));
      break;
    }
    if (!arg.startsWith('--')) {
      operands.push(arg);
      continue;
    }
    const [name, inline] = splitOption(arg);
    const spec = specOf(verb, name);
    const value = spec.kind === 'flag' || inline !== undefined ? inline : args[at++];
    setOption(values, name, spec, value);
  }
  checkRequired(verb, values);
  checkOperands(verb, operands);
  return { options: values as Call['options'], operands };
}

function splitOption(arg: string): [name: string, value: string | undefined] {
  const equals = arg.indexOf('=');
  return equals < 0 ? [arg.slice(2), undefined] : [arg.slice(2, equals), arg.slice(equals + 1)];
}

function specOf(verb: Verb, name: string): OptionSpec {
  if (Object.hasOwn(verb.options, name)) return verb.options[name];
  const near = nearest(name, Object.keys(verb.options));
  throw new UsageError(
    near === undefined
      ? word('cli.unknownOption', { verb: verb.name, name })
      : word('cli.unknownOptionNear', { verb: verb.name, name, near }),
  );
}

function setOption(values: Values, name: string, spec: OptionSpec, value: string | undefined): void {
  if (spec.kind === 'flag') {
    if (value !== undefined) throw new UsageError(word('cli.optionTakesNoValue', { name }));
    values[name] = true;
    return;
  }
  if (value === undefined || value.startsWith('--')) {
    throw new UsageError(word('cli.optionNeedsValue', { name, example: exampleOf(spec) }));
  }
  const before = values[name];
  if (Array.isArray(before)) before.push(value);
  else if (before !== undefined) throw new UsageError(word('cli.optionTwice', { name }));
  else values[name] = value;
}

function checkRequired(verb: Verb, values: Values): void {
  for (const [name, spec] of Object.entries(verb.options)) {
    const value = values[name];
    const missing = value === undefined || (Array.isArray(value) && value.length === 0);
    if (spec.required && missing) {
      throw new UsageError(word('cli.optionMissing', { verb: verb.name, name, example: exampleOf(spec) }));
    }
  }
}

function checkOperands(verb: Verb, operands: readonly string[]): void {
  const missing = verb.operands.filter((spec) => spec.required)[operands.length];
  if (missing) throw new UsageError(word('cli.operandMissing', { verb: verb.name, operand: missing.name }));
  const endless = verb.operands.some((spec) => spec.many);
  if (!endless && operands.length > verb.operands.length) {
    throw new UsageError(
      word('cli.operandTooMany', { verb: verb.name, operand: operands[verb.operands.length] }),
    );
  }
}

export const exampleOf = (spec: OptionSpec): string => spec.example ?? 'TEXT';
