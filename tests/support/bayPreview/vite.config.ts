import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { yamlModules } from '../../../shared/build/yamlModules';

/** Serves the preview page of the bay while somebody draws; it is not part of the app. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  cacheDir: fileURLToPath(new URL('../../../node_modules/.vite-bay-preview', import.meta.url)),
  plugins: [yamlModules()],
  server: { fs: { allow: [fileURLToPath(new URL('../../..', import.meta.url))] } },
});
