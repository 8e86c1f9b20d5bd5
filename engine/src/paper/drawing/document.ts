import type { Mm } from '../../units/index.ts';
import type { Drawing } from './mark.ts';

/** A sheet of paper at its exact size, and the drawing on it: the same size, from corner to corner. */
export interface Page {
  readonly width: Mm;
  readonly height: Mm;
  readonly drawing: Drawing;
}

export interface PaperDocument {
  readonly title: string;
  /** BCP 47: `en`, `fr-CA`. */
  readonly language: string;
  /** When it was made, told by whoever asks for it; `null`: the file carries no date. */
  readonly date: Date | null;
  readonly pages: readonly Page[];
}
