/** Finds the verb, runs it, and turns what it throws into an exit code. */
import { nearest } from '../words/nearest';
import { word } from '../words/words';
import { helpOfAll, helpOfVerb } from './help';
import type { Io } from './io';
import { parseCall } from './parseCall';
import { UsageError, type Verb } from './verb';

export const EXIT = { fine: 0, finding: 1, usage: 2, internal: 3 } as const;

/** Never rejects; the answer is the exit code. */
export async function dispatch(verbs: readonly Verb[], args: readonly string[], io: Io): Promise<number> {
  try {
    return await run(verbs, args, io);
  } catch (error) {
    if (error instanceof UsageError) {
      io.note(error.message);
      return EXIT.usage;
    }
    io.note(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return EXIT.internal;
  }
}

async function run(verbs: readonly Verb[], args: readonly string[], io: Io): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined) throw new UsageError(word('cli.noVerb'));
  if (name === '--help') {
    io.text(helpOfAll(verbs));
    return EXIT.fine;
  }
  const verb = verbs.find((candidate) => candidate.name === name);
  if (!verb) throw new UsageError(unknownVerb(verbs, name));
  if (asksForHelp(rest)) {
    io.text(helpOfVerb(verb));
    return EXIT.fine;
  }
  return verb.run(parseCall(verb, rest), io);
}

function asksForHelp(args: readonly string[]): boolean {
  const end = args.indexOf('--');
  return (end < 0 ? args : args.slice(0, end)).includes('--help');
}

function unknownVerb(verbs: readonly Verb[], name: string): string {
  const near = nearest(
    name,
    verbs.map((verb) => verb.name),
  );
  return near === undefined ? word('cli.unknownVerb', { name }) : word('cli.unknownVerbNear', { name, near });
}
