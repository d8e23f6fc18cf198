/**
 * Vite plugin: of pixi.js a page gets what it names and no more. The library's own entry registers every renderer, filter
 * and loader as it is imported; none of them is asked for here (src/bay/inkScene.ts inks the scene), so no module
 * of it is kept for what importing it does. What shapes reach only for bounds, hits, names of colours, gradients and reading
 * SVG, and textures for being turned in their sheet or lent, none of it asked for here, is left out too: a module of our own
 * stands in for each. A build fails where one of them is no longer met, as then the library has changed.
 */
import type { Plugin } from 'vite';

/** What throws when it is called or made. */
const without = (name: string): string =>
  `export function ${name}() { throw new Error('${name} is not in this build (shared/build/leanPixi.ts)'); }`;

/** The end of a module's file -> what stands for it. */
const INSTEAD: Readonly<Record<string, string>> = {
  '/svg/SVGParser.mjs': without('SVGParser'),
  '/svg/parseSVGPath.mjs': without('parseSVGPath'),
  '/path/ShapePath.mjs': without('ShapePath'),
  '/fill/FillGradient.mjs': without('FillGradient'),
  '/matrix/groupD8.mjs': 'export const groupD8 = {};',
  '/texture/TexturePool.mjs': `export const TexturePool = {};\n${without('TexturePoolClass')}`,
  '/plugins/names.mjs': 'export default function namesPlugin() {}',
};
const REPLACED = Object.keys(INSTEAD);

export function leanPixi(): Plugin {
  const met = new Set<string>();
  return {
    name: 'portside:lean-pixi',
    apply: 'build',
    enforce: 'pre',
    load: {
      filter: { id: /\/node_modules\/(pixi\.js\/lib|@pixi\/colord)\// },
      handler(id) {
        const end = REPLACED.find((one) => id.endsWith(one));
        if (end === undefined) return null;
        met.add(end);
        return { code: INSTEAD[end], map: null, moduleSideEffects: false };
      },
    },
    transform: {
      filter: { id: /\/node_modules\/pixi\.js\/lib\// },
      handler: (code) => ({ code, map: null, moduleSideEffects: false }),
    },
    buildEnd(error) {
      const missed = REPLACED.filter((end) => !met.has(end));
      if (!error && missed.length > 0) this.error(`pixi.js has no ${missed.join(', ')} to leave out`);
    },
  };
}
