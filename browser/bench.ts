import { readdirSync, readFileSync } from 'node:fs';
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { serve } from '@hono/node-server';
import type { Browser, Page } from 'playwright-core';
import { launch } from './testing/launch.ts';
import { tableApp } from '../server/src/app.ts';

/** Budgets of the table, in kB and milliseconds. */
const budgets = { firstLoad: 200, drag: 16, dragThrottled: 50, warmOpen: 1000 } as const;
const MOVES = 120;
const OPENINGS = 7;
const DRAGS = 3;
const THROTTLE = 4;

const folder = process.env['TABLE'] ?? fileURLToPath(new URL('../web/dist', import.meta.url));

const percentile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.ceil(values.length * share) - 1)] ?? NaN;

const line = (what: string, value: string, budget: string): void => {
  console.log(`${what.padEnd(76)}${value.padStart(12)}   budget ${budget}`);
};

/** JavaScript that the browser fetched before the first skirt was seen, each file as gzip makes it. */
async function firstLoad(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const fetched: string[] = [];
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (pathname.endsWith('.js')) fetched.push(pathname);
  });
  await page.goto(address);
  await page.locator('main svg').first().waitFor();
  await context.close();
  return fetched.reduce((sum, path) => sum + gzipSync(readFileSync(folder + path), { level: 9 }).length, 0);
}

/** From each move of the pointer to the end of the frame that shows it: script, style, layout and paint. */
async function drag(page: Page, name: RegExp): Promise<number[]> {
  await page.evaluate(() => {
    if ('times' in window) return;
    const times: number[] = [];
    Object.assign(window, { times });
    addEventListener(
      'pointermove',
      () => {
        const began = performance.now();
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => times.push(performance.now() - began);
          port2.postMessage(null);
        });
      },
      { capture: true },
    );
  });
  const handle = page.getByRole('slider', { name });
  const box = await handle.boundingBox();
  if (!box) throw new Error('nothing to take hold of');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.evaluate('times.length = 0');
  for (let i = 1; i <= MOVES; i++) await page.mouse.move(x, y + 40 * Math.sin(i / 6));
  await page.mouse.up();
  return page.evaluate<number[]>('times');
}

async function warmOpen(page: Page, address: string): Promise<number> {
  await page.goto('about:blank');
  const began = performance.now();
  await page.goto(address, { waitUntil: 'commit' });
  await page.locator('main svg').first().waitFor();
  return performance.now() - began;
}

const server = serve({ fetch: tableApp(folder).fetch, port: 0, hostname: '127.0.0.1' });
await once(server, 'listening');
const address = `http://localhost:${String((server.address() as AddressInfo).port)}/`;
const browser = await launch();
console.log(
  `Chromium ${browser.version()}, ${String(cpus().length)} cores, ${cpus()[0]?.model ?? ''}, ${String(readdirSync(`${folder}/assets`).length)} assets\n`,
);
line(
  'JavaScript before the first skirt is seen, gzip -9',
  `${((await firstLoad(browser, address)) / 1000).toFixed(1)} kB`,
  `${String(budgets.firstLoad)} kB`,
);

const context = await browser.newContext({ locale: 'en-CA', viewport: { width: 1280, height: 900 } });
const page = await context.newPage();
await page.goto(address);
await page.locator('main svg').first().waitFor();
await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
const openings: number[] = [];
for (let i = 0; i < OPENINGS; i++) openings.push(await warmOpen(page, address));
line(
  `warm open to a skirt seen, median of ${String(OPENINGS)}`,
  `${percentile(openings, 0.5).toFixed(0)} ms`,
  `${String(budgets.warmOpen)} ms`,
);

const session = await context.newCDPSession(page);
for (const [part, handle] of [
  ['body', /^finished length/],
  ['cut', /^finished length/],
  ['ribbons', /^row 6/],
] as const)
  for (const rate of [1, THROTTLE]) {
    await page.evaluate((to) => {
      location.hash = location.hash.replace(/[a-z]+$/, to);
    }, part);
    await page.locator('[role=slider]').first().waitFor();
    await session.send('Emulation.setCPUThrottlingRate', { rate });
    // A neighbour on the machine slows a whole drag: of three the middle one counts, and all are told.
    const drags: number[] = [];
    for (let i = 0; i < DRAGS; i++) drags.push(percentile(await drag(page, handle), 0.95));
    line(
      `drag to redrawn picture, ${part}, ${rate === 1 ? 'unthrottled' : `${String(rate)}× throttled`}: p95 (${drags.map((each) => each.toFixed(1)).join(', ')})`,
      `${percentile(drags, 0.5).toFixed(1)} ms`,
      `${String(rate === 1 ? budgets.drag : budgets.dragThrottled)} ms`,
    );
  }
await browser.close();
server.close();
