import type { ClothLay, HowMany, LayKind, RequestDocument } from '@ribbonwright/engine';

/** What closer lays are looked for: everything the worker needs to know, as it goes through to it. */
export interface Order {
  readonly what: 'skirt' | 'class';
  readonly document: RequestDocument;
  readonly seconds: number;
  readonly seed: number;
}

/** Where the search is: which cloth, by its key, in which way. */
export interface Place {
  readonly cloth: string;
  readonly way: LayKind;
}

/** What the worker tells. */
export type Told =
  | { readonly kind: 'begun' }
  | { readonly kind: 'better'; readonly lays: readonly ClothLay[] }
  | { readonly kind: 'shelf'; readonly shelf: readonly HowMany[] }
  | { readonly kind: 'turnsTo'; readonly place: Place }
  | { readonly kind: 'done' }
  | { readonly kind: 'failed'; readonly message: string };
