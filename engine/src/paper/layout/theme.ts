import { mm, type Mm } from '../../units/index.ts';
import { inks, type Ink } from '../drawing/index.ts';

const MM_PER_POINT = 25.4 / 72;
const points = (size: number): Mm => mm(size * MM_PER_POINT);

/** Sizes, distances and inks of a printed page. */
export interface Theme {
  readonly body: Mm;
  readonly small: Mm;
  readonly heading1: Mm;
  readonly heading2: Mm;
  readonly heading3: Mm;
  /** Distance between lines, of their size. */
  readonly leading: number;
  /** Above a paragraph, list item or figure. */
  readonly gap: Mm;
  readonly aboveHeading: Mm;
  /** Above and below the words in a table's row. */
  readonly cellPadding: Mm;
  /** Between columns of a table, and between blocks side by side. */
  readonly gutter: Mm;
  readonly tickBox: Mm;
  readonly ink: Ink;
  readonly quiet: Ink;
  readonly rule: Ink;
}

/** Read at arm's length beside a machine; dark ink on bare paper, nothing that a black-and-white printer loses. */
export const plainTheme: Theme = {
  body: points(11),
  small: points(9),
  heading1: points(21),
  heading2: points(14),
  heading3: points(11.5),
  leading: 1.36,
  gap: mm(2.2),
  aboveHeading: mm(6),
  cellPadding: mm(1.1),
  gutter: mm(5),
  tickBox: mm(3.4),
  ink: inks.ink,
  quiet: inks.grey,
  rule: inks.rule,
};
