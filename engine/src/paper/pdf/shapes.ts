import { endOf, startOf, type Arc, type Path } from '../../geometry/index.ts';
import {
  arcPieces,
  dashesOf,
  fontOf,
  footBelow,
  startBefore,
  type Ink,
  type PaperFonts,
  type PathMark,
  type TextMark,
} from '../drawing/index.ts';

export type Pdf = PDFKit.PDFDocument;

/** A Bézier curve over an eighth of half a circle misses it by 4·10⁻⁹ of its radius: far below any printer. */
const CURVE = Math.PI / 8;

/** Control points at 4/3·tan(θ/4) of the radius along the tangents: the usual cubic for a circular arc. */
function curve(pdf: Pdf, piece: Arc): void {
  const { radius, start, sweep } = piece;
  const reach = (4 / 3) * Math.tan(sweep / 4) * radius;
  const from = startOf(piece);
  const to = endOf(piece);
  pdf.bezierCurveTo(
    from.x - reach * Math.sin(start),
    from.y + reach * Math.cos(start),
    to.x + reach * Math.sin(start + sweep),
    to.y - reach * Math.cos(start + sweep),
    to.x,
    to.y,
  );
}

function trace(pdf: Pdf, path: Path): void {
  const first = path[0];
  if (!first) return;
  const { x, y } = startOf(first);
  pdf.moveTo(x, y);
  for (const segment of path)
    if (segment.kind === 'line') pdf.lineTo(segment.to.x, segment.to.y);
    else for (const piece of arcPieces(segment, CURVE)) curve(pdf, piece);
}

export function drawPath(pdf: Pdf, { paths, closed, style }: PathMark): void {
  const { fill, stroke, width } = style;
  if (fill === null && stroke === null) return;
  pdf.save();
  if (style.opacity !== undefined && style.opacity < 1) pdf.opacity(style.opacity);
  if (stroke !== null) {
    pdf.lineWidth(width);
    const dashes = dashesOf(style);
    // pdfkit's types know one length; the writer itself takes a list.
    if (dashes.length > 0) pdf.dash(dashes as unknown as number, {});
  }
  for (const path of paths) {
    trace(pdf, path);
    if (closed && path.length > 0) pdf.closePath();
  }
  if (fill !== null && stroke !== null) pdf.fillAndStroke(fill, stroke, 'even-odd');
  else if (fill !== null) pdf.fill(fill, 'even-odd');
  else if (stroke !== null) pdf.stroke(stroke);
  pdf.restore();
}

/** Width of the rim on each side of a letter, of the em. */
const HALO = 0.18;

function drawHalo(pdf: Pdf, mark: TextMark, halo: Ink, x: number, y: number, fonts: PaperFonts): void {
  const font = fontOf(mark, fonts);
  const scale = mark.size / font.unitsPerEm;
  pdf.save();
  pdf.lineWidth(2 * HALO * mark.size);
  for (const outline of font.outlines(mark.text))
    for (const { command, args } of outline.commands) {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args.map((value, i) =>
        i % 2 === 0 ? x + (value + outline.x) * scale : y - (value + outline.y) * scale,
      );
      if (command === 'moveTo') pdf.moveTo(a, b);
      else if (command === 'lineTo') pdf.lineTo(a, b);
      else if (command === 'quadraticCurveTo') pdf.quadraticCurveTo(a, b, c, d);
      else if (command === 'bezierCurveTo') pdf.bezierCurveTo(a, b, c, d, e, f);
      else pdf.closePath();
    }
  pdf.stroke(halo);
  pdf.restore();
}

export function drawText(pdf: Pdf, mark: TextMark, fonts: PaperFonts): void {
  if (mark.text.trim() === '') return;
  const turned = mark.angle !== 0;
  if (turned) {
    pdf.save();
    pdf.translate(mark.at.x, mark.at.y).rotate((mark.angle * 180) / Math.PI);
  }
  const x = (turned ? 0 : mark.at.x) - startBefore(mark, fonts);
  const y = (turned ? 0 : mark.at.y) + footBelow(mark);
  if (mark.halo !== null) drawHalo(pdf, mark, mark.halo, x, y, fonts);
  pdf
    .font(mark.bold ? 'bold' : 'regular')
    .fontSize(mark.size)
    .fillColor(mark.ink)
    .text(mark.text, x, y, { lineBreak: false, baseline: 'alphabetic' });
  if (turned) pdf.restore();
}
