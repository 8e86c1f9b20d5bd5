import PDFDocument from 'pdfkit';
import { fontOf, hasRoles, placedTexts, type PaperDocument, type PaperFonts } from '../drawing/index.ts';
import { drawPicture, drawTagged } from './structure.ts';

const POINTS_PER_MM = 72 / 25.4;

/**
 * Characters of a document that its fonts have no letter for, each once. The writer draws the font's
 * empty box for such a letter; it never leaves it out.
 */
export function missingGlyphs(document: PaperDocument, fonts: PaperFonts): readonly string[] {
  const texts = document.pages.flatMap((page) => placedTexts(page.drawing.marks));
  return [...new Set(texts.flatMap((mark) => fontOf(mark, fonts).missing(mark.text)))];
}

const joined = (chunks: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
};

/**
 * A document as a PDF at true size: pages to a thousandth of a point, fonts embedded (only the letters used),
 * tagged for screen readers (PDF 1.7, ISO 32000-1). Equal documents give equal bytes: the date is the
 * document's own, never the clock's.
 */
export async function writePdf(document: PaperDocument, fonts: PaperFonts): Promise<Uint8Array> {
  const pdf = new PDFDocument({
    autoFirstPage: false,
    // Without a font of its own pdfkit would load a standard one that isn't embedded.
    font: null as unknown as string,
    pdfVersion: '1.7',
    tagged: true,
    displayTitle: true,
    lang: document.language,
    info: {
      Title: document.title,
      Producer: 'Ribbonwright',
      Creator: 'Ribbonwright',
      CreationDate: document.date ?? new Date(0),
    },
  });
  if (document.date === null) delete pdf.info.CreationDate;
  // pdfkit's XMP packet holds the title unescaped: a title with "&" would break it. The same facts are in Info.
  Object.assign(pdf, { endMetadata: () => undefined });
  pdf.registerFont('regular', fonts.regular.bytes);
  pdf.registerFont('bold', fonts.bold.bytes);

  const chunks: Uint8Array[] = [];
  const written = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('end', () => {
      resolve(joined(chunks));
    });
    pdf.on('error', reject);
  });

  const whole = pdf.struct('Document');
  pdf.addStructure(whole);
  for (const { width, height, drawing } of document.pages) {
    pdf.addPage({ size: [width * POINTS_PER_MM, height * POINTS_PER_MM], margin: 0 });
    pdf.scale(POINTS_PER_MM).lineJoin('round');
    if (hasRoles(drawing.marks)) drawTagged(pdf, whole, drawing.marks, fonts);
    else drawPicture(pdf, whole, drawing.description || drawing.title, drawing.marks, fonts);
  }
  whole.end();
  pdf.end();
  return written;
}
