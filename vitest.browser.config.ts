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
    // What is waited for may take longer beside another browser: a late answer is no failure.
    expect: { poll: { timeout: 20_000 } },
    // A browser mostly waits for its page: two share two cores, more would make one another late.
    maxWorkers: 2,
    isolate: false,
  },
});
