import type { Figure } from './figure.ts';

/** `problem`: the skirt can't be made or worn so. `caution`: it can, and somebody should know. */
export type NoticeLevel = 'caution' | 'problem';

/** What a notice speaks of: figures, counts, or names whose words are in the catalogues or the maker's own. */
export type NoticeParam = Figure | number | string;

/**
 * A wish that can't be met, or something to know before cutting. The words, and what to do about it, are in
 * the catalogues under its code.
 */
export interface Notice<Code extends string = string> {
  readonly level: NoticeLevel;
  readonly code: Code;
  readonly params: Readonly<Record<string, NoticeParam>>;
}

/** The makers of notices for one room; see `figures`. */
export function notices<Code extends string>() {
  const of =
    (level: NoticeLevel) =>
    (code: Code, params: Readonly<Record<string, NoticeParam>> = {}): Notice<Code> => ({
      level,
      code,
      params,
    });
  return { caution: of('caution'), problem: of('problem') };
}
