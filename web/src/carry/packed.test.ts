import { constants, deflateRawSync, deflateSync, inflateSync } from 'node:zlib';
import { exampleRequest, LARGEST_REQUEST } from '@ribbonwright/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyRequest } from '../../../engine/src/testing/requests.ts';
import { runs } from '../../../engine/src/testing/runs.ts';
import { pack, unpack } from './packed.ts';

const packedBy = (text: string): string => `1${deflateSync(text).toString('base64url')}`;
const codeOf = async (text: string) => {
  const arrived = await unpack(text);
  return arrived.ok ? 'ok' : arrived.errors[0]?.code;
};

test('every document comes back as it was, through letters that an address takes', async () => {
  await fc.assert(
    fc.asyncProperty(anyRequest, async (document) => {
      const packed = await pack(document);
      expect(packed).toMatch(/^1[A-Za-z0-9_-]+$/);
      expect(encodeURIComponent(packed)).toBe(packed);
      expect(await unpack(packed)).toEqual({
        ok: true,
        document: JSON.parse(JSON.stringify(document)) as unknown,
      });
    }),
    { numRuns: runs(60) },
  );
});

test('accents, syllabics and four thousand letters of teachings come back', async () => {
  const text = 'Été ᓀᐦᐃᔭᐤ 🧵 '.repeat(280);
  const document = { ...exampleRequest('fr'), teachings: { text } };
  expect(await unpack(await pack(document))).toEqual({ ok: true, document });
});

test('is plain zlib of JSON without whitespace', async () => {
  const document = exampleRequest('en');
  const packed = await pack(document);
  expect(inflateSync(Buffer.from(packed.slice(1), 'base64url')).toString()).toBe(JSON.stringify(document));
  expect(packed.length).toBeLessThan(900);
});

describe('what is refused', () => {
  test.each([
    ['nothing', ''],
    ['the format alone', '1'],
    ['no base64url', '1a+b/='],
    ['base64 of impossible length', '1abcde'],
    ['another alphabet', '1é'],
    ['an unknown format', 'xAAAA'],
    ['no deflate', '1_____'],
    ['no UTF-8', `1${deflateSync(Uint8Array.from([0x22, 0xff, 0x22])).toString('base64url')}`],
    ['JSON cut short', packedBy('{"body":')],
  ])('%s', async (_name, text) => {
    expect(await codeOf(text)).toBe('notJson');
  });

  test('a later format is told as such', async () => {
    expect(await codeOf('2AAAA')).toBe('newerVersion');
  });

  test('JSON that is no request has the errors of the engine', async () => {
    expect(await codeOf(packedBy('[]'))).toBe('notAnObject');
    expect(await codeOf(packedBy('{"body":{}}'))).toBe('missing');
  });

  test('every address that was cut short', async () => {
    const packed = await pack(exampleRequest('en'));
    for (let length = 0; length < packed.length; length += 7)
      expect(await codeOf(packed.slice(0, length)), String(length)).toBe('notJson');
  });

  test('a little that swells to a gigabyte is left as soon as it is too much', async () => {
    // A head of zlib, then block after block of raw deflate, none of them the last.
    const block = deflateRawSync(Buffer.alloc(8_000_000, ' '), { finishFlush: constants.Z_FULL_FLUSH });
    const bomb = Buffer.concat([Buffer.from([0x78, 0x9c]), ...Array.from({ length: 128 }, () => block)]);
    const before = performance.now();
    expect(await codeOf(`1${bomb.toString('base64url')}`)).toBe('tooLarge');
    expect(performance.now() - before).toBeLessThan(3000);
  });

  test('exactly as much as a request may be is still read', async () => {
    const json = JSON.stringify(exampleRequest('en'));
    expect(await codeOf(packedBy(json.padEnd(LARGEST_REQUEST)))).toBe('ok');
    expect(await codeOf(packedBy(json.padEnd(LARGEST_REQUEST + 1)))).toBe('tooLarge');
  });
});

test('damage never throws and never passes for another skirt', async () => {
  const letters = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_ =%é');
  const hits = fc.array(fc.tuple(fc.nat(), fc.constantFrom(...letters)), { minLength: 1, maxLength: 3 });
  let refusals = 0;
  await fc.assert(
    fc.asyncProperty(anyRequest, hits, async (document, changes) => {
      const packed = Array.from(await pack(document));
      for (const [at, value] of changes) packed[at % packed.length] = value;
      const arrived = await unpack(packed.join(''));
      if (arrived.ok) expect(arrived.document).toEqual(JSON.parse(JSON.stringify(document)));
      else expect(arrived.errors.length).toBeGreaterThan(0);
      if (!arrived.ok) refusals++;
    }),
    { numRuns: runs(300) },
  );
  expect(refusals).toBeGreaterThan(100);
});
