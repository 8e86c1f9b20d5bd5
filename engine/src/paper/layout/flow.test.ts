import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { point } from '../../geometry/index.ts';
import { inches, mm } from '../../units/index.ts';
import {
  drawing,
  footBelow,
  fontOf,
  label,
  placedTexts,
  rectangle,
  startBefore,
  type Drawing,
  type GroupMark,
  type Mark,
  type Page,
} from '../drawing/index.ts';
import { fonts } from '../testing/fonts.ts';
import {
  bold,
  column,
  figure,
  flow,
  heading,
  list,
  pageBreak,
  paperSizes,
  paragraph,
  plain,
  rule,
  sheet,
  sideBySide,
  sideways,
  space,
  table,
  together,
  type Block,
} from './index.ts';

const swatch = (width: number, height: number, words = 'red'): Drawing =>
  drawing({
    width: mm(width),
    height: mm(height),
    title: words,
    description: `A picture of ${words}`,
    marks: [rectangle(0, 0, width, height), label(point(width, height / 2), words, { align: 'end' })],
  });

const words = fc.string({
  unit: fc.constantFrom('a', 'W', 'é', '½', ' ', ' ', '\u00a0', '-'),
  maxLength: 80,
});
const leaf: fc.Arbitrary<Block> = fc.oneof(
  fc
    .tuple(fc.constantFrom(1 as const, 2 as const, 3 as const), words)
    .map(([level, text]) => heading(level, text)),
  fc.tuple(words, words).map(([a, b]) => paragraph([plain(a), bold(b)])),
  fc
    .tuple(
      fc.array(words, { maxLength: 6 }),
      fc.constantFrom('box' as const, 'dot' as const, 'number' as const),
    )
    .map(([items, marker]) => list(items, marker)),
  fc.array(fc.tuple(words, words), { maxLength: 30 }).map((rows) =>
    table(
      [column('Item', 3), column('Colour', 1), column('Need', 1, 'end')],
      rows.map(([a, b]) => [a, swatch(8, 4, ''), b]),
    ),
  ),
  fc
    .tuple(fc.integer({ min: 10, max: 900 }), fc.integer({ min: 10, max: 900 }), words)
    .map(([w, h, caption]) => figure(swatch(w, h), { caption, align: 'middle' })),
  fc.constantFrom<Block>(rule, pageBreak, space(mm(40))),
);
const blocks = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: leaf },
    { weight: 1, arbitrary: fc.array(leaf, { maxLength: 3 }).map((some) => together(...some)) },
    {
      weight: 1,
      arbitrary: fc
        .tuple(fc.array(leaf, { maxLength: 2 }), fc.array(leaf, { maxLength: 3 }))
        .map(([a, b]) => sideBySide({ share: 2, blocks: a }, { share: 3, blocks: b })),
    },
  ),
  { maxLength: 8 },
);
const papers = fc.constantFrom(paperSizes.a4, paperSizes.letter, sideways(paperSizes.a4));

const wordsOn = (page: Page) => page.drawing.description;
const groupsOf = (marks: readonly Mark[]): readonly GroupMark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? [mark, ...groupsOf(mark.marks)] : []));
const rolesOn = (page: Page | undefined) =>
  groupsOf(page?.drawing.marks ?? []).flatMap(({ role }) => (role === null ? [] : [role]));

