import { mm, type Mm } from '../../units/index.ts';
import type { TextBaseline, TextMark } from './mark.ts';

export interface OutlineStep {
  readonly command: 'moveTo' | 'lineTo' | 'quadraticCurveTo' | 'bezierCurveTo' | 'closePath';
  readonly args: readonly number[];
}

/** One letter's outline in the font's own units (y up), its foot at `x` along the line. */
export interface Outline {
  readonly x: number;
  readonly y: number;
  readonly commands: readonly OutlineStep[];
}

export interface OpenFont {
  /** The file itself, for embedding. */
  readonly bytes: Uint8Array;
  readonly unitsPerEm: number;
  /** Width of one line of words at an em size. */
  readonly widthOf: (text: string, size: Mm) => Mm;
  /** Characters the font has no letter for, each once, in order of first use. */
  readonly missing: (text: string) => readonly string[];
  readonly outlines: (text: string) => readonly Outline[];
}

/** The two weights every paper is set in. */
export interface PaperFonts {
  readonly regular: OpenFont;
  readonly bold: OpenFont;
}

export const fontOf = (mark: { readonly bold: boolean }, fonts: PaperFonts): OpenFont =>
  mark.bold ? fonts.bold : fonts.regular;

/** Height of a capital, of the em: read from Source Sans 3, near enough in any plain face. */
export const CAP_HEIGHT = 0.66;

const footShare: Readonly<Record<TextBaseline, number>> = {
  foot: 0,
  middle: CAP_HEIGHT / 2,
  top: CAP_HEIGHT,
};

/** How far below the mark's point the foot of its letters is. */
export const footBelow = (mark: TextMark): Mm => mm(footShare[mark.baseline] * mark.size);

/** How far left of the mark's point its words begin. */
export function startBefore(mark: TextMark, fonts: PaperFonts): Mm {
  const share = { start: 0, middle: 0.5, end: 1 }[mark.align];
  return share === 0 ? mm(0) : mm(share * fontOf(mark, fonts).widthOf(mark.text, mark.size));
}
