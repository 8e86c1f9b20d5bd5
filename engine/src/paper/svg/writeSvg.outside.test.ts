// Source: pdfkit's own reader of SVG path data and poppler's renderer: the outlines of the SVG, drawn by
// them, are what the PDF writer draws, though that writes arcs as curves and words from the font.
import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { arc, point } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import { arrow, circle, dimension, drawing, group, label, rectangle, stroke } from '../drawing/index.ts';
import { writePdf } from '../pdf/index.ts';
import { fonts } from '../testing/fonts.ts';
import { printed, withoutPoppler, type Picture } from '../testing/poppler.ts';
import { writeSvg } from './index.ts';

const picture = drawing({
  width: mm(120),
  height: mm(90),
  title: 'Panel',
  description: 'A panel',
  marks: [
    rectangle(10, 10, 50, 30, { fill: '#f2d13c', pattern: 'diagonal', width: mm(0.4) }),
    circle(point(90, 30), mm(17.3), { dash: 'chalk' }),
    stroke([arc(point(60, -200), mm(280), radians(1.2), radians(0.7))], { dash: 'fold', width: mm(0.6) }),
    arrow(point(15, 70), point(50, 50)),
    dimension({ from: point(70, 80), to: point(110, 60), text: '13½ in', offset: mm(-6) }),
    label(point(90, 30), 'Waist ³⁄₁₆', { align: 'middle', baseline: 'middle', bold: true, size: mm(6) }),
    group('turned', [label(point(0, 0), 'œuvre, à plat', { align: 'end', baseline: 'top' })], {
      placement: { dx: mm(60), dy: mm(60), scale: 1.5, angle: radians(-0.4) },
    }),
  ],
});

const attribute = (tag: string, name: string) => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1];
const numbers = (text: string) => text.trim().split(/\s+/).map(Number);

function transformed(pdf: PDFKit.PDFDocument, tag: string): void {
  pdf.save();
  for (const [, name, values = ''] of (attribute(tag, 'transform') ?? '').matchAll(/(\w+)\(([^)]*)\)/g)) {
    const [a = 0, b = a] = numbers(values);
    if (name === 'translate') pdf.translate(a, b);
    else if (name === 'rotate') pdf.rotate(a);
    else pdf.scale(a, b);
  }
}

/** The SVG's paths as pdfkit reads them. */
async function drawnFrom(svg: string): Promise<Uint8Array> {
  const pdf = new PDFDocument({ size: [(120 / 25.4) * 72, (90 / 25.4) * 72], margin: 0 });
  const chunks: Buffer[] = [];
  pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
  const done = new Promise((resolve) => pdf.on('end', resolve));
  pdf.scale(72 / 25.4).lineJoin('round');
  for (const [tag] of svg.matchAll(/<g[^>]*>|<\/g>|<path[^>]*>/g))
    if (tag === '</g>') pdf.restore();
    else {
      transformed(pdf, tag);
      if (tag.startsWith('<g')) continue;
      const data = attribute(tag, 'd') ?? '';
      const fill = attribute(tag, 'fill') ?? 'none';
      const line = attribute(tag, 'stroke');
      const dashes = attribute(tag, 'stroke-dasharray');
      pdf.lineWidth(Number(attribute(tag, 'stroke-width') ?? 1));
      if (dashes) pdf.dash(numbers(dashes) as unknown as number, {});
      const drawLine = () => line && pdf.path(data).stroke(line);
      const isHalo = tag.includes('paint-order');
      if (isHalo) drawLine();
      if (fill !== 'none') pdf.path(data).fill(fill, tag.includes('evenodd') ? 'even-odd' : 'non-zero');
      if (!isHalo) drawLine();
      pdf.restore();
    }
  pdf.end();
  await done;
  return Buffer.concat(chunks);
}

/** Dots of full ink in one picture with none within a dot (0.1 mm) in the other; letters are smoothed otherwise than areas. */
function strays(one: Picture, other: Picture): { readonly ink: number; readonly count: number } {
  let ink = 0;
  let count = 0;
  for (let y = 1; y < one.height - 1; y++)
    for (let x = 1; x < one.width - 1; x++) {
      if (one.inkAt(x, y) < 0.6) continue;
      ink += 1;
      const near = [-1, 0, 1].some((dy) => [-1, 0, 1].some((dx) => other.inkAt(x + dx, y + dy) > 0.45));
      count += near ? 0 : 1;
    }
  return { ink, count };
}

describe.skipIf(withoutPoppler)('the SVG beside the PDF', () => {
  test('shows the same within a tenth of a millimetre', async () => {
    const { width, height } = picture;
    const page = { width, height, drawing: picture };
    const document = { title: 'Panel', language: 'en', date: null, pages: [page] };
    const pdf = printed(await writePdf(document, fonts));
    const svg = printed(await drawnFrom(writeSvg(picture, { fonts })));
    const stray = strays(pdf, svg);
    expect(stray.ink).toBeGreaterThan(10_000);
    expect(stray.count).toBeLessThan(stray.ink / 1000);
    expect(strays(svg, pdf).count).toBeLessThan(stray.ink / 1000);
  });
});
