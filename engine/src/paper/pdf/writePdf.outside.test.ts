// Source: poppler (pdfinfo, pdftotext, pdffonts, pdftoppm), a PDF reader that shares no code with the writer;
// paper sizes in points from ISO 216 and ANSI Y14.1: 595.276 × 841.890 and 612 × 792.
import { describe, expect, test } from 'vitest';
import { arc, point } from '../../geometry/index.ts';
import { inches, mm, radians } from '../../units/index.ts';
import {
  circle,
  drawing,
  group,
  label,
  rectangle,
  stroke,
  type Mark,
  type PaperDocument,
} from '../drawing/index.ts';
import {
  bold,
  column,
  figure,
  flow,
  heading,
  list,
  paperSizes,
  paragraph,
  sheet,
  table,
  type Block,
} from '../layout/index.ts';
import { fonts } from '../testing/fonts.ts';
import { poppler, printed, withoutPoppler, type Picture } from '../testing/poppler.ts';
import { writePdf } from './index.ts';

const document = (changes: Partial<PaperDocument>): PaperDocument => ({
  title: 'Skirt & <card> “½”',
  language: 'fr-CA',
  date: new Date(Date.UTC(2024, 0, 2)),
  pages: [],
  ...changes,
});
const a4 = paperSizes.a4;
const onA4 = (marks: readonly Mark[]): PaperDocument =>
  document({ pages: [{ ...a4, drawing: { ...a4, title: 'Test', description: 'Test squares', marks } }] });
const laidOut = (blocks: readonly Block[], size = a4): PaperDocument =>
  document({ pages: flow(blocks, sheet({ size, footer: (page, pages) => `${page} / ${pages}` }), fonts) });
const spaced = (text: string) => text.replace(/\s+/g, ' ').trim();

const thin = { width: mm(0.2), stroke: '#000000' };

/** Where ink crosses a level line, in millimetres: the middle of each dark stretch, weighed by its ink. */
function crossings(picture: Picture, level: number, way: 'across' | 'down'): readonly number[] {
  const found: number[] = [];
  let ink = 0;
  let moment = 0;
  const most = way === 'across' ? picture.width : picture.height;
  const fixed = Math.round(level * 10);
  for (let at = 0; at <= most; at++) {
    const dark = at === most ? 0 : way === 'across' ? picture.inkAt(at, fixed) : picture.inkAt(fixed, at);
    if (dark > 0.02) {
      ink += dark;
      moment += dark * (at + 0.5);
    } else if (ink > 0) {
      found.push(moment / ink / 10);
      ink = 0;
      moment = 0;
    }
  }
  return found;
}

