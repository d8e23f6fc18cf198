/**
 * Ports and hoses of the plans when the car changes: a port becomes the one on the same side of the other car, and the way
 * of a hose from it the one of the same name there, or the usual one. Ways that were made up are left as they stand.
 */
import { isMap, isScalar, isSeq } from 'yaml';
import type { TextChange } from './changes';
import { setValue } from './setValue';
import { nodeAt, type Path, type Tree } from './tree';

/** A port of a car, and the ways a hose can be led from it, the usual one first. */
export interface PortWays {
  readonly id: string;
  readonly side: 'low' | 'high';
  readonly ways: readonly { readonly id: string; readonly through: string }[];
}

export interface PortChange {
  readonly from: string;
  readonly to: string;
  /** Old way to new way, as `couple` takes them. */
  readonly ways: Readonly<Record<string, string>>;
}

export function portChanges(before: readonly PortWays[], next: readonly PortWays[]): PortChange[] {
  return before.flatMap(({ id, side, ways }) => {
    const there = next.find((port) => port.side === side);
    if (!there) return [];
    const way = (name: string) => (there.ways.find((one) => one.id === name) ?? there.ways[0])?.through;
    const pairs = ways.map(({ id: name, through }) => [through, way(name) ?? through] as const);
    return [{ from: id, to: there.id, ways: Object.fromEntries(pairs) }];
  });
}

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
