/**
 * A text as a tree of nodes that know where they stand, for whoever changes it in place; one without contents where nothing
 * is written yet. Null where it cannot be read.
 */
import { type Document, isMap, isNode, isScalar, isSeq, type Node, parseDocument } from 'yaml';

export type Path = readonly (string | number)[];
export type Tree = Document.Parsed;

export function treeOf(text: string): Tree | null {
  const tree = parseDocument(text, { version: '1.2', schema: 'core', prettyErrors: false });
  return tree.errors.length > 0 || !(tree.contents === null || isMap(tree.contents)) ? null : tree;
}

export function nodeAt(tree: Tree, path: Path): Node | null {
  const node = path.length === 0 ? tree.contents : tree.getIn(path, true);
  return isNode(node) && node.range ? node : null;
}

/** Null where there is no scalar. */
export function scalarAt(tree: Tree, path: Path): string | number | null {
  const node = nodeAt(tree, path);
  const value = isScalar(node) ? node.value : null;
  return typeof value === 'string' || typeof value === 'number' ? value : null;
}

/** How many items the list at `path` has; none where there is no list. */
export function lengthAt(tree: Tree, path: Path): number {
  const node = nodeAt(tree, path);
  return isSeq(node) ? node.items.length : 0;
}
