import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';
import { leanMatterInTests } from './shared/build/leanMatter.ts';
import { dataModules } from './shared/build/plugins.ts';

const project = (name: string, include: string, groupOrder: number) => ({
  plugins: [...dataModules(), solid(), leanMatterInTests()],
  test: {
    name,
    environment: 'node' as const,
    testTimeout: 180_000,
    hookTimeout: 180_000,
    setupFiles: ['src/layout/allLayouts.ts', 'src/loop/car/allVehicles.ts', 'src/refrigerant/allFluids.ts'],
    include: [include],
    sequence: { groupOrder },
  },
});

const every = project('node', 'tests/!(browser|long)/**/*.test.ts', 0);
/** Left to itself vitest keeps one of two processors free. */
const node = { ...every, test: { ...every.test, maxWorkers: 2 } };
const browser = project('browser', 'tests/browser/**/*.test.ts', 1);
const long = project('long', 'tests/long/**/*.test.ts', 2);
const inBrowser = (isLongRun: boolean) => ({
  ...browser,
  test: { ...browser.test, globalSetup: ['tests/support/browserSetup.ts'], provide: { isLongRun } },
});

/** The browser tests come after the others, so that neither waits for the other's processor. `--mode long` adds the long. */
export default defineConfig(({ mode }) => ({
  test: {
    reporters: ['default', './tests/support/closingLine.ts'],
    projects: [node, inBrowser(mode === 'long'), ...(mode === 'long' ? [long] : [])],
  },
}));
