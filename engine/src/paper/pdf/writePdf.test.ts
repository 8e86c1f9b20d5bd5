import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { point } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { drawing, label, rectangle, type PaperDocument } from '../drawing/index.ts';
import { flow, paragraph, sheet } from '../layout/index.ts';
import { fonts } from '../testing/fonts.ts';
import { missingGlyphs, writePdf } from './index.ts';

const date = new Date(Date.UTC(2024, 5, 21, 12));
const paper = (words: string, changes: Partial<PaperDocument> = {}): PaperDocument => ({
  title: 'Skirt',
  language: 'en',
  date,
  pages: flow([paragraph(words)], sheet(), fonts),
  ...changes,
});
const text = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1');

describe('PDF', () => {
  test('the same document gives the same bytes, whatever was written in between', async () => {
    const first = await writePdf(paper('13½\u00a0in at the fold'), fonts);
    await writePdf(paper('something else, much longer'), fonts);
    expect(Buffer.compare(first, await writePdf(paper('13½\u00a0in at the fold'), fonts))).toBe(0);
  });

  test('its date is the document’s, and without one it has none', async () => {
    expect(text(await writePdf(paper('a'), fonts))).toContain('D:20240621120000Z');
    expect(text(await writePdf(paper('a', { date: null }), fonts))).not.toContain('D:');
  });

  test('a letter the fonts lack is named', () => {
    expect(missingGlyphs(paper('hem ½'), fonts)).toEqual([]);
    expect(missingGlyphs(paper('hem ᐃᓄᒃ'), fonts)).toEqual(['ᐃ', 'ᓄ', 'ᒃ']);
  });

  test('any words at all make a document', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 30 }), async (words) => {
        const bytes = await writePdf(paper(words, { title: words }), fonts);
        expect(text(bytes).endsWith('%%EOF\n')).toBe(true);
      }),
      { numRuns: 15 },
    );
  });

  test('a see-through area has its share of ink, and one that is not leaves the bytes as they were', async () => {
    const write = async (changes: object) => {
      const marks = [rectangle(1, 1, 9, 9, { fill: '#000000', ...changes })];
      const sheet = drawing({ width: mm(20), height: mm(20), title: 'a', description: '', marks });
      const page = { width: mm(20), height: mm(20), drawing: sheet };
      return text(await writePdf(paper('', { pages: [page] }), fonts));
    };
    expect(await write({ opacity: 0.25 })).toContain('/ca 0.25');
    expect(await write({ opacity: 1 })).toBe(await write({}));
    expect(await write({})).not.toContain('/ca ');
  });

  test('a document without pages, and a page without marks, are written too', async () => {
    const blank = drawing({ width: mm(50), height: mm(50), title: 'Blank', description: '', marks: [] });
    expect(text(await writePdf(paper('', { pages: [] }), fonts))).toContain('/Count 0');
    const page = { width: mm(50), height: mm(50), drawing: blank };
    expect(text(await writePdf(paper('', { pages: [page] }), fonts))).toContain('/Alt (Blank)');
    const words = { ...page, drawing: { ...blank, marks: [label(point(1, 9), 'a')] } };
    expect(text(await writePdf(paper('', { pages: [words] }), fonts))).toContain('/FontFile2');
  });
});
