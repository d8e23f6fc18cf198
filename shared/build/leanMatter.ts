/**
 * Vite plugin: of matter-js a page gets the modules a hose needs (src/bay/hose/chain.ts), not its renderer, its plugins and
 * its tools. What is not listed here is not there; a build fails on a name that is asked for in vain.
 */
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Plugin } from 'vite';

const MODULES = ['core/Engine', 'body/Body', 'body/Composite', 'constraint/Constraint', 'factory/Bodies'];
const ID = '\0portside:lean-matter';

export const leanMatter = (): Plugin => ({
  name: 'portside:lean-matter',
  apply: 'build',
  enforce: 'pre',
  resolveId: { filter: { id: /^matter-js$/ }, handler: () => ID },
  load: {
    filter: { id: /^\0portside:lean-matter$/ },
    handler() {
      const source = join(dirname(createRequire(import.meta.url).resolve('matter-js')), '../src');
      const names = MODULES.map((path) => path.slice(path.indexOf('/') + 1));
      const imports = MODULES.map(
        (path, i) => `import ${names[i]} from ${JSON.stringify(join(source, `${path}.js`))};`,
      );
      return { code: [...imports, `export default { ${names.join(', ')} };`].join('\n'), moduleType: 'js' };
    },
  },
});
