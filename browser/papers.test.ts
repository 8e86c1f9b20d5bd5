import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  exampleRequest,
  makePaper,
  openFont,
  paperNames,
  parseRequest,
  planSkirt,
  speakerOf,
  writePdf,
} from '@ribbonwright/engine';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { browserHere, goTo, openTable } from './testing/table.ts';

const { context } = browserHere();
const resolve = createRequire(import.meta.url).resolve;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'papers-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** Words of a PDF, page by page, as poppler's pdftotext reads them. */
const wordsOf = (pdf: string): string =>
  execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' });

/** All five papers of the example skirt as Node makes them, without the day. */
async function asNodeMakesThem(): Promise<Record<string, Uint8Array>> {
  const font = (file: string) => openFont(readFileSync(resolve(`@expo-google-fonts/source-sans-3/${file}`)));
  const fonts = {
    regular: font('400Regular/SourceSans3_400Regular.ttf'),
    bold: font('600SemiBold/SourceSans3_600SemiBold.ttf'),
  };
  const parsed = parseRequest(exampleRequest('en'));
  if (!parsed.ok) throw new Error('the example is always read');
  const input = {
    plan: planSkirt(parsed.request),
    speaker: await speakerOf(parsed.request),
    fonts,
    date: new Date(),
    fromCloth: [],
    laid: null,
  };
  const made = paperNames.map(async (name) => [name, await writePdf(makePaper(name, input).document, fonts)]);
  return Object.fromEntries(await Promise.all(made)) as Record<string, Uint8Array>;
}

async function download(page: Page, press: () => Promise<void>, count: number): Promise<string[]> {
  const paths: Promise<string>[] = [];
  page.on('download', (file) => {
    const path = join(folder, file.suggestedFilename());
    paths.push(file.saveAs(path).then(() => path));
  });
  await press();
  await expect.poll(() => paths.length, { timeout: 60_000 }).toBe(count);
  return Promise.all(paths);
}

describe('papers made in the browser', () => {
  test('say what the papers of the command line say, page for page', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Supplies');
    const paths = await download(page, () => page.getByRole('button', { name: /make .*papers/i }).click(), 5);
    const expected = await asNodeMakesThem();
    for (const [i, name] of paperNames.entries()) {
      const reference = join(folder, `node-${name}.pdf`);
      writeFileSync(reference, expected[name] ?? '');
      expect(wordsOf(paths[i] ?? ''), name).toBe(wordsOf(reference));
    }
    expect(page.complaints).toEqual({ errors: [], strangers: [] });
  });

  test('can be stopped, and asked for again', async () => {
    const page = await openTable(await context());
    await goTo(page, 'Supplies');
    const make = page.getByRole('button', { name: /make .*papers/i });
    await make.click();
    await page.getByRole('button', { name: /stop/i }).click();
    await make.waitFor();
    expect(await page.getByRole('progressbar').count()).toBe(0);
  });
});
