import { inches, longest, mm, type Mm } from '../../units/index.ts';
import type { Theme } from './theme.ts';

export interface PaperSize {
  readonly width: Mm;
  readonly height: Mm;
}

/** ISO 216 (A sizes) and ANSI/ASME Y14.1 (letter, tabloid). */
export const paperSizes = {
  a4: { width: mm(210), height: mm(297) },
  a3: { width: mm(297), height: mm(420) },
  letter: { width: inches(8.5), height: inches(11) },
  tabloid: { width: inches(11), height: inches(17) },
} as const satisfies Readonly<Record<string, PaperSize>>;
export type PaperSizeName = keyof typeof paperSizes;

export const sideways = ({ width, height }: PaperSize): PaperSize => ({ width: height, height: width });

export interface Sheet {
  readonly size: PaperSize;
  /** Bare edge all round; less than 10 mm is taken as 10 mm, which every home printer can print up to. */
  readonly margin: Mm;
  /** A quiet line at the head of every page; empty: none. */
  readonly header: string;
  /** A quiet line at the foot of every page, from its number and their count; `null`: none. */
  readonly footer: ((page: number, pages: number) => string) | null;
}

export const SAFE_MARGIN = mm(10);

export const sheet = (changes: Partial<Sheet> = {}): Sheet => ({
  size: paperSizes.a4,
  margin: mm(14),
  header: '',
  footer: null,
  ...changes,
});

/** Where the blocks go, in millimetres from the sheet's top left corner. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: Mm;
  readonly height: Mm;
}

export const marginOf = (of: Sheet): Mm => longest(of.margin, SAFE_MARGIN);

/** The sheet within its margins, less the lines at head and foot and as much air again. */
export function contentBox(of: Sheet, theme: Theme): Box {
  const margin = marginOf(of);
  const line = theme.small * theme.leading * 2;
  const head = of.header === '' ? 0 : line;
  const foot = of.footer === null ? 0 : line;
  return {
    left: margin,
    top: margin + head,
    width: mm(of.size.width - 2 * margin),
    height: mm(of.size.height - 2 * margin - head - foot),
  };
}
