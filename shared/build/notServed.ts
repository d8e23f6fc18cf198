/** Vite plugin: what stands in assets/ for people and not for pages is not shipped with the app. */
import { rmSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Plugin } from 'vite';

/** Drawings of parts are in the scripts of the pages that show them; the picture is the readme's. */
const NOT_SERVED = ['parts', 'screenshot.jpg'] as const;

export function notServed(): Plugin {
  let outDir = '';
  return {
    name: 'portside:not-served',
    apply: 'build',
    configResolved(config) {
      outDir = resolve(config.root, config.build.outDir);
    },
    closeBundle() {
      for (const name of NOT_SERVED) rmSync(resolve(outDir, name), { recursive: true, force: true });
    },
  };
}
