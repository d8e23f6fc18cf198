/** Faults in the groups of the registry, only those that all typed words are found in: of title, id or quantity. */
import type { FaultWord } from './reader/vocabulary';

export interface FaultLot {
  readonly group: FaultWord['group'];
  readonly faults: readonly FaultWord[];
}

/** Those in `always` stay, whatever is typed; groups without any are left out. */
export function siftFaults(
  faults: readonly FaultWord[],
  typed: string,
  always: readonly string[] = [],
): FaultLot[] {
  const words = plain(typed).split(/\s+/);
  const fits = ({ id, title, quantity }: FaultWord): boolean => {
    const told = plain(`${title} ${id} ${quantity}`);
    return always.includes(id) || words.every((word) => told.includes(word));
  };
  const left = faults.filter(fits);
  return [...new Set(left.map(({ group }) => group))].map((group) => ({
    group,
    faults: left.filter((fault) => fault.group === group),
  }));
}

/** Whoever types leaves out accents and hyphens as they come. */
const plain = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').replaceAll('-', ' ').toLowerCase().trim();
