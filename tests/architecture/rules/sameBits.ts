/**
 * Below the screen only arithmetic that every engine does to the same bit, no clock, no chance, no locale. Of Math the
 * list below may be used; powers, exponentials and the rest come from src/numerics.
 */
import { isBelowScreen } from '../layers';
import { globalReferences, type Reference } from '../references';
import { type Finding, findingAt, type Node, nameOf, type Rule, type SourceFile, walk } from '../sourceFile';

const EXACT = new Set([
  'sqrt',
  'abs',
  'min',
  'max',
  'floor',
  'ceil',
  'round',
  'trunc',
  'sign',
  'imul',
  'fround',
  'PI',
]);
const BANNED = new Set(['Date', 'performance', 'Intl', 'crypto', 'Temporal']);
const LOCAL_WAYS = new Set(['localeCompare', 'toLocaleString', 'toLocaleUpperCase', 'toLocaleLowerCase']);

export const sameBits: Rule = {
  name: 'same bits',
  check(file) {
    if (!isBelowScreen(file.path)) return [];
    const findings = globalReferences(file, BANNED).map(({ name, node }) =>
      findingAt(file, node, `${name} is not the same everywhere`),
    );
    for (const reference of globalReferences(file, new Set(['Math']))) {
      const used = memberOf(reference);
      if (!EXACT.has(used ?? ''))
        findings.push(findingAt(file, reference.node, `Math.${used ?? '?'} differs by engine`));
    }
    return [...findings, ...powersAndLocales(file)];
  },
};

function memberOf({ node, parent }: Reference): string | undefined {
  const isMember = parent.type === 'MemberExpression' && parent.object === node && parent.computed === false;
  return isMember ? nameOf(parent.property) : undefined;
}

function powersAndLocales(file: SourceFile): Finding[] {
  const findings: Finding[] = [];
  walk(file.tree, (node: Node) => {
    const isPower = node.operator === '**' || node.operator === '**=';
    if (isPower) findings.push(findingAt(file, node, '** differs by engine'));
    const property = node.type === 'MemberExpression' ? nameOf(node.property) : undefined;
    if (property && LOCAL_WAYS.has(property))
      findings.push(findingAt(file, node, `${property} differs by locale`));
  });
  return findings;
}
