import { execFileSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serve } from '@hono/node-server';
import { tableApp } from '../server/src/app.ts';
import { launch } from './testing/launch.ts';

/** Makes the README's pictures from the running program: the table as it opens, and two of the papers' drawings. */
const root = fileURLToPath(new URL('..', import.meta.url));
const pictures = join(root, 'docs', 'pictures');
mkdirSync(pictures, { recursive: true });

const browser = await launch();
const page = await browser.newPage({ locale: 'en-CA', deviceScaleFactor: 1.5 });

const server = serve({ fetch: tableApp(join(root, 'web', 'dist')).fetch, port: 0, hostname: '127.0.0.1' });
await once(server, 'listening');
const { port } = server.address() as AddressInfo;
await page.setViewportSize({ width: 1200, height: 780 });
await page.goto(`http://localhost:${String(port)}/`);
await page.locator('main svg').first().waitFor();
await page.evaluate(() => {
  location.hash = location.hash.replace(/body$/, 'ribbons');
});
await page.getByRole('slider').first().waitFor();
await page.evaluate(() => document.fonts.ready.then(() => undefined));
await page.screenshot({ path: join(pictures, 'table.png') });
server.close();

const folder = mkdtempSync(join(tmpdir(), 'pictures-'));
const command = join(root, 'cli', 'bin', 'ribbonwright.js');
const request = execFileSync('node', [command, 'example']);
execFileSync('node', [command, 'papers', '-', '--out', folder], {
  input: request,
  stdio: ['pipe', 'ignore', 'ignore'],
});
for (const [from, to, width] of [
  ['card', 'card', 720],
  ['lay-double-fold', 'lay', 900],
] as const) {
  await page.setContent(
    `<body style="margin:0;background:#fff">${readFileSync(join(folder, `${from}.svg`), 'utf8')}</body>`,
  );
  const drawing = page.locator('svg');
  await drawing.evaluate((svg, wide) => {
    svg.setAttribute('width', String(wide));
    svg.removeAttribute('height');
  }, width);
  await drawing.screenshot({ path: join(pictures, `${to}.png`) });
}
rmSync(folder, { recursive: true });
await browser.close();
