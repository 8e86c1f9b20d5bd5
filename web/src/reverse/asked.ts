import type { FromCloth, HowMany, RequestDocument } from '@ribbonwright/engine';

/** A reverse question: what a class can be cut from, or what can be made of a skirt's `cloth.have`. */
export interface Asked {
  readonly what: 'class' | 'skirt';
  readonly document: RequestDocument;
}

/** What the worker answers; of a class first by hand, then as a search found it. */
export type Answered =
  | { readonly kind: 'class'; readonly shelf: readonly HowMany[] }
  | { readonly kind: 'skirt'; readonly answer: FromCloth }
  | { readonly kind: 'failed' };
