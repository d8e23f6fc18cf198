/** What a document may not hold though it is good YAML: nothing stands for something else, nothing runs, JSON can hold it all. */
import {
  type Document,
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  type Node,
  type Scalar,
  visit,
} from 'yaml';
import { YamlError } from './readYaml.ts';
import { MOST_DEPTH, TOO_DEEP } from './yamlText.ts';

/** Names of an object's own workings, and the key that merges another group in. */
const NOT_KEYS: readonly string[] = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'valueOf',
  'hasOwnProperty',
  '<<',
];

export function refusedNodes(document: Document.Parsed, where: (offset: number) => string): YamlError[] {
  const errors: YamlError[] = [];
  const refuse = (node: unknown, code: string, text: string): void => {
    errors.push(new YamlError(where(isNode(node) && node.range ? node.range[0] : 0), code, text));
  };
  visit(document, {
    Alias: (_, node) => refuse(node, 'alias', 'aliases are not followed; write the value out'),
    Node: (key, node, path) => {
      if (path.length > 2 * MOST_DEPTH) {
        refuse(node, 'too-deep', TOO_DEEP);
        return visit.BREAK;
      }
      if (isMap(node))
        for (const { key: twin, first } of twins(node.items))
          refuse(twin, 'duplicate-key', twiceAt(twin, where(first)));
      refuseNode(node as Node, key === 'key', refuse);
    },
  });
  return errors;
}

type Refuse = (node: unknown, code: string, text: string) => void;

function refuseNode(node: Node, isKey: boolean, refuse: Refuse): void {
  if ((isScalar(node) || isCollection(node)) && node.tag !== undefined)
    refuse(node, 'tag', 'tags are not read; write the value alone');
  if ((isScalar(node) || isCollection(node)) && node.anchor !== undefined)
    refuse(node, 'alias', 'names for parts of the file are not read; write the value out');
  if (isKey) {
    if (!isScalar(node) || typeof node.value !== 'string')
      refuse(node, 'key-not-text', 'a key has to be text; put it in quotes');
    else if (NOT_KEYS.includes(node.value))
      refuse(node, 'key-not-allowed', `the key ${node.value} cannot be used`);
  } else if (
    isScalar(node) &&
    (typeof node.value === 'bigint' || (typeof node.value === 'number' && !isSafe(node.value)))
  )
    refuse(node, 'not-finite', `${node.source ?? node.value} is no number that can be worked with`);
}

const MOST_SAFE = 1e15;
const isSafe = (value: number): boolean => Number.isFinite(value) && Math.abs(value) <= MOST_SAFE;

/** Keys that stand in this group already. */
function twins(items: readonly unknown[]): { readonly key: Scalar; readonly first: number }[] {
  const seen = new Map<unknown, number>();
  return items.flatMap((item) => {
    if (!isPair(item) || !isScalar(item.key)) return [];
    const first = seen.get(item.key.value);
    if (first !== undefined) return [{ key: item.key, first }];
    seen.set(item.key.value, item.key.range?.[0] ?? 0);
    return [];
  });
}

const twiceAt = ({ value }: Scalar, first: string): string =>
  `"${value}" stands twice in one group, first at ${first.replace(/^.*:(\d+):\d+$/, 'line $1')}; keep one of them`;
