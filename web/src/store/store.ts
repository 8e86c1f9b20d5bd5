import { changed, type Change, type RequestDocument } from '@ribbonwright/engine';
import type { Kind, Records } from './records.ts';

/** A record after another tab changed it; null where it was taken away. */
export interface Told<K extends Kind = Kind> {
  readonly kind: K;
  readonly id: string;
  readonly record: Records[K] | null;
}

/**
 * Where records are kept. A change is made on what is kept at that moment, within one transaction: two tabs
 * that change different fields of one record both keep theirs.
 */
export interface Store {
  readonly all: <K extends Kind>(kind: K) => Promise<readonly Records[K][]>;
  /** Makes changes on a record and hands back what is kept now; null where it is taken away. Rejects when there is no room. */
  readonly change: <K extends Kind>(
    kind: K,
    id: string,
    changes: readonly Change[],
  ) => Promise<Records[K] | null>;
  /** Ids of all photos that are kept. */
  readonly photos: () => Promise<readonly string[]>;
  readonly photo: (id: string) => Promise<Blob | null>;
  readonly keepPhoto: (id: string, photo: Blob | null) => Promise<void>;
  /** Tells of changes that others make; hands back how to stop. */
  readonly watch: (listener: (told: Told) => void) => () => void;
  readonly close: () => void;
}

/** The one rule of every store: what a record is after its changes. An empty path replaces or takes away the whole. */
export const recordAfter = <K extends Kind>(
  record: Records[K] | undefined,
  changes: readonly Change[],
): Records[K] | null =>
  // A change that comes after another tab took the record away has nothing to change.
  record === undefined && changes[0]?.path.length !== 0
    ? null
    : ((changed(record as unknown as RequestDocument, changes) as unknown as Records[K] | undefined) ?? null);
