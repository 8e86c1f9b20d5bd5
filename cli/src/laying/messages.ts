import type { FoundCloth, HowMany, LayKind } from '@ribbonwright/engine';

/** What a search is given. */
export interface Asked {
  /** The document, options put in their places. */
  readonly text: string;
  readonly seconds: number;
  readonly seed: number;
  /** The way in which every cloth but a lining is laid; null where the document says. */
  readonly way: LayKind | null;
  /** Whether it is also asked how many skirts can be cut from what is at hand. */
  readonly shelf: boolean;
}

/** What a search tells as it goes on; a cloth is named by its key. */
export type Told =
  | { readonly kind: 'better'; readonly cloth: string; readonly found: FoundCloth }
  | { readonly kind: 'turnsTo'; readonly cloth: string; readonly way: LayKind }
  | { readonly kind: 'shelf'; readonly shelf: readonly HowMany[] }
  | { readonly kind: 'done' };
