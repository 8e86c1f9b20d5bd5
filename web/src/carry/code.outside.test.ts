// Source: the `jsqr` library, a reader written apart from `qrcode`, which makes our codes.
import { exampleRequest, writeSvg, type Drawing } from '@ribbonwright/engine';
import fc from 'fast-check';
import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { anyRequest } from '../../../engine/src/testing/requests.ts';
import { runs } from '../../../engine/src/testing/runs.ts';
import { addressIn, addressWith } from './arriving.ts';
import { codeFor } from './code.ts';
import { pack, unpack } from './packed.ts';

const SCALE = 4;
const words = { title: 'Robin', description: 'A code' };
const home = { origin: 'https://table.example', pathname: '/skirts/' };

/** Paints the marks in their order, each a set of rectangles on whole millimetres. Transparent where nothing is. */
function painted({ width, height, marks }: Drawing) {
  const pixels = new Uint8ClampedArray(4 * width * height * SCALE ** 2);
  for (const mark of marks) {
    if (mark.kind !== 'path' || mark.style.fill === null) throw new Error('no area');
    const value = parseInt(mark.style.fill.slice(1, 3), 16);
    for (const path of mark.paths) {
      const corners = path.map((side) => (side.kind === 'line' ? side.from : { x: NaN, y: NaN }));
      const [xs, ys] = [corners.map(({ x }) => x * SCALE), corners.map(({ y }) => y * SCALE)];
      for (let y = Math.min(...ys); y < Math.max(...ys); y++)
        for (let x = Math.min(...xs); x < Math.max(...xs); x++)
          pixels.set([value, value, value, 255], 4 * (y * width * SCALE + x));
    }
  }
  return { pixels, width: width * SCALE, height: height * SCALE };
}

function readBack(drawing: Drawing | null): string | null {
  if (!drawing) return null;
  const { pixels, width, height } = painted(drawing);
  return jsQR(pixels, width, height, { inversionAttempts: 'dontInvert' })?.data ?? null;
}

describe('a code', () => {
  test('of any skirt is read back, and the skirt with it', async () => {
    let read = 0;
    await fc.assert(
      fc.asyncProperty(anyRequest, async (document) => {
        const address = addressWith(await pack(document), home);
        const found = readBack(await codeFor(address, words));
        expect(found).toBe(address);
        read++;
        expect(await unpack(addressIn(found ?? '') ?? '')).toEqual({
          ok: true,
          document: JSON.parse(JSON.stringify(document)) as unknown,
        });
      }),
      { numRuns: runs(12), endOnFailure: true },
    );
    expect(read).toBeGreaterThan(0);
  });

  test.each([1, 20, 200, 800, 1000, 1001, 2000, 2953])('of %d letters is read back', async (length) => {
    const text = 'https://table.example/#/arriving/1abcDEF-_'.repeat(99).slice(0, length);
    expect(readBack(await codeFor(text, words))).toBe(text);
  });

  // Versions 22 to 24 at either correction: jsqr can't read 23 (https://github.com/cozmo/jsQR/issues/251).
  test.each([779, 780, 857, 858, 911, 912, 1003, 1004, 1091, 1092, 1171])(
    'of %d letters, as many as a skirt has, is read back',
    async (length) => {
      const drawing = await codeFor('aB-_9'.repeat(300).slice(0, length), words);
      expect(drawing?.width).not.toBe(17 + 4 * 23 + 8);
      expect(readBack(drawing)).toHaveLength(length);
    },
  );

  test('of letters beyond ASCII is read back', async () => {
    expect(readBack(await codeFor('Été ᓀᐦᐃᔭᐤ', words))).toBe('Été ᓀᐦᐃᔭᐤ');
  });

  test('has four modules of white on every side', async () => {
    const drawing = await codeFor('Robin', words);
    if (!drawing) throw new Error('no code');
    const [ground, dark] = drawing.marks;
    if (ground?.kind !== 'path' || dark?.kind !== 'path') throw new Error('no areas');
    const points = dark.paths.flat().map((side) => (side.kind === 'line' ? side.from : { x: NaN, y: NaN }));
    expect(ground.style.fill).toBe('#ffffff');
    // The smallest code has 21 modules a side.
    expect([drawing.width, drawing.height]).toEqual([29, 29]);
    for (const along of [points.map(({ x }) => x), points.map(({ y }) => y)])
      expect([Math.min(...along), Math.max(...along)]).toEqual([4, 25]);
  });

  test('keeps more correction where it is small, and fewer modules where it is large', async () => {
    const sideOf = async (length: number) => ((await codeFor('a'.repeat(length), words))?.width ?? 0) - 8;
    // ISO/IEC 18004, table 7: at M version 25 holds 997 bytes and 26 holds 1059; at L version 22 holds 1003.
    expect(await sideOf(997)).toBe(17 + 4 * 25);
    expect(await sideOf(1000)).toBe(17 + 4 * 26);
    expect(await sideOf(1001)).toBe(17 + 4 * 22);
  });

  test('is none for nothing, or for more than a code can hold', async () => {
    expect(await codeFor('', words)).toBeNull();
    expect(await codeFor('a'.repeat(2953), words)).not.toBeNull();
    expect(await codeFor('a'.repeat(2954), words)).toBeNull();
    expect(await codeFor('é'.repeat(1477), words)).toBeNull();
  });

  test('is a drawing that the writers take, with its words', async () => {
    const packed = await pack(exampleRequest('en'));
    const drawing = await codeFor(addressWith(packed, home), words);
    if (!drawing) throw new Error('no code');
    const svg = writeSvg(drawing, { id: 'code' });
    expect(svg).toContain('<title id="code-title">Robin</title>');
    expect(svg).toContain('#000000');
  });
});
