/**
 * Vite plugin: of pixi.js a page gets what it names and no more. The library's own entry registers every renderer, filter
 * and loader as it is imported; none of them is asked for here (src/bay/scenePainter.ts paints the scene), so no module
 * of it is kept for what importing it does. Two imports that shapes make only in passing bring the whole way to a
 * graphics processor, and a reader of SVG; a short line stands in for each.
 */
import type { Plugin } from 'vite';

/** The end of a file's name, the import in it, what stands for it. How finely a curve is cut is pixi's own figure. */
const INSTEAD: readonly (readonly [RegExp, RegExp, string])[] = [
  [
    /buildAdaptive\w+\.mjs$/,
    /^import \{ GraphicsContextSystem \} from .*$/m,
    'const GraphicsContextSystem = { defaultOptions: { bezierSmoothness: 0.5 } };',
  ],
  [
    /\/GraphicsContext\.mjs$/,
    /^import \{ SVGParser \} from .*$/m,
    "const SVGParser = () => { throw new Error('drawings are read when the app is built'); };",
  ],
];

export const leanPixi = (): Plugin => ({
  name: 'portside:lean-pixi',
  apply: 'build',
  transform: {
    filter: { id: /\/node_modules\/pixi\.js\/lib\// },
    handler(code, id) {
      const found = INSTEAD.find(([file]) => file.test(id));
      const lean = found ? code.replace(found[1], found[2]) : code;
      if (found && lean === code) this.error(`${id}: the import to stand in for is not there`);
      return { code: lean, map: null, moduleSideEffects: false };
    },
  },
});
