import { kinds, type Kind, type Records } from './records.ts';
import { recordAfter, type Store } from './store.ts';

/** A store that lasts as long as its page: where the browser keeps nothing, the table can still be used. */
export function openMemory(): Store {
  const kept = new Map<Kind, Map<string, Records[Kind]>>(kinds.map((kind) => [kind, new Map()]));
  const photos = new Map<string, Blob>();
  const of = (kind: Kind): Map<string, Records[Kind]> => kept.get(kind) ?? new Map<string, Records[Kind]>();
  return {
    all: <K extends Kind>(kind: K) => Promise.resolve([...of(kind).values()] as Records[K][]),
    change<K extends Kind>(kind: K, id: string, changes: Parameters<Store['change']>[2]) {
      const record = recordAfter<K>(of(kind).get(id) as Records[K] | undefined, changes);
      if (record === null) of(kind).delete(id);
      else of(kind).set(id, record);
      return Promise.resolve(record);
    },
    photos: () => Promise.resolve([...photos.keys()]),
    photo: (id) => Promise.resolve(photos.get(id) ?? null),
    keepPhoto(id, photo) {
      if (photo === null) photos.delete(id);
      else photos.set(id, photo);
      return Promise.resolve();
    },
    watch: () => () => undefined,
    close: () => undefined,
  };
}
