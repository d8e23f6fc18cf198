/** What people wrote is shown as text, never read as markup or code. */
import { globalReferences } from '../references';
import { type Finding, findingAt, type Node, nameOf, type Rule, textOf, walk } from '../sourceFile';

const MARKUP = new Set([
  'innerHTML',
  'outerHTML',
  'insertAdjacentHTML',
  'setHTMLUnsafe',
  'createContextualFragment',
]);
const CODE = new Set(['eval', 'Function', 'DOMParser']);

export const textOnly: Rule = {
  name: 'text only',
  check(file) {
    if (!file.path.startsWith('src/')) return [];
    const findings: Finding[] = globalReferences(file, CODE)
      .filter(({ parent }) => parent.type !== 'TSTypeReference')
      .map(({ name, node }) => findingAt(file, node, `${name} reads text as code`));
    walk(file.tree, (node: Node) => {
      const name = nameOf(node) ?? textOf(node);
      if (name && MARKUP.has(name)) findings.push(findingAt(file, node, `${name} reads text as markup`));
      const object = node.type === 'MemberExpression' ? nameOf(node.object) : undefined;
      if (object === 'document' && nameOf(node.property)?.startsWith('write')) {
        findings.push(findingAt(file, node, 'document.write reads text as markup'));
      }
    });
    return findings;
  },
};
