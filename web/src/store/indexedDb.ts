import { openDB, type DBSchema } from 'idb';
import type { Kind, Records } from './records.ts';
import { recordAfter, type Store, type Told } from './store.ts';

interface Schema extends DBSchema {
  skirts: { key: string; value: Records['skirts'] };
  people: { key: string; value: Records['people'] };
  shelf: { key: string; value: Records['shelf'] };
  table: { key: string; value: Records['table'] };
  photos: { key: string; value: Blob };
}

const VERSION = 1;

/** The browser's own database. Tabs tell each other of changes. Rejects where the browser keeps nothing. */
export async function openIndexedDb(name = 'ribbonwright'): Promise<Store> {
  const database = await openDB<Schema>(name, VERSION, {
    upgrade(fresh) {
      for (const kind of ['skirts', 'people', 'shelf', 'table'] as const)
        fresh.createObjectStore(kind, { keyPath: 'id' });
      fresh.createObjectStore('photos');
    },
    // Another tab runs a newer version: let it through, or it would wait forever.
    blocking: (_now, _next, event) => {
      (event.target as IDBDatabase).close();
    },
  });
  const channel = new BroadcastChannel(name);
  const listeners = new Set<(told: Told) => void>();
  channel.onmessage = ({ data }: MessageEvent<Told>) => {
    for (const listener of listeners) listener(data);
  };
  return {
    all: async <K extends Kind>(kind: K) => (await database.getAll(kind)) as Records[K][],
    async change<K extends Kind>(kind: K, id: string, changes: Parameters<Store['change']>[2]) {
      const transaction = database.transaction(kind, 'readwrite');
      const kept = (await transaction.store.get(id)) as Records[K] | undefined;
      const record = recordAfter<K>(kept, changes);
      await (record === null ? transaction.store.delete(id) : transaction.store.put(record));
      await transaction.done;
      channel.postMessage({ kind, id, record } satisfies Told);
      return record;
    },
    photos: () => database.getAllKeys('photos'),
    photo: async (id) => (await database.get('photos', id)) ?? null,
    keepPhoto: async (id, photo) => {
      await (photo === null ? database.delete('photos', id) : database.put('photos', photo, id));
    },
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      channel.close();
      database.close();
    },
  };
}
