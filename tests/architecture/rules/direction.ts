/** Lower ranks never reach higher ones, siblings never each other; schemas reach nothing above the lowest rank. */
import { reachesOf, resolveReach } from '../imports';
import { folderOf, LAYERS, rankOf } from '../layers';
import { type Finding, findingAt, type Rule, type SourceFile } from '../sourceFile';

export const direction: Rule = {
  name: 'direction',
  check(file) {
    if (file.path.startsWith('src/') && rankOf(file.path) === undefined) {
      return [
        { path: file.path, line: 1, what: `stands in no layer; there are ${LAYERS.flat().join(', ')}` },
      ];
    }
    const findings: Finding[] = [];
    for (const { node, specifier } of reachesOf(file)) {
      if (specifier === undefined) {
        if (file.path.startsWith('src/'))
          findings.push(findingAt(file, node, 'reaches what only run time knows'));
        continue;
      }
      const to = resolveReach(file, specifier);
      const wrong = to === undefined ? undefined : wrongWith(file, to);
      if (wrong) findings.push(findingAt(file, node, `${specifier}: ${wrong}`));
    }
    return findings;
  },
};

function wrongWith(file: SourceFile, to: string): string | undefined {
  const top = to.split('/')[0];
  if (file.path.startsWith('shared/')) {
    const isBuild = file.path.startsWith('shared/build/');
    if (top !== 'shared' && !isBuild && rankOf(to) !== 0)
      return 'shared reaches only shared and the lowest rank';
    return to.startsWith('shared/build/') && !isBuild ? 'only the build reaches shared/build' : undefined;
  }
  if (!file.path.startsWith('src/')) return undefined;
  if (top === 'src') return wrongWithinSource(file.path, to);
  if (to.startsWith('shared/build/')) return 'the program does not reach its build';
  return top === 'shared' || top === 'scenarios' || top === 'assets'
    ? undefined
    : `source does not reach ${top}`;
}

function wrongWithinSource(from: string, to: string): string | undefined {
  if (folderOf(from) === folderOf(to)) return undefined;
  const rank = rankOf(to);
  if (rank === undefined) return 'stands in no layer';
  const own = rankOf(from) as number;
  if (rank === own) return `${folderOf(from)} and ${folderOf(to)} are siblings`;
  return rank > own ? `${folderOf(to)} is above ${folderOf(from)}` : undefined;
}
