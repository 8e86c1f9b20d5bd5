import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    // Property tests and surveys share two cores: a loaded machine is no failure.
    testTimeout: 60_000,
    include: ['{engine,cli}/src/**/*.test.ts'],
    coverage: {
      provider: 'v8',
      include: ['engine/src/**/*.ts', 'cli/src/**/*.ts'],
      exclude: ['**/*.test.ts', '**/testing/**', '**/index.ts'],
      reporter: ['text-summary', 'html'],
    },
  },
});
