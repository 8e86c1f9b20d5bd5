import { point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { group, place, straight } from '../drawing/index.ts';
import { paragraph, type Block, type FigureBlock, type SideBySide } from './block.ts';
import type { Setting } from './lines.ts';
import { assemble, owner, piece, stack, type Piece } from './piece.ts';
import { setTable } from './setTable.ts';
import { setHeading, setList, setParagraph } from './setText.ts';

function setFigure(block: FigureBlock, width: Mm, setting: Setting): readonly Piece[] {
  const { drawing } = block;
  const caption = setParagraph(paragraph(block.caption, { size: 'small', quiet: true }), mm(width), setting);
  const room = setting.pageHeight - stack(caption).height - setting.theme.gap;
  const most = { width: block.maxWidth ?? width, height: block.maxHeight ?? room };
  const scale = Math.min(
    1,
    most.width / drawing.width,
    width / drawing.width,
    most.height / drawing.height,
    Math.max(room, setting.pageHeight / 2) / drawing.height,
  );
  const x = block.align === 'middle' ? (width - drawing.width * scale) / 2 : 0;
  const alt = [drawing.title, drawing.description].filter((text) => text !== '').join('. ');
  const image = piece(drawing.height * scale, [place(drawing, mm(x), mm(0), scale)], {
    owners: [owner('figure', alt)],
    gap: setting.theme.gap * 1.4,
    keepWithNext: caption.length > 0,
  });
  return [image, ...caption];
}

function setSideBySide(block: SideBySide, width: Mm, setting: Setting): readonly Piece[] {
  const { gutter, gap } = setting.theme;
  const room = width - gutter * (block.parts.length - 1);
  const shares = block.parts.reduce((sum, { share }) => sum + share, 0);
  let x = 0;
  let height = 0;
  const marks = block.parts.map(({ share, blocks }) => {
    const wide = mm((room * share) / shares);
    const stacked = stack(setBlocks(blocks, wide, setting));
    const part = group('', assemble(stacked.placed), { placement: { dx: mm(x) } });
    x += wide + gutter;
    height = Math.max(height, stacked.height);
    return part;
  });
  if (height > setting.pageHeight)
    return setBlocks(
      block.parts.flatMap(({ blocks }) => blocks),
      width,
      setting,
    );
  return [piece(height, marks, { gap: gap * 1.4 })];
}

function setBlock(block: Block, width: Mm, setting: Setting): readonly Piece[] {
  switch (block.kind) {
    case 'heading':
      return setHeading(block, width, setting);
    case 'paragraph':
      return setParagraph(block, width, setting);
    case 'list':
      return setList(block, width, setting);
    case 'table':
      return setTable(block, width, setting);
    case 'figure':
      return setFigure(block, width, setting);
    case 'columns':
      return setSideBySide(block, width, setting);
    case 'space':
      return [piece(0, [], { gap: block.height })];
    case 'rule':
      return [
        piece(0, [straight(point(0, 0), point(width, 0), { stroke: setting.theme.rule, width: mm(0.25) })], {
          gap: setting.theme.gap * 1.6,
        }),
      ];
    case 'together':
      return setBlocks(block.blocks, width, setting).map((each, i, all) =>
        i < all.length - 1 ? { ...each, keepWithNext: true } : each,
      );
    case 'pageBreak':
      return [piece(0, [], { endsPage: true })];
  }
}

/** Blocks as pieces, in order, at a width. */
export function setBlocks(blocks: readonly Block[], width: Mm, setting: Setting): readonly Piece[] {
  return blocks.flatMap((block) => setBlock(block, width, setting));
}
