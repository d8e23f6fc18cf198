/** Everything by which one file reaches another: imports of every kind, re-exports, worker and asset URLs, globs. */
import { dirname, posix } from 'node:path';
import { type Node, nameOf, type SourceFile, textOf, walk } from './sourceFile';

export interface Reach {
  readonly node: Node;
  /** As written; undefined where it is put together at run time. */
  readonly specifier: string | undefined;
}

export function reachesOf(file: SourceFile): Reach[] {
  const reaches: Reach[] = [];
  walk(file.tree, (node) => {
    for (const target of targetsOf(node)) reaches.push({ node, specifier: textOf(target) });
  });
  return reaches;
}

function targetsOf(node: Node): unknown[] {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSImportType':
    case 'TSExternalModuleReference':
      return [node.source ?? node.argument ?? node.expression];
    case 'ExportNamedDeclaration':
      return node.source ? [node.source] : [];
    case 'NewExpression':
      return isUrlFromHere(node) ? [(node.arguments as unknown[])[0]] : [];
    case 'CallExpression':
      return targetsOfCall(node);
    default:
      return [];
  }
}

/** `new URL(x, import.meta.url)`: how a worker or an asset is named. */
function isUrlFromHere(node: Node): boolean {
  const base = (node.arguments as Node[])[1];
  return nameOf(node.callee) === 'URL' && base?.type === 'MemberExpression' && isMeta(base.object);
}

function targetsOfCall(node: Node): unknown[] {
  const callee = node.callee as Node;
  const [first] = node.arguments as Node[];
  if (nameOf(callee) === 'require') return [first];
  const isGlob =
    callee.type === 'MemberExpression' && isMeta(callee.object) && nameOf(callee.property) === 'glob';
  if (!isGlob || !first) return [];
  return first.type === 'ArrayExpression' ? (first.elements as unknown[]) : [first];
}

const isMeta = (node: unknown): boolean => (node as Node).type === 'MetaProperty';

/** Path in the project of a relative specifier; undefined for a package. A glob keeps its stars. */
export function resolveReach(file: SourceFile, specifier: string): string | undefined {
  const plain = specifier.replace(/^!/, '');
  return plain.startsWith('.') ? posix.join(dirname(file.path), plain) : undefined;
}

/** `@scope/name/sub` -> `@scope/name`; `name/sub` -> `name`. */
export function packageOf(specifier: string): string {
  const parts = specifier.split('/');
  return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] as string);
}
