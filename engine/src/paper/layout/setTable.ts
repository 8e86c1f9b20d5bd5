import { point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { group, place, straight, type Drawing, type Mark, type RoleName } from '../drawing/index.ts';
import type { Cell, Column, Table } from './block.ts';
import { setLines, type Setting, type TextLook } from './lines.ts';
import { owner, piece, type Owner, type Piece } from './piece.ts';

interface Slot {
  readonly x: number;
  readonly width: Mm;
  readonly align: Column['align'];
}

function slotsOf(columns: readonly Column[], width: Mm, gutter: number): readonly Slot[] {
  const room = width - gutter * (columns.length - 1);
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  let x = 0;
  return columns.map(({ share, align }) => {
    const slot = { x, width: mm((room * share) / shares), align };
    x += slot.width + gutter;
    return slot;
  });
}

const isDrawing = (cell: Cell): cell is Drawing => typeof cell === 'object' && 'marks' in cell;

interface SetCell {
  readonly height: number;
  readonly marks: readonly Mark[];
}

function setDrawing(drawing: Drawing, slot: Slot): SetCell {
  const scale = Math.min(1, slot.width / drawing.width);
  const share = { start: 0, middle: 0.5, end: 1 }[slot.align];
  const x = mm((slot.width - drawing.width * scale) * share);
  const image = place(drawing, x, mm(0), scale);
  const tagged =
    drawing.description === '' ? image : group('', [image], { role: 'figure', alt: drawing.description });
  return { height: drawing.height * scale, marks: [tagged] };
}

function setWords(cell: Exclude<Cell, Drawing>, slot: Slot, look: TextLook, setting: Setting): SetCell {
  let height = 0;
  const marks = setLines(cell, slot.width, { ...look, align: slot.align }, setting).map((line) => {
    const placed = group('', line.marks, { placement: { dy: mm(height) } });
    height += line.height;
    return placed;
  });
  return { height, marks };
}

interface RowLook {
  readonly text: TextLook;
  readonly role: RoleName;
  readonly rule: { readonly stroke: string; readonly width: Mm };
}

function setRow(
  cells: readonly Cell[],
  slots: readonly Slot[],
  width: Mm,
  look: RowLook,
  owners: readonly Owner[],
  setting: Setting,
): Piece {
  const { cellPadding } = setting.theme;
  const set = slots.map((slot, i): SetCell => {
    const cell = cells[i] ?? '';
    return isDrawing(cell) ? setDrawing(cell, slot) : setWords(cell, slot, look.text, setting);
  });
  const line = look.text.size * (look.text.leading ?? setting.theme.leading);
  const height = set.reduce((most, cell) => Math.max(most, cell.height), 0) + 2 * cellPadding;
  const marks = set.map((cell, i): Mark => {
    // A drawing lower than a line of words stands in the middle of that line.
    const down = cellPadding + Math.max(0, line - cell.height) / 2;
    return group('', cell.marks, {
      role: look.role,
      placement: { dx: mm(slots[i]?.x ?? 0), dy: mm(down) },
    });
  });
  const rule = straight(point(0, height), point(width, height), look.rule);
  return piece(height, [...marks, rule], { owners: [...owners, owner('row')] });
}

export function setTable(table: Table, width: Mm, setting: Setting): readonly Piece[] {
  const { theme } = setting;
  const slots = slotsOf(table.columns, width, theme.gutter * 0.8);
  const whole = owner('table');
  const text = { size: mm(theme.body * 0.94), ink: theme.ink };
  const body: RowLook = { text, role: 'cell', rule: { stroke: theme.rule, width: mm(0.18) } };
  const head: RowLook = {
    text: { size: theme.small, ink: theme.ink, bold: true },
    role: 'headerCell',
    rule: { stroke: theme.ink, width: mm(0.35) },
  };
  const hasHeadings = table.columns.some(({ heading }) => heading !== '');
  const headings = hasHeadings
    ? setRow(
        table.columns.map(({ heading }) => heading),
        slots,
        width,
        head,
        [whole],
        setting,
      )
    : null;
  const rows = table.rows.map((cells, i, all) => ({
    ...setRow(cells, slots, width, body, [whole], setting),
    gap: i === 0 && !headings ? theme.gap : 0,
    repeat: headings,
    // No row stands alone at the foot of a page, or at the top of the next.
    keepWithNext: i < all.length - 1 && (i === 0 || i === all.length - 2),
  }));
  return headings ? [{ ...headings, gap: theme.gap, keepWithNext: true }, ...rows] : rows;
}
