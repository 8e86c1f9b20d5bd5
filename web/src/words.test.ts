import { readdirSync, readFileSync } from 'node:fs';
import { catalogueOf } from '@ribbonwright/engine';
import { expect, test } from 'vitest';

test('every word of the table is said somewhere on it', async () => {
  const folder = new URL('.', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.(svelte|ts)$/.test(file) && !file.endsWith('.test.ts'),
  );
  const said = new Set(
    files.flatMap((file) => readFileSync(new URL(file, folder), 'utf8').match(/[a-zA-Z]+/g) ?? []),
  );
  const { table } = await catalogueOf('en');
  expect(Object.keys(table).filter((key) => !said.has(key))).toEqual([]);
});
