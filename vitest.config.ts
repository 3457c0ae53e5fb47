import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // Vitest would leave one processor idle, which on a machine of two is half of it.
    maxWorkers: Math.max(2, availableParallelism()),
    projects: [
      {
        test: {
          name: 'unit',
          // Most of what a file would load anew, others have loaded before it.
          isolate: false,
          setupFiles: ['tests/seed.ts'],
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/every-page/**'],
          testTimeout: 60_000,
          hookTimeout: 180_000,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.ts'],
          testTimeout: 240_000,
          hookTimeout: 240_000,
        },
      },
      {
        test: {
          name: 'every-page',
          include: ['tests/every-page/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.ts'],
          testTimeout: 1_200_000,
          hookTimeout: 240_000,
        },
      },
    ],
  },
});
