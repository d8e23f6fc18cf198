/**
 * Vite plugin: of matter-js a page gets the modules a hose needs (src/bay/hose/chain.ts), not its renderer, its plugins and
 * its tools. What is not listed here is not there; a build fails on a name that is asked for in vain. Nothing of a hose
 * ever meets anything, so what finds and solves collisions is left out: none are found. Tests have the same, bundled
 * once, as nothing of a library is otherwise taken apart for them.
 */
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { build, type Plugin } from 'vite';

const MODULES = ['core/Engine', 'body/Body', 'body/Composite', 'constraint/Constraint', 'factory/Bodies'];
const ID = '\0portside:lean-matter';
const resolveId = { filter: { id: /^matter-js$/ }, handler: () => ID };

const doingNothing = (...names: string[]): string => names.map((name) => `${name}() {}`).join(', ');
/** Module of collision/ -> what stands for it: all that the engine asks of it. */
const INSTEAD: Readonly<Record<string, string>> = {
  Detector: `create: () => ({}), collisions: () => [], ${doingNothing('setBodies', 'clear')}`,
  Pairs: `create: () => ({ list: [], collisionStart: [], collisionActive: [], collisionEnd: [] }), ${doingNothing('update', 'clear')}`,
  Resolver: doingNothing(
    ...['preSolvePosition', 'solvePosition', 'postSolvePosition', 'preSolveVelocity', 'solveVelocity'],
  ),
};

export const leanMatter = (): Plugin => ({
  name: 'portside:lean-matter',
  apply: 'build',
  enforce: 'pre',
  resolveId,
  load: {
    filter: { id: /^\0portside:lean-matter$|\/matter-js\/src\/collision\/(Detector|Pairs|Resolver)\.js$/ },
    handler(id) {
      if (id !== ID)
        return `module.exports = { ${INSTEAD[id.slice(id.lastIndexOf('/') + 1, -'.js'.length)]} };`;
      const source = join(dirname(createRequire(import.meta.url).resolve('matter-js')), '../src');
      const names = MODULES.map((path) => path.slice(path.indexOf('/') + 1));
      const imports = MODULES.map(
        (path, i) => `import ${names[i]} from ${JSON.stringify(join(source, `${path}.js`))};`,
      );
      return {
        code: [...imports, `export default { ${names.join(', ')} };`].join('\n'),
        moduleType: 'js',
      };
    },
  },
});

export const leanMatterInTests = (): Plugin => ({
  name: 'portside:lean-matter-in-tests',
  apply: 'serve',
  enforce: 'pre',
  resolveId,
  load: { filter: { id: /^\0portside:lean-matter$/ }, handler: bundled },
});

async function bundled(): Promise<{ code: string; moduleType: 'js' }> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    plugins: [leanMatter()],
    build: {
      write: false,
      minify: false,
      rolldownOptions: { input: 'matter-js', preserveEntrySignatures: 'strict' },
    },
  });
  const [{ output }] = Array.isArray(made) ? made : [made as never];
  return { code: output[0].code, moduleType: 'js' };
}
