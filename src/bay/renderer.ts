/**
 * Which of pixi's renderers to load. WebGL where the machine has a real one; where it is missing or done in software
 * the canvas renderer is faster and starts sooner. Only the one chosen is fetched.
 */
// The policy of the page allows no eval; this gives pixi the forms of its code that do without.
import 'pixi.js/unsafe-eval';
import { autoDetectRenderer, type Renderer } from 'pixi.js';

export type RendererKind = 'webgl' | 'canvas';

/** Names under which software rasterisers report themselves. */
const SOFTWARE = /swiftshader|llvmpipe|softpipe|software|basic render/i;

export function suitableRenderer(): RendererKind {
  const context = document
    .createElement('canvas')
    .getContext('webgl2', { failIfMajorPerformanceCaveat: true });
  if (!context) return 'canvas';
  const info = context.getExtension('WEBGL_debug_renderer_info');
  const name = info ? String(context.getParameter(info.UNMASKED_RENDERER_WEBGL)) : '';
  context.getExtension('WEBGL_lose_context')?.loseContext();
  return SOFTWARE.test(name) ? 'canvas' : 'webgl';
}

export async function makeRenderer(
  kind: RendererKind,
  width: number,
  height: number,
  resolution: number,
): Promise<Renderer> {
  return autoDetectRenderer({
    preference: [kind],
    width: Math.max(1, width),
    height: Math.max(1, height),
    resolution,
    autoDensity: true,
    antialias: true,
    backgroundAlpha: 1,
    backgroundColor: 0x2c3438,
    skipExtensionImports: true,
  });
}
