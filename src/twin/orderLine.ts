/** An order as it is typed: its name, then in pointed brackets what each of its arguments may be. */
import { word } from '../words/words';
import type { Possible, PossibleArg } from './possible';

type Order = Pick<Possible, 'do' | 'args'>;

/** More than this many choices stand as the argument's name where it has to be short. */
const FEW = 8;

export const orderLine = ({ do: command, args }: Order): string => [command, ...args.map(argText)].join(' ');

/** The same for one sentence: a long choice by its name only. */
export const shortOrderLine = ({ do: command, args }: Order): string =>
  [command, ...args.map((arg) => (arg.options.length > FEW ? `<${arg.name}>` : argText(arg)))].join(' ');

function argText({ name, kind, options, range }: PossibleArg): string {
  if (range) {
    const { min, max, unit } = range;
    return `<${word('twin.sit.numbers', { name, min: String(min), max: String(max), unit })}>`;
  }
  return `<${options.join(kind === 'ids' ? ',' : ' | ')}>`;
}