describe.skipIf(withoutPoppler)('a PDF read by another program', () => {
  test.each([
    ['a4', 595.276, 841.89],
    ['letter', 612, 792],
    ['a3', 841.89, 1190.551],
    ['tabloid', 792, 1224],
  ] as const)('%s is %d × %d points', async (name, width, height) => {
    const bytes = await writePdf(laidOut([paragraph('hem')], paperSizes[name]), fonts);
    const box = /\/MediaBox \[0 0 (\S+) (\S+)\]/.exec(Buffer.from(bytes).toString('latin1'));
    expect(Math.abs(Number(box?.[1]) - width)).toBeLessThan(0.01);
    expect(Math.abs(Number(box?.[2]) - height)).toBeLessThan(0.01);
    const read = /Page size:\s+(\S+) x (\S+) pts/.exec(poppler('pdfinfo', ['-'], bytes));
    expect(Math.abs(Number(read?.[1]) - width)).toBeLessThan(0.01);
    expect(Math.abs(Number(read?.[2]) - height)).toBeLessThan(0.01);
  });

  test('squares of 100 mm and 1 in are so on paper, wherever a group puts them', async () => {
    const marks = [
      rectangle(20, 30, 100, 100, thin),
      group('scaled', [rectangle(0, 0, 50.8, 50.8, { ...thin, width: mm(0.4) })], {
        placement: { dx: mm(140), dy: mm(40), scale: 0.5 },
      }),
      group('turned', [rectangle(0, 0, inches(1), inches(1), thin)], {
        placement: { dx: mm(180), dy: mm(200), angle: radians(Math.PI / 2) },
      }),
    ];
    const picture = printed(await writePdf(onA4(marks), fonts));
    const expected: readonly (readonly [number, 'across' | 'down', readonly number[]])[] = [
      [100, 'across', [20, 120]],
      [70, 'down', [30, 130]],
      [50, 'across', [20, 120, 140, 165.4]],
      [150, 'down', [40, 65.4]],
      [210, 'across', [154.6, 180]],
      [170, 'down', [200, 225.4]],
    ];
    for (const [level, way, places] of expected) {
      const found = crossings(picture, level, way);
      expect(found).toHaveLength(places.length);
      places.forEach((place, i) => {
        expect(Math.abs((found[i] ?? 0) - place)).toBeLessThan(0.06);
      });
    }
  });

  test('every dot of ink of a circle of 80 mm lies 80 mm from its middle, and so does an arc of 60 mm', async () => {
    const middle = point(105, 140);
    const half = arc(middle, mm(60), radians(0.2), radians(-3));
    const picture = printed(
      await writePdf(onA4([circle(middle, mm(80), thin), stroke([half], thin)]), fonts),
    );
    let inked = 0;
    for (let y = 0; y < picture.height; y++)
      for (let x = 0; x < picture.width; x++) {
        if (picture.inkAt(x, y) < 0.3) continue;
        inked += 1;
        const away = Math.hypot((x + 0.5) / 10 - middle.x, (y + 0.5) / 10 - middle.y);
        expect(Math.min(Math.abs(away - 80), Math.abs(away - 60))).toBeLessThan(0.2);
        if (away < 70) expect((y + 0.5) / 10 - middle.y).toBeLessThan(60 * Math.sin(0.2) + 0.2);
      }
    expect(inked).toBeGreaterThan(10 * (2 * Math.PI * 80 + 180));
  });

  test('words come back as they were written', async () => {
    const signs =
      '⅛ ¼ ⅜ ½ ⅝ ¾ ⅞ ³⁄₁₆ 1⁵⁄₁₆ × ÷ √ − ± ² é è à ç œ Œ « » “ ” ’ ← ↑ → ↓ – — … • ° first office waffle';
    for (const words of [signs, [bold(signs)]]) {
      const bytes = await writePdf(laidOut([paragraph(words)]), fonts);
      expect(spaced(poppler('pdftotext', ['-', '-'], bytes))).toContain(signs);
    }
  });

  test('words of two weights and wrapped lines keep their spaces', async () => {
    const words = Array.from({ length: 60 }, (_, i) => `word${i}`);
    const spans = words.map((text, i) => ({ text: i === 0 ? text : ` ${text}`, bold: i % 3 === 0 }));
    const bytes = await writePdf(laidOut([paragraph(spans)]), fonts);
    expect(spaced(poppler('pdftotext', ['-', '-'], bytes))).toContain(words.join(' '));
    expect(spaced(poppler('pdfinfo', ['-struct-text', '-'], bytes))).toContain(words.join(' '));
  });

  test('a letter the fonts lack leaves a box in its place', async () => {
    const picture = printed(await writePdf(onA4([label(point(50, 60), 'ᐃ', { size: mm(10) })]), fonts));
    const across = crossings(picture, 57, 'across');
    expect(across.length).toBeGreaterThanOrEqual(2);
    for (const at of across) {
      expect(at).toBeGreaterThan(50);
      expect(at).toBeLessThan(60);
    }
  });

  test('words are as wide on paper as they were measured', async () => {
    const words = ['Waist', '13½', 'AVATAR', 'œuvre', '³⁄₁₆'];
    const marks = words.map((text, i) =>
      label(point(20, 20 + i * 20), text, { size: mm(9), bold: i % 2 === 1 }),
    );
    const boxes = poppler('pdftotext', ['-bbox', '-', '-'], await writePdf(onA4(marks), fonts));
    const read = [...boxes.matchAll(/xMin="([\d.]+)" yMin="[\d.]+" xMax="([\d.]+)"/g)].map(([, from, to]) => [
      (Number(from) / 72) * 25.4,
      (Number(to) / 72) * 25.4,
    ]);
    expect(read).toHaveLength(words.length);
    words.forEach((text, i) => {
      const font = i % 2 === 1 ? fonts.bold : fonts.regular;
      expect(Math.abs((read[i]?.[0] ?? 0) - 20)).toBeLessThan(0.02);
      expect(Math.abs((read[i]?.[1] ?? 0) - 20 - font.widthOf(text, mm(9)))).toBeLessThan(0.02);
    });
  });

  test('fonts are embedded as subsets, with their letters named', async () => {
    const bytes = await writePdf(laidOut([heading(1, 'Skirt'), paragraph('hem')]), fonts);
    const rows = poppler('pdffonts', ['-'], bytes).trim().split('\n').slice(2);
    expect(rows).toHaveLength(2);
    for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+SourceSans3-\w+ .* yes yes yes /);
  });

  test('title and language are told, and each part says what it is', async () => {
    const picture = drawing({
      width: mm(40),
      height: mm(20),
      title: 'Panel',
      description: 'Folded twice',
      marks: [circle(point(9, 9), mm(5))],
    });
    const blocks = [
      heading(1, 'Skirt'),
      paragraph('Wash first.'),
      list(['Fold'], 'box'),
      table([column('Item'), column('Need')], [['Elastic', '1 yd']]),
      figure(picture),
    ];
    const bytes = await writePdf(laidOut(blocks), fonts);
    const info = poppler('pdfinfo', ['-'], bytes);
    expect(info).toMatch(/Title:\s+Skirt & <card> “½”\n/);
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(Buffer.from(bytes).toString('latin1')).toContain('/Lang (fr-CA)');
    expect(Buffer.from(bytes).toString('latin1')).toContain('/DisplayDocTitle true');
    expect(Buffer.from(bytes).toString('latin1')).toContain('/Alt (Panel. Folded twice)');
    const shape = poppler('pdfinfo', ['-struct', '-'], bytes);
    expect(
      shape.match(/^\s*(Document|H1|P|L|LI|LBody|Table|TR|TH|TD|Figure)\b/gm)?.map((each) => each.trim()),
    ).toEqual([
      'Document',
      'H1',
      'P',
      'L',
      'LI',
      'LBody',
      'Table',
      'TR',
      'TH',
      'TH',
      'TR',
      'TD',
      'TD',
      'Figure',
    ]);
    expect(poppler('pdfinfo', ['-struct-text', '-'], bytes)).not.toContain('1 / 1');
  });
});
