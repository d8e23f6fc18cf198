/**
 * Vite plugin: of pixi.js a page gets what it names and no more. The library's own entry registers every renderer, filter
 * and loader as it is imported; none of them is asked for here (src/bay/scenePainter.ts paints the scene), so no module
 * of it is kept for what importing it does. What shapes reach only for bounds, hits, names of colours and reading SVG,
 * none of it asked for here, is left out too: a line that throws stands in for each.
 */
import type { Plugin } from 'vite';

/** What throws when it is called or made. */
const without = (name: string): string =>
  `function ${name}() { throw new Error('${name} is not in this build (shared/build/leanPixi.ts)'); }`;

/** The end of a file's name, the import in it, what stands for it. */
const INSTEAD: readonly (readonly [RegExp, RegExp, string])[] = [
  [/\/GraphicsContext\.mjs$/, /^import \{ SVGParser \} from .*$/m, without('SVGParser')],
  [/\/GraphicsPath\.mjs$/, /^import \{ parseSVGPath \} from .*$/m, without('parseSVGPath')],
  [/\/GraphicsPath\.mjs$/, /^import \{ ShapePath \} from .*$/m, without('ShapePath')],
  [/\/color\/Color\.mjs$/, /^import namesPlugin from .*$/m, 'function namesPlugin() {}'],
];

export const leanPixi = (): Plugin => ({
  name: 'portside:lean-pixi',
  apply: 'build',
  transform: {
    filter: { id: /\/node_modules\/pixi\.js\/lib\// },
    handler(code, id) {
      let lean = code;
      for (const [file, line, instead] of INSTEAD) {
        if (!file.test(id)) continue;
        if (!line.test(lean)) this.error(`${id}: there is no line ${line}`);
        lean = lean.replace(line, instead);
      }
      return { code: lean, map: null, moduleSideEffects: false };
    },
  },
});
