import { readdirSync, readFileSync } from 'node:fs';
import { catalogues } from '@ribbonwright/engine';
import { expect, test } from 'vitest';

test('every word of the table is said somewhere on it', () => {
  const folder = new URL('.', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.(svelte|ts)$/.test(file) && !file.endsWith('.test.ts'),
  );
  const said = new Set(
    files.flatMap((file) => readFileSync(new URL(file, folder), 'utf8').match(/[a-zA-Z]+/g) ?? []),
  );
  expect(Object.keys(catalogues.en.table).filter((key) => !said.has(key))).toEqual([]);
});
