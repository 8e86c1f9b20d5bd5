import type { ClothLay, RequestDocument } from '@ribbonwright/engine';

/** Lays that were searched for, and of what: of anything else they say nothing. */
export interface KeptLays {
  /** All of the request that they depend on, as `laysKey` writes it. */
  readonly key: string;
  readonly lays: readonly ClothLay[];
  /** Whether they are cut from; else what is laid by hand. */
  readonly used: boolean;
}

/** What is kept of one skirt: its request document, and what has been done on it. */
export interface SkirtRecord {
  readonly id: string;
  readonly document: RequestDocument;
  /** Skirts that are versions of one another share this: the id of the first. */
  readonly family: string;
  /** What the maker calls this version; empty for a skirt that has one only. */
  readonly version: string;
  /** Moments in milliseconds since 1970. */
  readonly made: number;
  readonly touched: number;
  /** Parts of the job that the maker calls settled. */
  readonly settled: Readonly<Record<string, boolean>>;
  /** Steps that are done, and what is in the basket. */
  readonly done: Readonly<Record<string, boolean>>;
  readonly bought: Readonly<Record<string, boolean>>;
  /** When each running timer ends. */
  readonly timers: Readonly<Record<string, number>>;
  /** Whether a photo of the cloth is kept beside it, under the same id. */
  readonly photo: boolean;
  /** What it measured when finished, and what to change next time. Older records have none. */
  readonly notes?: string;
  /** The closer lay that was found for it. */
  readonly closer?: KeptLays;
}

/** A class: its document, as a `*.class.json` has it, and how it was laid. */
export interface ClassRecord {
  readonly id: string;
  readonly document: RequestDocument;
  readonly made: number;
  readonly touched: number;
  readonly closer?: KeptLays;
}

/** Somebody skirts are made for. Measurements as they stand in a request's `body`. */
export interface PersonRecord {
  readonly id: string;
  readonly name: string;
  readonly body: RequestDocument;
  readonly note: string;
  readonly made: number;
  readonly touched: number;
}

/** Cloth or ribbon that the maker has. Lengths, colour and price as they are written in a request. */
export interface ShelfRecord {
  readonly id: string;
  readonly what: 'cloth' | 'ribbon';
  readonly name: string;
  readonly colour: unknown;
  readonly width: string;
  readonly length: string;
  /** Whether it was washed: cloth that is left over from a skirt was. Older records have none. */
  readonly washed?: boolean;
  readonly made: number;
  readonly touched: number;
}

/** How this table is set. */
export interface TableRecord {
  readonly id: string;
  readonly language: string;
  readonly measure: string;
  readonly theme: string;
  /** The skirt that was last on the table. */
  readonly open: string;
}

export interface Records {
  readonly skirts: SkirtRecord;
  readonly classes: ClassRecord;
  readonly people: PersonRecord;
  readonly shelf: ShelfRecord;
  readonly table: TableRecord;
}

export type Kind = keyof Records;
export const kinds: readonly Kind[] = ['skirts', 'classes', 'people', 'shelf', 'table'];
