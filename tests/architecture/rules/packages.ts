/** Which folder of src may use which package. A package that no line names may not be used at all. */
import { packageOf, reachesOf, resolveReach } from '../imports';
import { folderOf } from '../layers';
import { type Finding, findingAt, type Rule } from '../sourceFile';

const SCREENS = ['instruments', 'bay', 'panels', 'workshop', 'export', 'app'];

const USERS: Readonly<Record<string, readonly string[]>> = {
  'pixi.js': ['bay'],
  'matter-js': ['bay'],
  xstate: ['session'],
  'virtual:engine-hash': ['session'],
  'virtual:prover-hash': ['prover'],
  'virtual:words': ['words'],
  'virtual:told': ['app'],
  yaml: ['session', 'workshop'],
  zod: ['session', 'workshop'],
  'solid-js': SCREENS,
  '@codemirror/autocomplete': ['workshop'],
  '@codemirror/commands': ['workshop'],
  '@codemirror/lang-yaml': ['workshop'],
  '@codemirror/language': ['workshop'],
  '@codemirror/state': ['workshop'],
  '@codemirror/view': ['workshop'],
  '@lezer/highlight': ['workshop'],
  'd3-scale': SCREENS,
  'd3-shape': SCREENS,
  idb: ['app'],
  fflate: ['export', 'app', 'cli'],
  node: ['cli'],
};

export const packages: Rule = {
  name: 'packages',
  check(file) {
    const folder = folderOf(file.path);
    if (folder === undefined) return [];
    const findings: Finding[] = [];
    for (const { node, specifier } of reachesOf(file)) {
      if (specifier === undefined || resolveReach(file, specifier) !== undefined) continue;
      const name = specifier.startsWith('node:') ? 'node' : packageOf(specifier);
      if (!USERS[name]?.includes(folder))
        findings.push(findingAt(file, node, `${folder} does not use ${name}`));
    }
    return findings;
  },
};
