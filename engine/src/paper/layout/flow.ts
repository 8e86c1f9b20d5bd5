import { point } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { group, label, placedTexts, type Mark, type Page, type PaperFonts } from '../drawing/index.ts';
import type { Block } from './block.ts';
import { paginate } from './paginate.ts';
import { assemble } from './piece.ts';
import { setBlocks } from './setBlock.ts';
import { contentBox, marginOf, type Sheet } from './sheet.ts';
import { plainTheme, type Theme } from './theme.ts';

/** A line at the head or foot of a page; too long a one is set smaller, never past the margin. */
function edgeLine(text: string, edge: 'head' | 'foot', of: Sheet, fonts: PaperFonts, theme: Theme): Mark {
  const margin = marginOf(of);
  const width = fonts.regular.widthOf(text, theme.small);
  const size = mm(theme.small * Math.min(1, (of.size.width - 2 * margin) / width));
  const at =
    edge === 'head'
      ? point(margin, margin)
      : point(of.size.width - margin, of.size.height - margin - theme.small * 0.3);
  return group(
    '',
    [
      label(at, text, {
        size,
        ink: theme.quiet,
        align: edge === 'head' ? 'start' : 'end',
        baseline: edge === 'head' ? 'top' : 'foot',
      }),
    ],
    { role: 'ornament' },
  );
}

/**
 * Blocks set one under another on as many pages as they need; at least one. Nothing passes the margins: long
 * words are parted, and a picture or row that no page could hold is made smaller.
 */
export function flow(
  blocks: readonly Block[],
  of: Sheet,
  fonts: PaperFonts,
  theme: Theme = plainTheme,
): readonly Page[] {
  const box = contentBox(of, theme);
  const pieces = setBlocks(blocks, box.width, { fonts, theme, pageHeight: box.height });
  const pages = paginate(pieces, box.height);
  const title = blocks.find((block) => block.kind === 'heading')?.text ?? of.header;
  return pages.map((placed, index) => {
    const footer = of.footer?.(index + 1, pages.length) ?? '';
    const marks: Mark[] = [];
    if (of.header !== '') marks.push(edgeLine(of.header, 'head', of, fonts, theme));
    marks.push(group('', assemble(placed), { placement: { dx: mm(box.left), dy: mm(box.top) } }));
    if (footer !== '') marks.push(edgeLine(footer, 'foot', of, fonts, theme));
    const words = placedTexts(marks).map(({ text }) => text.trim());
    const { width, height } = of.size;
    return { width, height, drawing: { width, height, title, description: words.join(' '), marks } };
  });
}
