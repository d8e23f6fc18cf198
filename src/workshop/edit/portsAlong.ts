/** Ports and hoses of the plans when the car changes (`portChanges`). Ways that were made up are left as they stand. */
import { isMap, isScalar, isSeq } from 'yaml';
import type { TextChange } from './changes';
import type { PortChange } from './portChanges';
import { setValue } from './setValue';
import { nodeAt, type Path, type Tree } from './tree';

/** Lines of the plans that name a port, with the ports of the other car. */
export function portsAlong(text: string, tree: Tree, changes: readonly PortChange[]): TextChange[] {
  return PLANS.flatMap((plan) => linesUnder(tree, ['plans', plan])).flatMap(([path, line]) => {
    const moved = onOtherPorts(line, changes);
    const change = moved === line ? null : setValue(text, tree, path, moved);
    return change ? [change] : [];
  });
}

const PLANS = ['solution', 'careless', 'nothing'];
/** Where `couple` has its way: behind the command, the hose and the port. */
const WAY_AT = 3;

function linesUnder(tree: Tree, path: Path): (readonly [Path, string])[] {
  const list = nodeAt(tree, path);
  if (!isSeq(list)) return [];
  return list.items.flatMap((item, index) => {
    if (isScalar(item)) return [[[...path, index], String(item.value)] as const];
    return isMap(item) && item.has('repeat') ? linesUnder(tree, [...path, index, 'repeat']) : [];
  });
}

function onOtherPorts(line: string, changes: readonly PortChange[]): string {
  const words = line.split(' ');
  const change = changes.find(({ from }) => words.slice(1).includes(from));
  if (!change) return line;
  return words
    .map((word, at) => {
      if (at > 0 && word === change.from) return change.to;
      return words[0] === 'couple' && at === WAY_AT ? (change.ways[word] ?? word) : word;
    })
    .join(' ');
}
