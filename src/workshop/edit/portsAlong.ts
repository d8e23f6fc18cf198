/**
 * Ports and hoses of a text when the car changes (`portChanges`): in the plans, in words or with names, and wherever else an
 * id is that of a port. Ways that were made up are left as they stand.
 */
import { isMap, isScalar, isSeq, type Node, visit } from 'yaml';
import type { TextChange } from './changes';
import type { PortChange } from './portChanges';
import { nodeAt, type Tree } from './tree';

export function portsAlong(text: string, tree: Tree, changes: readonly PortChange[]): TextChange[] {
  const plans = nodeAt(tree, ['plans']);
  const planned = isMap(plans)
    ? plans.items.flatMap(({ value }) => inLines(text, value, changes, new Map()))
    : [];
  return [...planned, ...outsidePlans(tree, changes)];
}

/** Which port a hose was led to last. */
type Led = Map<string, string>;

/** Where the way of a hose stands in a line of words. */
const WAY_AT: Readonly<Record<string, number>> = { couple: 3, route: 2 };

function inLines(text: string, lines: unknown, changes: readonly PortChange[], led: Led): TextChange[] {
  if (!isSeq(lines)) return [];
  return lines.items.flatMap((line) => {
    if (isScalar(line)) return inWords(line, changes, led);
    if (!isMap(line)) return [];
    if (line.has('repeat')) return inLines(text, line.get('repeat', true), changes, led);
    return inNames(text, line.items[0], changes, led);
  });
}

/** `couple gauge-low port-b over,fender` */
function inWords(line: Node, changes: readonly PortChange[], led: Led): TextChange[] {
  const words = String(isScalar(line) ? line.value : '').split(' ');
  const [command, hose, port] = words;
  if (command === 'couple') led.set(hose, port);
  const ways = waysOf(changes, led.get(hose));
  const moved = words.map((word, at) => {
    if (at === 0) return word;
    return at === WAY_AT[command] ? (ways[word] ?? word) : otherPort(word, changes);
  });
  return written(line, words.join(' '), moved.join(' '));
}

/** `couple: { hose: gauge-low, port: port-b, route: [over, fender] }` */
function inNames(text: string, pair: unknown, changes: readonly PortChange[], led: Led): TextChange[] {
  const { key, value } = pair as { readonly key: unknown; readonly value: unknown };
  if (!isMap(value)) return [];
  const hose = String(value.get('hose'));
  if (isScalar(key) && key.value === 'couple') led.set(hose, String(value.get('port')));
  const ways = waysOf(changes, led.get(hose));
  return value.items.flatMap((argument) => {
    const node = argument.value as Node | null;
    if (isScalar(argument.key) && argument.key.value === 'route') return onOtherWay(text, node, ways);
    const id = isScalar(node) ? String(node.value) : '';
    return node ? written(node, id, otherPort(id, changes)) : [];
  });
}

function onOtherWay(text: string, node: Node | null, ways: PortChange['ways']): TextChange[] {
  const zones = isSeq(node) ? node.items.map((item) => (isScalar(item) ? String(item.value) : '')) : [];
  const way = isScalar(node) ? String(node.value) : zones.join(',');
  const next = ways[way];
  if (!node?.range || next === undefined || next === way) return [];
  const [from, to] = node.range;
  const end = text.slice(from, to).endsWith('\n') ? '\n' : '';
  return [{ from, to, insert: isSeq(node) ? `[${next.replaceAll(',', ', ')}]${end}` : next }];
}

function outsidePlans(tree: Tree, changes: readonly PortChange[]): TextChange[] {
  const found: TextChange[] = [];
  visit(tree, {
    Pair: (_, { key }) => (isScalar(key) && key.value === 'plans' ? visit.SKIP : undefined),
    Scalar(key, node) {
      const id = String(node.value);
      if (key !== 'key') found.push(...written(node, id, otherPort(id, changes)));
    },
  });
  return found;
}

const otherPort = (id: string, changes: readonly PortChange[]): string =>
  changes.find(({ from }) => from === id)?.to ?? id;

const waysOf = (changes: readonly PortChange[], port: string | undefined): PortChange['ways'] =>
  changes.find(({ from }) => from === port)?.ways ?? {};

const written = ({ range }: Node, before: string, after: string): TextChange[] =>
  before === after || !range ? [] : [{ from: range[0], to: range[1], insert: after }];
