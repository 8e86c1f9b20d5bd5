import type { RequestDocument } from '@ribbonwright/engine';
import type { SkirtRecord } from '../store/index.ts';

/** A fresh record around a document. A version of another skirt shares its family. */
export function newSkirt(document: RequestDocument, of?: { family: string; version: string }): SkirtRecord {
  const id = crypto.randomUUID();
  const now = Date.now();
  return {
    id,
    document,
    family: of?.family ?? id,
    version: of?.version ?? '',
    made: now,
    touched: now,
    settled: {},
    done: {},
    bought: {},
    timers: {},
    photo: false,
    notes: '',
  };
}
