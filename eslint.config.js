import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import svelte from 'eslint-plugin-svelte';
import tseslint from 'typescript-eslint';

export default defineConfig(
  { ignores: ['**/dist/**', 'coverage/**', '.dependency-cruiser.cjs'] },
  js.configs.recommended,
  ...tseslint.configs.strictTypeChecked,
  ...tseslint.configs.stylisticTypeChecked,
  ...svelte.configs.recommended,
  {
    languageOptions: {
      parserOptions: {
        projectService: {
          allowDefaultProject: ['eslint.config.js', 'cli/bin/*.js', 'web/svelte.config.js'],
        },
        extraFileExtensions: ['.svelte'],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/consistent-type-definitions': ['error', 'interface'],
      '@typescript-eslint/dot-notation': 'off',
      // A branded length is a number; the rule does not know.
      '@typescript-eslint/no-unsafe-unary-minus': 'off',
      eqeqeq: 'error',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: tseslint.parser, extraFileExtensions: ['.svelte'] } },
    rules: {
      // Addresses are made in one place (desk/route); there is no router with a base of its own.
      'svelte/no-navigation-without-resolve': 'off',
      // A Map within one function is no state.
      'svelte/prefer-svelte-reactivity': 'off',
      // A component's props are read where they are used.
      'prefer-const': 'off',
      // The type checker knows what a browser has.
      'no-undef': 'off',
      'svelte/prefer-const': ['error', { excludedRunes: ['$props', '$derived'] }],
      // Types across component files are svelte-check's: the rule sees no types of a .svelte import.
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      '@typescript-eslint/no-confusing-void-expression': 'off',
    },
  },
  {
    // The search reads its flat arrays by the million, at places it has made itself.
    files: [
      'engine/src/packing/{cells,edges,first,given,grid,grids,layout,lines,overlaps,pack,part,place,seek,settle,tighten}.ts',
    ],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: ['engine/src/**/*.ts'],
    ignores: ['**/*.test.ts', '**/testing/**'],
    rules: {
      // No clock, no unseeded randomness, no DOM, no console in the engine.
      'no-restricted-globals': [
        'error',
        'window',
        'document',
        'process',
        'console',
        'setTimeout',
        'setInterval',
        'fetch',
        'performance',
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random' },
        { object: 'Date', property: 'now' },
      ],
    },
  },
);
