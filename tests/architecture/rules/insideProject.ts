/** No path leads out of the project, and none is absolute. */
import { dirname, posix } from 'node:path';
import { type Finding, findingAt, type Node, type Rule, textOf, walk } from '../sourceFile';

const ABSOLUTE = /^(file:\/\/)?\/(work|tmp|home|root|Users|var|mnt|workspace)\b/;

export const insideProject: Rule = {
  name: 'inside the project',
  check(file) {
    const findings: Finding[] = [];
    walk(file.tree, (node: Node) => {
      const text = textOf(node);
      if (text === undefined) return;
      const climbs = /^!?(\.\.?\/)*\.\.(\/|$)/.test(text);
      const leadsOut = climbs && posix.join(dirname(file.path), text.replace(/^!/, '')).startsWith('..');
      if (leadsOut) findings.push(findingAt(file, node, `${text} leads out of the project`));
      if (ABSOLUTE.test(text)) findings.push(findingAt(file, node, `${text} exists on one machine only`));
    });
    return findings;
  },
};
