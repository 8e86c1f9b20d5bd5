import type {
  Catalogue,
  ClothLay,
  HowMany,
  Language,
  MeasureSystem,
  PaperName,
  RequestDocument,
} from '@ribbonwright/engine';

/** What papers are made of: everything the worker needs to know, as it goes through to it. */
export interface Order {
  /** Of a class there are two papers, `lay` and `card`. */
  readonly what: 'skirt' | 'class';
  readonly document: RequestDocument;
  /** The closer lays that are cut from; none where it is laid by hand. */
  readonly lays: readonly ClothLay[];
  /** What of a class can be cut from what is at hand, where a search has looked for it. */
  readonly shelf?: readonly HowMany[];
  readonly language: Language;
  /** Of that language: the page has them, so the worker need not fetch them again. */
  readonly words: Catalogue;
  readonly measure: MeasureSystem;
  readonly names: readonly PaperName[];
  /** Day on the papers, `2026-11-25`; null leaves it off. */
  readonly date: string | null;
}

export interface PaperFile {
  readonly name: PaperName;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** How many of the papers are made, and which is being made. */
export interface Progress {
  readonly made: number;
  readonly of: number;
  readonly name: PaperName;
}

/** What the worker tells. */
export type Told =
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'done'; readonly files: readonly PaperFile[] }
  | { readonly kind: 'failed'; readonly message: string };
