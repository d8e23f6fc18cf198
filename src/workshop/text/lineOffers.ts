/** The next word of a plan's line: the command, then its arguments in their order. */
import type { ArgSpec } from '../../plant/commandSpecs';
import type { Known, Offer } from './offers';

/** `from` counts from the start of the line's words. */
export function lineOffers(
  written: string,
  { vocabulary, choices }: Known,
): { readonly from: number; readonly list: readonly Offer[] } | null {
  const from = written.lastIndexOf(' ') + 1;
  const [command, ...before] = written.slice(0, from).trim().split(/\s+/);
  if (from === 0) {
    const waits = vocabulary.waits.map((wait) => ({
      insert: `{ run-on: ${wait} }`,
      shown: `run-on ${wait}`,
    }));
    return {
      from,
      list: [...vocabulary.commands.map(({ id, args }) => ({ insert: id, note: namesOf(args) })), ...waits],
    };
  }
  const spec = vocabulary.commands.find(({ id }) => id === command)?.args[before.length]?.[1];
  if (!spec) return null;
  const list = wordsFor(spec, choices ?? {});
  const comma = spec.kind === 'ids' ? written.slice(from).lastIndexOf(',') + 1 : 0;
  return { from: from + comma, list: list.map((insert) => ({ insert })) };
}

const namesOf = (args: readonly (readonly [string, ArgSpec])[]): string =>
  args.map(([name]) => name).join(' ');

function wordsFor(spec: ArgSpec, choices: Readonly<Record<string, readonly string[]>>): readonly string[] {
  if (spec.kind === 'choice') return spec.of;
  if (spec.kind !== 'whole') return choices[spec.of] ?? [];
  return [];
}
