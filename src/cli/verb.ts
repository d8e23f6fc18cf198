/**
 * The shape every verb of the command line has: one file in src/cli/verbs exports one `defineVerb({ ... })` by default;
 * the dispatcher finds it by itself. `run` returns the exit code: 0 fine, 1 a finding. It throws `UsageError` for bad
 * usage or input (2); anything else thrown is our own fault (3).
 */
import type { WordId } from '../words/words';
import type { Io } from './io';

export interface OptionSpec {
  /** A flag takes no value; text takes one. */
  readonly kind: 'flag' | 'text';
  readonly summary: WordId;
  /** How a value looks in help: `ID`, `FILE`, `"32 degC"`. */
  readonly example?: string;
  /** May stand more than once; its value is a list. */
  readonly many?: boolean;
  readonly required?: boolean;
}

export interface OperandSpec {
  readonly name: string;
  readonly required: boolean;
  readonly many?: boolean;
}

type Options = Readonly<Record<string, OptionSpec>>;

/** What `run` gets for one option. */
type ValueOf<Spec extends OptionSpec> = Spec['kind'] extends 'flag'
  ? boolean
  : Spec['many'] extends true
    ? readonly string[]
    : Spec['required'] extends true
      ? string
      : string | undefined;

export interface Call<Given extends Options = Options> {
  readonly options: { readonly [Name in keyof Given]: ValueOf<Given[Name]> };
  readonly operands: readonly string[];
}

export interface Verb {
  readonly name: string;
  readonly summary: WordId;
  readonly options: Options;
  readonly operands: readonly OperandSpec[];
  readonly run: (call: Call, io: Io) => number | Promise<number>;
}

interface Definition<Given extends Options> {
  readonly name: string;
  readonly summary: WordId;
  readonly options: Given;
  readonly operands?: readonly OperandSpec[];
  run(call: Call<Given>, io: Io): number | Promise<number>;
}

export function defineVerb<const Given extends Options>(definition: Definition<Given>): Verb {
  const { name, summary, options, operands = [] } = definition;
  return { name, summary, options, operands, run: (call, io) => definition.run(call as Call<Given>, io) };
}

/** Bad usage or bad input: the message goes to the error stream, the exit code is 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
