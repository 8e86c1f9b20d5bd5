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

/** Makes the README's pictures from the running program (the table, and two of the papers' drawings), and the icons. */
const root = fileURLToPath(new URL('..', import.meta.url));
const pictures = join(root, 'docs', 'pictures');
mkdirSync(pictures, { recursive: true });

const browser = await launch();
const page = await browser.newPage({ locale: 'en-CA', deviceScaleFactor: 1 });

const server = serve({ fetch: tableApp(join(root, 'web', 'dist')).fetch, port: 0, hostname: '127.0.0.1' });
await once(server, 'listening');
const { port } = server.address() as AddressInfo;
await page.setViewportSize({ width: 1320, height: 860 });
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
  ['lay-double-fold', 'lay', 480],
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

// Icons for devices that take no drawing.
const icon = readFileSync(join(root, 'web', 'public', 'icon.svg'), 'utf8');
for (const size of [180, 512]) {
  const small = await browser.newPage({ viewport: { width: size, height: size } });
  await small.setContent(
    `<body style="margin:0">${icon.replace('<svg ', `<svg width="${String(size)}" `)}</body>`,
  );
  await small.screenshot({ path: join(root, 'web', 'public', `icon-${String(size)}.png`) });
}
await browser.close();
