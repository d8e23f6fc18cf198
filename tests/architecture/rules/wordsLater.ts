/** No word is said while a file is loaded: the page's language may not be there yet, and may change. */
import { findingAt, type Node, nameOf, type Rule, walk } from '../sourceFile';

const SAYS = ['word', 'say'];
const isFunction = ({ type }: Node): boolean => type.includes('Function') || type === 'PropertyDefinition';

export const wordsLater: Rule = {
  name: 'wordsLater',
  check(file) {
    if (!file.path.startsWith('src/')) return [];
    const said: Node[] = [];
    walk(file.tree, (node, parents) => {
      const name = node.type === 'CallExpression' ? nameOf(node.callee) : undefined;
      if (name !== undefined && SAYS.includes(name) && !parents.some(isFunction)) said.push(node);
    });
    return said.map((node) => findingAt(file, node, 'is said while the file is loaded'));
  },
};
