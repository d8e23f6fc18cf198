import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { dataModules } from '../../../shared/build/plugins';

/** Serves the preview page of the bay while somebody draws; it is not part of the app. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  cacheDir: fileURLToPath(new URL('../../../node_modules/.vite-bay-preview', import.meta.url)),
  plugins: dataModules(),
  server: { fs: { allow: [fileURLToPath(new URL('../../..', import.meta.url))] } },
});
