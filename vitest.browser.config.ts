import { defineConfig } from 'vitest/config';

/** The table in a real browser, as it is built: `npm run build` comes first. */
export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['browser/**/*.test.ts'],
    globalSetup: 'browser/testing/serve.ts',
    testTimeout: 90_000,
    hookTimeout: 60_000,
    // Two cores: a browser and its page are enough at a time.
    fileParallelism: false,
  },
});
