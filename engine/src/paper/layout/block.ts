import type { Mm } from '../../units/index.ts';
import type { Drawing } from '../drawing/index.ts';

/** Words in one weight. */
export interface Span {
  readonly text: string;
  readonly bold: boolean;
}

/** Plain words, or words of two weights. A line end within them ends the line. */
export type Words = string | readonly Span[];

export const bold = (text: string): Span => ({ text, bold: true });
export const plain = (text: string): Span => ({ text, bold: false });
export const spansOf = (words: Words): readonly Span[] =>
  typeof words === 'string' ? [{ text: words, bold: false }] : words;

export interface Heading {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: string;
}

export interface Paragraph {
  readonly kind: 'paragraph';
  readonly words: Words;
  readonly size: 'body' | 'small';
  readonly quiet: boolean;
}

export type ListMarker = 'box' | 'dot' | 'number';

export interface List {
  readonly kind: 'list';
  /** `box`: a square to tick. */
  readonly marker: ListMarker;
  /** Number of the first item, where items are numbered. */
  readonly first: number;
  readonly items: readonly Words[];
}

export interface Column {
  readonly heading: string;
  /** Width relative to the other columns. */
  readonly share: number;
  readonly align: 'start' | 'middle' | 'end';
}

/** Words, or a small drawing: a swatch, a tick box. */
export type Cell = Words | Drawing;

export interface Table {
  readonly kind: 'table';
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A drawing at its own size; made smaller only where it would not fit. */
export interface FigureBlock {
  readonly kind: 'figure';
  readonly drawing: Drawing;
  readonly maxWidth: Mm | null;
  readonly maxHeight: Mm | null;
  readonly align: 'start' | 'middle';
  readonly caption: Words;
}

export interface SideBySide {
  readonly kind: 'columns';
  readonly parts: readonly { readonly share: number; readonly blocks: readonly Block[] }[];
}

export type Block =
  | Heading
  | Paragraph
  | List
  | Table
  | FigureBlock
  | SideBySide
  | { readonly kind: 'space'; readonly height: Mm }
  | { readonly kind: 'rule' }
  | { readonly kind: 'together'; readonly blocks: readonly Block[] }
  | { readonly kind: 'pageBreak' };

export const heading = (level: 1 | 2 | 3, text: string): Heading => ({ kind: 'heading', level, text });

export const paragraph = (
  words: Words,
  changes: Partial<Pick<Paragraph, 'size' | 'quiet'>> = {},
): Paragraph => ({
  kind: 'paragraph',
  words,
  size: 'body',
  quiet: false,
  ...changes,
});

export const list = (items: readonly Words[], marker: ListMarker = 'dot', first = 1): List => ({
  kind: 'list',
  marker,
  first,
  items,
});

export const column = (heading: string, share = 1, align: Column['align'] = 'start'): Column => ({
  heading,
  share,
  align,
});

/** Headings are printed when any column has one, and again at the top of each page. */
export const table = (columns: readonly Column[], rows: Table['rows']): Table => ({
  kind: 'table',
  columns,
  rows,
});

export const figure = (
  drawing: Drawing,
  changes: Partial<Omit<FigureBlock, 'kind' | 'drawing'>> = {},
): FigureBlock => ({
  kind: 'figure',
  drawing,
  maxWidth: null,
  maxHeight: null,
  align: 'start',
  caption: '',
  ...changes,
});

/** Blocks side by side, kept on one page; where no page could hold them they follow one another. */
export const sideBySide = (...parts: SideBySide['parts']): SideBySide => ({ kind: 'columns', parts });
export const space = (height: Mm): Block => ({ kind: 'space', height });
export const rule: Block = { kind: 'rule' };
/** Blocks that are not parted by the end of a page, unless no page could hold them. */
export const together = (...blocks: readonly Block[]): Block => ({ kind: 'together', blocks });
export const pageBreak: Block = { kind: 'pageBreak' };
