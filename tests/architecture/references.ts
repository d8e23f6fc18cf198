/** Uses of global names: identifiers that are no property, no type and nowhere declared in the file. */
import { type Node, nameOf, type SourceFile, walk } from './sourceFile';

export interface Reference {
  readonly name: string;
  readonly node: Node;
  readonly parent: Node;
}

/**
 * A name that the file itself declares anywhere, as variable, parameter, function, class or import, is taken to be its
 * own everywhere in that file.
 */
export function globalReferences(file: SourceFile, names: ReadonlySet<string>): Reference[] {
  const own = new Set<string>();
  const found: Reference[] = [];
  walk(file.tree, (node, parents) => {
    const name = nameOf(node);
    const parent = parents.at(-1);
    if (name === undefined || !parent || !names.has(name)) return;
    if (declares(parent, node, parents)) own.add(name);
    else if (!isPropertyName(parent, node)) found.push({ name, node, parent });
  });
  return found.filter(({ name }) => !own.has(name));
}

function declares(parent: Node, node: Node, parents: readonly Node[]): boolean {
  switch (parent.type) {
    case 'VariableDeclarator':
      return parent.id === node;
    case 'FunctionDeclaration':
    case 'FunctionExpression':
    case 'ArrowFunctionExpression':
    case 'TSDeclareFunction':
    case 'TSFunctionType':
    case 'TSMethodSignature':
      return parent.id === node || (parent.params as Node[]).includes(node);
    case 'ImportSpecifier':
    case 'ImportDefaultSpecifier':
    case 'ImportNamespaceSpecifier':
    case 'RestElement':
    case 'ArrayPattern':
    case 'CatchClause':
    case 'ClassDeclaration':
      return true;
    case 'AssignmentPattern':
      return parent.left === node;
    case 'Property':
      return parent.value === node && parents.at(-2)?.type === 'ObjectPattern';
    default:
      return false;
  }
}

function isPropertyName(parent: Node, node: Node): boolean {
  if (parent.type === 'MemberExpression') return parent.property === node && parent.computed === false;
  const keyed = [
    'Property',
    'PropertyDefinition',
    'MethodDefinition',
    'TSPropertySignature',
    'TSMethodSignature',
  ];
  if (keyed.includes(parent.type))
    return parent.key === node && parent.computed !== true && parent.shorthand !== true;
  return ['TSEnumMember', 'JSXAttribute', 'LabeledStatement', 'BreakStatement'].includes(parent.type);
}
