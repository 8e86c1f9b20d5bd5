import { exampleRequest, LARGEST_REQUEST, parseRequest } from '@ribbonwright/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyMutation } from '../../../engine/src/testing/mutations.ts';
import { anyRequest } from '../../../engine/src/testing/requests.ts';
import { runs } from '../../../engine/src/testing/runs.ts';
import { fileOf } from './file.ts';
import { readFile } from './read.ts';

const robin = { ...exampleRequest('fr'), name: 'Jupe d’été' };
const fileWith = (...parts: (string | Uint8Array<ArrayBuffer>)[]) => new Blob(parts);

/** UTF-16, the low half of each letter first or last. */
const utf16 = (text: string, littleEnd: boolean): Uint8Array<ArrayBuffer> => {
  const view = new DataView(new ArrayBuffer(2 * text.length));
  for (let i = 0; i < text.length; i++) view.setUint16(2 * i, text.charCodeAt(i), littleEnd);
  return new Uint8Array(view.buffer);
};

const faultOf = async (file: Blob) => {
  const arrived = await readFile(file);
  expect(arrived.ok).toBe(false);
  return arrived.ok ? undefined : arrived.errors[0];
};

describe('a file that was saved', () => {
  test('comes back as it was written, with nothing filled in', async () => {
    await fc.assert(
      fc.asyncProperty(anyRequest, async (document) => {
        const arrived = await readFile(fileOf(document));
        expect(arrived).toEqual({ ok: true, document: JSON.parse(JSON.stringify(document)) as unknown });
      }),
      { numRuns: runs(60) },
    );
  });

  test.each([
    ['UTF-8', fileOf(robin)],
    ['UTF-8 with a mark', fileWith('\uFEFF', JSON.stringify(robin))],
    ['UTF-16, low half first', fileWith(utf16(`\uFEFF${JSON.stringify(robin)}`, true))],
    ['UTF-16, high half first', fileWith(utf16(`\uFEFF${JSON.stringify(robin)}`, false))],
    ['UTF-16 without its mark', fileWith(utf16(JSON.stringify(robin), true))],
    ['UTF-16 without its mark, high half first', fileWith(utf16(JSON.stringify(robin), false))],
  ])('is read from %s', async (_encoding, file) => {
    expect(await readFile(file)).toEqual({ ok: true, document: robin });
  });
});

describe('a file that is something else', () => {
  const photo = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1]);
  test.each([
    ['empty', fileWith(''), 'notJson', '1:1'],
    ['a photo', fileWith(photo), 'notJson', '1:1'],
    ['a photo of many megabytes', fileWith(photo, new Uint8Array(9_000_000)), 'notJson', '1:1'],
    ['zeros', fileWith(new Uint8Array(5)), 'notJson', '1:1'],
    ['one zero', fileWith(new Uint8Array(1)), 'notJson', '1:1'],
    ['a page of words', fileWith('Robin, 28 in waist'), 'notJson', '1:1'],
    ['cut short', fileWith('{"body": {\n  "waist": "28'), 'notJson', '2:12'],
    ['an old one-byte encoding', fileWith('{\n"name": "', Uint8Array.from([0xe9]), '"}'), 'notJson', '2:10'],
  ])('%s is no JSON, and the place is told', async (_name, file, code, where) => {
    expect(await faultOf(file)).toMatchObject({ code, params: { where } });
  });

  test.each([
    ['[1, 2]', { code: 'notAnObject', path: '' }],
    ['"skirt"', { code: 'notAnObject', path: '' }],
    ['null', { code: 'notAnObject', path: '' }],
    ['{"type": "FeatureCollection", "body": {}}', { code: 'missing', path: 'body.waist' }],
    ['{"version": 99}', { code: 'newerVersion', path: 'version' }],
    [`{"body": ${'['.repeat(200_000)}${']'.repeat(200_000)}}`, { code: 'wrongType', path: 'body' }],
  ])('%.40s is refused by the engine', async (text, fault) => {
    expect(await faultOf(fileWith(text))).toMatchObject(fault);
  });

  test('is too large, whether or not all of it is read', async () => {
    const most = LARGEST_REQUEST;
    expect(await faultOf(fileWith(' '.repeat(most + 1)))).toMatchObject({
      code: 'tooLarge',
      params: { size: most + 1, most },
    });
    // Letters of three bytes: the reading stops within one of them.
    expect(await faultOf(fileWith('{"name":"a', 'ᓀ'.repeat(2 * most)))).toMatchObject({ code: 'tooLarge' });
  });

  test('is gone since it was chosen', async () => {
    const gone = { size: 9, slice: () => ({ arrayBuffer: () => Promise.reject(new Error('gone')) }) };
    expect(await faultOf(gone as unknown as Blob)).toMatchObject({ code: 'notJson' });
  });
});

test('damage never throws, and lets no document through that the engine refuses', async () => {
  const damaged = fc
    .tuple(fc.oneof(anyRequest, anyMutation), fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 3 }))
    .map(([document, hits]) => {
      const bytes = new TextEncoder().encode(JSON.stringify(document));
      for (const [at, value] of hits) bytes[at % Math.max(1, bytes.length)] = value;
      return bytes;
    });
  let [good, bad] = [0, 0];
  await fc.assert(
    fc.asyncProperty(damaged, async (bytes) => {
      const arrived = await readFile(fileWith(bytes));
      if (arrived.ok) good++;
      else bad++;
      expect(arrived.ok ? parseRequest(arrived.document).ok : arrived.errors.length > 0).toBe(true);
    }),
    { numRuns: runs(300) },
  );
  // Neither half of what is claimed may go untried.
  expect(Math.min(good, bad)).toBeGreaterThan(10);
});
