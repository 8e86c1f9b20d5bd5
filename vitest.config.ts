import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [svelte({ configFile: 'web/svelte.config.js' })],
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    // Property tests and surveys share two cores: a loaded machine is no failure.
    testTimeout: 120_000,
    // Left to itself the runner keeps one core free.
    maxWorkers: '100%',
    // The engine is read once for each worker, not once for each file; no test changes what another sees.
    isolate: false,
    include: ['{engine,cli,server,web}/src/**/*.test.ts'],
    coverage: {
      provider: 'v8',
      // What is drawn is tested in a browser; here counts what computes and keeps.
      include: ['{engine,cli,server}/src/**/*.ts', 'web/src/{desk,store,carry}/**/*.ts'],
      exclude: ['**/*.test.ts', '**/testing/**', '**/index.ts'],
      reporter: ['text-summary', 'html'],
    },
  },
});
