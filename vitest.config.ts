import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';
import { dataModules } from './shared/build/plugins.ts';

const shared = { environment: 'node', testTimeout: 60_000, hookTimeout: 180_000 } as const;

export default defineConfig({
  test: {
    reporters: ['default', './tests/support/closingLine.ts'],
    projects: [
      {
        plugins: [...dataModules(), solid()],
        test: {
          ...shared,
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/long/**'],
          sequence: { groupOrder: 0 },
        },
      },
      {
        plugins: [...dataModules(), solid()],
        test: {
          ...shared,
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/support/browserSetup.ts'],
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