describe('a page of blocks', () => {
  test('no word passes a margin, whatever is set', () => {
    fc.assert(
      fc.property(blocks, papers, fc.constantFrom(10, 14, 25), (all, size, margin) => {
        const of = sheet({
          size,
          margin: mm(margin),
          header: 'Skirt',
          footer: (n, count) => `${n} of ${count}`,
        });
        for (const page of flow(all, of, fonts))
          for (const mark of placedTexts(page.drawing.marks)) {
            const left = mark.at.x - startBefore(mark, fonts);
            const right = left + fontOf(mark, fonts).widthOf(mark.text.replace(/ +$/, ''), mark.size);
            const foot = mark.at.y + footBelow(mark);
            expect(left).toBeGreaterThanOrEqual(margin - 0.01);
            expect(right).toBeLessThanOrEqual(size.width - margin + 0.01);
            expect(foot - 0.7 * mark.size).toBeGreaterThanOrEqual(margin - 0.2);
            expect(foot + 0.25 * mark.size).toBeLessThanOrEqual(size.height - margin + 0.2);
          }
      }),
      { numRuns: 60 },
    );
  });

  test('every page is the sheet, from corner to corner; without blocks there is one', () => {
    const size = paperSizes.letter;
    const [page, ...more] = flow([], sheet({ size }), fonts);
    expect(more).toEqual([]);
    expect([page?.width, page?.drawing.height]).toEqual([inches(8.5), inches(11)]);
  });

  test('a margin below what printers can reach is taken as 10 mm', () => {
    const [page] = flow([paragraph('hem')], sheet({ margin: mm(2) }), fonts);
    expect(placedTexts(page?.drawing.marks ?? [])[0]?.at.x).toBe(10);
  });

  test('pages are numbered and counted at their foot', () => {
    const pages = flow(
      [paragraph('a'), pageBreak, paragraph('b')],
      sheet({ footer: (n, of) => `${n}/${of}` }),
      fonts,
    );
    expect(pages.map(wordsOn)).toEqual(['a 1/2', 'b 2/2']);
  });

  test('a long table has its headings on every page and each row once', () => {
    const rows = Array.from({ length: 90 }, (_, i) => [`row${i}`, '1 yd']);
    const pages = flow([table([column('Item', 2), column('Need', 1, 'end')], rows)], sheet(), fonts);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(wordsOn(page)).toMatch(/^Item Need /);
    expect(pages.flatMap((page) => wordsOn(page).match(/row\d+/g) ?? [])).toEqual(rows.map(([name]) => name));
    expect(rolesOn(pages[0]).filter((role) => role === 'table')).toHaveLength(1);
  });

  test('a heading is never the last on its page', () => {
    for (let before = 40; before < 80; before++) {
      const filler = Array.from({ length: before }, () => paragraph('x', { size: 'small' }));
      const pages = flow([...filler, heading(2, 'Marks'), paragraph('13½ in')], sheet(), fonts);
      for (const page of pages) expect(wordsOn(page)).not.toMatch(/Marks$/);
    }
  });

  test('what is kept together stands on one page, in order', () => {
    const filler = Array.from({ length: 30 }, (_, i) => paragraph(`before${i}`));
    const kept = together(heading(3, 'kept0'), paragraph('kept1'), list(['kept2', 'kept3'], 'box'));
    const pages = flow([...filler, kept], sheet(), fonts);
    const holding = pages.filter((page) => wordsOn(page).includes('kept'));
    expect(holding).toHaveLength(1);
    expect(wordsOn(holding[0] ?? { width: mm(0), height: mm(0), drawing: swatch(1, 1) })).toMatch(
      /kept0 kept1 kept2 kept3/,
    );
  });

  test('a figure that fits is at its own size; one that doesn’t is made smaller; none is made larger', () => {
    const scaleOf = (width: number, height: number) => {
      const [page] = flow([figure(swatch(width, height))], sheet(), fonts);
      return placedTexts(page?.drawing.marks ?? [])[0]?.size;
    };
    expect(scaleOf(182, 100)).toBe(3.5);
    expect(scaleOf(364, 100)).toBeCloseTo(1.75);
    expect(scaleOf(5, 5)).toBe(3.5);
  });

  test('blocks side by side stand side by side, and follow one another where no page could hold them', () => {
    const long = Array.from({ length: 80 }, (_, i) => paragraph(`line${i}`));
    const [first] = flow(
      [sideBySide({ share: 1, blocks: [paragraph('left')] }, { share: 1, blocks: [paragraph('right')] })],
      sheet(),
      fonts,
    );
    const [left, right] = placedTexts(first?.drawing.marks ?? []);
    expect(left?.at.y).toBe(right?.at.y);
    expect(right?.at.x).toBeGreaterThan(105);
    const pages = flow(
      [sideBySide({ share: 1, blocks: long }, { share: 1, blocks: [paragraph('right')] })],
      sheet(),
      fonts,
    );
    expect(pages.length).toBeGreaterThan(1);
    expect(wordsOn(pages.at(-1) ?? { width: mm(0), height: mm(0), drawing: swatch(1, 1) })).toMatch(/right$/);
  });

  test('items are numbered on from the first', () => {
    const [page] = flow([list(['cut', 'sew'], 'number', 9)], sheet(), fonts);
    expect(page?.drawing.description).toBe('9. cut 10. sew');
  });

  test('parts say what they are, in reading order', () => {
    const [page] = flow(
      [heading(1, 'Skirt'), paragraph('a'), list(['b']), figure(swatch(9, 9)), table([column('')], [['c']])],
      sheet({ header: 'Skirt' }),
      fonts,
    );
    expect(rolesOn(page)).toEqual([
      'ornament',
      'heading1',
      'paragraph',
      'list',
      'listItem',
      'figure',
      'table',
      'row',
      'cell',
    ]);
  });
});
