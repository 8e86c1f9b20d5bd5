export {
  kinds,
  type ClassRecord,
  type KeptLays,
  type Kind,
  type PersonRecord,
  type Records,
  type ShelfRecord,
  type SkirtRecord,
  type TableRecord,
} from './records.ts';
export { recordAfter, type Store } from './store.ts';
export { openIndexedDb } from './indexedDb.ts';
export { openMemory } from './memory.ts';
