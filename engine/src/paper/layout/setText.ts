import { point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { group, label, rectangle, straight, type Mark, type RoleName } from '../drawing/index.ts';
import type { Heading, List, Paragraph } from './block.ts';
import { isBlank, setLines, type SetLine, type Setting } from './lines.ts';
import { owner, piece, type Owner, type Piece } from './piece.ts';

/** Lines as pieces; neither the first nor the last line stands alone on a page. */
function linePieces(lines: readonly SetLine[], owners: readonly Owner[], gap: number): Piece[] {
  return lines.map((line, i) =>
    piece(line.height, line.marks, {
      owners,
      gap: i === 0 ? gap : 0,
      keepWithNext: i < lines.length - 1 && (i === 0 || i === lines.length - 2),
    }),
  );
}

export function setParagraph(block: Paragraph, width: Mm, setting: Setting): readonly Piece[] {
  if (isBlank(block.words)) return [];
  const { theme } = setting;
  const look = { size: theme[block.size], ink: block.quiet ? theme.quiet : theme.ink };
  return linePieces(setLines(block.words, width, look, setting), [owner('paragraph')], theme.gap);
}

const TIGHT = 1.15;

export function setHeading(block: Heading, width: Mm, setting: Setting): readonly Piece[] {
  const { theme } = setting;
  const role: RoleName = `heading${block.level}`;
  const size = theme[`heading${block.level}`];
  const owners = [owner(role)];
  const lines = setLines(block.text, width, { size, ink: theme.ink, bold: true, leading: TIGHT }, setting);
  const pieces = lines.map((line, i) =>
    piece(line.height, line.marks, {
      owners,
      gap: i > 0 ? 0 : block.level === 3 ? theme.aboveHeading * 0.7 : theme.aboveHeading,
      keepWithNext: true,
    }),
  );
  if (block.level !== 1) return pieces;
  const chalk = straight(point(0, 0), point(width, 0), { stroke: theme.ink, width: mm(0.45), dash: 'chalk' });
  return [...pieces, piece(1.4, [chalk], { gap: 1.6, keepWithNext: true })];
}

/** The marker of an item beside its first line, and how far the words stand in. */
function marker(list: List, index: number, line: SetLine, setting: Setting): Mark {
  const { theme } = setting;
  const middle = line.height / 2;
  if (list.marker === 'box') {
    const side = theme.tickBox;
    return rectangle(0.2, middle - side / 2, side, side, { width: mm(0.35), stroke: theme.ink });
  }
  const sign = list.marker === 'dot' ? '•' : `${list.first + index}.`;
  return label(point(0, middle), sign, {
    size: theme.body,
    baseline: 'middle',
    bold: list.marker === 'number',
    ink: theme.ink,
  });
}

function indentOf(list: List, setting: Setting): number {
  const { theme, fonts } = setting;
  if (list.marker === 'box') return theme.tickBox + 2.4;
  if (list.marker === 'dot') return theme.body;
  return fonts.bold.widthOf(`${list.first + list.items.length - 1}.`, theme.body) + theme.body * 0.6;
}

export function setList(list: List, width: Mm, setting: Setting): readonly Piece[] {
  const { theme } = setting;
  const whole = owner('list');
  const indent = indentOf(list, setting);
  return list.items.flatMap((words, index) => {
    const lines = setLines(words, mm(width - indent), { size: theme.body, ink: theme.ink }, setting);
    const moved = lines.map((line, i) => ({
      height: line.height,
      marks: [
        ...(i === 0 ? [marker(list, index, line, setting)] : []),
        group('', line.marks, { placement: { dx: mm(indent) } }),
      ],
    }));
    const gap = index === 0 ? theme.gap : theme.gap * 0.6;
    return linePieces(moved, [whole, owner('listItem')], gap);
  });
}
