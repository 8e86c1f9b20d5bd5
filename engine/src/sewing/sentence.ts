import type { NoticeParam } from '../figure/index.ts';
import type { CuttingSentence } from './sentences/cutting.ts';
import type { EndSentence } from './sentences/end.ts';
import type { PrepareSentence } from './sentences/prepare.ts';
import type { RowsSentence } from './sentences/rows.ts';
import type { SeamsSentence } from './sentences/seams.ts';
import type { WaistSentence } from './sentences/waist.ts';

export type SentenceCode =
  PrepareSentence | CuttingSentence | RowsSentence | SeamsSentence | WaistSentence | EndSentence;

/** A sentence of a step: its words are in the catalogues, its numbers are these. */
export interface Sentence {
  readonly code: SentenceCode;
  readonly params: Readonly<Record<string, NoticeParam>>;
  /** Pieces that it lists: ‘tier 2’, ‘part waistband’. */
  readonly pieces: readonly string[];
}

export const say = (
  code: SentenceCode,
  params: Sentence['params'] = {},
  pieces: Sentence['pieces'] = [],
): Sentence => ({ code, params, pieces });
