import { point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { CAP_HEIGHT, label, type Ink, type Mark, type PaperFonts, type TextAlign } from '../drawing/index.ts';
import { spansOf, type Words } from './block.ts';
import type { Theme } from './theme.ts';
import { wrap } from './wrap.ts';

/** What every block is set with. */
export interface Setting {
  readonly fonts: PaperFonts;
  readonly theme: Theme;
  /** Height of a page's content: nothing may be taller. */
  readonly pageHeight: number;
}

export interface TextLook {
  readonly size: Mm;
  readonly ink: Ink;
  readonly align?: TextAlign;
  readonly bold?: boolean;
  readonly leading?: number;
}

export interface SetLine {
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** Words as lines no wider than `width`, each with its marks from its own top left corner. */
export function setLines(words: Words, width: Mm, look: TextLook, setting: Setting): readonly SetLine[] {
  const { size, ink } = look;
  const height = size * (look.leading ?? setting.theme.leading);
  // Capitals stand midway between the lines above and below.
  const foot = (height + CAP_HEIGHT * size) / 2;
  const spans = spansOf(words).map((span) => (look.bold ? { ...span, bold: true } : span));
  const share = { start: 0, middle: 0.5, end: 1 }[look.align ?? 'start'];
  return wrap(spans, width, size, setting.fonts).map((line) => {
    const indent = Math.max(0, width - line.width) * share;
    return {
      height,
      marks: line.runs.map((run) =>
        label(point(indent + run.x, foot), run.text, { size: mm(size), bold: run.bold, ink }),
      ),
    };
  });
}

export const isBlank = (words: Words): boolean => spansOf(words).every(({ text }) => text.trim() === '');
