import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { tableApp } from './app.ts';

let folder = '';
beforeAll(() => {
  const above = mkdtempSync(join(tmpdir(), 'table-'));
  folder = join(above, 'built');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(above, 'secret.txt'), 'not for the page');
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>table</title>');
  writeFileSync(join(folder, 'assets', 'index-1a2b.js'), 'export {};');
});
afterAll(() => {
  rmSync(join(folder, '..'), { recursive: true });
});

const ask = (path: string) => tableApp(relative(process.cwd(), folder)).request(path);

test('the page may load and reach its own address only', async () => {
  const answer = await ask('/');
  expect(answer.status).toBe(200);
  const policy = answer.headers.get('content-security-policy') ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe|\*|https?:/);
  expect(answer.headers.get('cache-control')).toBe('no-cache');
});

test('a fingerprinted asset is kept, a missing one is not', async () => {
  expect((await ask('/assets/index-1a2b.js')).headers.get('cache-control')).toContain('immutable');
  const missing = await ask('/assets/index-gone.js');
  expect(missing.status).toBe(404);
  expect(missing.headers.get('cache-control')).toBe('no-cache');
});

test.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/assets/..%2f..%2fsecret.txt'])(
  'nothing above the folder is handed out: %s',
  async (path) => {
    expect(await (await ask(path)).text()).not.toContain('not for the page');
  },
);
