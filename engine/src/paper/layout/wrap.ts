import type { Mm } from '../../units/index.ts';
import { fontOf, type PaperFonts } from '../drawing/index.ts';
import type { Span } from './block.ts';

/** Words of one weight on one line. */
export interface Run {
  readonly text: string;
  readonly bold: boolean;
  /** Where it begins on its line, and how wide it is. */
  readonly x: number;
  readonly width: number;
}

export interface Line {
  readonly runs: readonly Run[];
  readonly width: number;
}

/** What is never parted, unless it is wider than the whole line; `end` is the last before a line end. */
interface Word {
  readonly spans: readonly Span[];
  readonly spaceBefore: boolean;
  readonly end: boolean;
}

/** Ordinary spaces part words. No-break spaces (U+00A0, U+202F, U+2009) don't: they bind a number to its unit. */
const GAPS = /([ \t]*\n[ \t]*|[ \t\r\f\v]+)/;
/** A line may also end after a hyphen or dash that joins two letters, and after a dash. */
const AFTER_HYPHEN = /(?<=\p{L}[-\u2010\u2013])(?=\p{L})|(?<=\u2014)(?=\S)/u;

function wordsOf(spans: readonly Span[]): readonly Word[] {
  const words: Word[] = [];
  let open: Span[] = [];
  let spaceBefore = false;
  const close = (end: boolean): void => {
    if (open.length > 0 || end) words.push({ spans: open, spaceBefore, end });
    open = [];
  };
  for (const span of spans)
    for (const piece of span.text.split(GAPS)) {
      if (piece === '') continue;
      if (GAPS.test(piece)) {
        close(piece.includes('\n'));
        spaceBefore = true;
        continue;
      }
      piece.split(AFTER_HYPHEN).forEach((part, i) => {
        if (i > 0) {
          close(false);
          spaceBefore = false;
        }
        open.push({ text: part, bold: span.bold });
      });
    }
  close(false);
  return words;
}

/** A letter with the marks that stand on it. */
const LETTERS = /\P{M}\p{M}*|\p{M}+/gu;

/** A word too wide for any line, letter by letter. */
function lettersOf(word: Word): readonly Word[] {
  const letters = word.spans.flatMap(({ text, bold }) =>
    (text.match(LETTERS) ?? []).map((letter) => ({ text: letter, bold })),
  );
  return letters.map((letter, i) => ({
    spans: [letter],
    spaceBefore: i === 0 && word.spaceBefore,
    end: i === letters.length - 1 && word.end,
  }));
}

/** A line with one more word at its end; neighbours of one weight become one run. */
function joined(line: readonly Span[], word: Word): readonly Span[] {
  const merged = line.map((span) => ({ ...span }));
  const last = merged.at(-1);
  if (last && word.spaceBefore) last.text += ' ';
  for (const span of word.spans) {
    const end = merged.at(-1);
    if (end?.bold === span.bold) end.text += span.text;
    else merged.push({ ...span });
  }
  return merged;
}

/** The last words of a line keep the space they end with, unseen: read aloud or copied, lines don't run together. */
const spaced = (run: Run, i: number, runs: readonly Run[]): Run =>
  i === runs.length - 1 && run.text !== '' ? { ...run, text: `${run.text} ` } : run;

/**
 * Lines of words no wider than `width`, measured in the fonts they are set in. A word wider than the line is
 * parted between letters; a line narrower than one letter holds one letter.
 */
export function wrap(spans: readonly Span[], width: Mm, size: Mm, fonts: PaperFonts): readonly Line[] {
  const measure = (of: readonly Span[]): number =>
    of.reduce((sum, span) => sum + fontOf(span, fonts).widthOf(span.text, size), 0);
  const lines: Line[] = [];
  let current: readonly Span[] = [];
  const finish = (parted: boolean): void => {
    let x = 0;
    const runs = current.map((span): Run => {
      const run = { ...span, x, width: measure([span]) };
      x += run.width;
      return run;
    });
    lines.push({ runs: parted ? runs.map(spaced) : runs, width: x });
    current = [];
  };
  const fits = (of: readonly Span[]): boolean => measure(of) <= width + 1e-6;

  const units = wordsOf(spans).flatMap((word) => (fits(word.spans) ? [word] : lettersOf(word)));
  for (const word of units) {
    const longer = joined(current, word);
    if (current.length === 0 || fits(longer)) current = longer;
    else {
      finish(word.spaceBefore);
      current = joined([], word);
    }
    if (word.end) finish(true);
  }
  if (current.length > 0 || lines.length === 0) finish(false);
  return lines;
}
