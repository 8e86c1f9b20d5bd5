import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { kinds, type Kind, type Records } from './records.ts';
import { recordAfter, type Store, type Told } from './store.ts';

interface Schema extends DBSchema {
  skirts: { key: string; value: Records['skirts'] };
  classes: { key: string; value: Records['classes'] };
  people: { key: string; value: Records['people'] };
  shelf: { key: string; value: Records['shelf'] };
  table: { key: string; value: Records['table'] };
  photos: { key: string; value: Blob };
}

/** Raised when a store is added; the browser then has those made that are not there yet. */
const VERSION = 2;

/** Opens the database; `onEnd` is called when the browser or a newer version of the table ends the connection. */
function connect(name: string, onEnd: () => void): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(name, VERSION, {
    upgrade(fresh) {
      for (const kind of kinds)
        if (!fresh.objectStoreNames.contains(kind)) fresh.createObjectStore(kind, { keyPath: 'id' });
      if (!fresh.objectStoreNames.contains('photos')) fresh.createObjectStore('photos');
    },
    // Another tab runs a newer version: let it through, or it would wait forever.
    blocking: (_now, _next, event) => {
      (event.target as IDBDatabase).close();
      onEnd();
    },
    terminated: onEnd,
  });
}

/** The browser's own database. Tabs tell each other of changes. Rejects where the browser keeps nothing. */
export async function openIndexedDb(name = 'ribbonwright'): Promise<Store> {
  let connection: Promise<IDBPDatabase<Schema>> | null = null;
  /** A connection that was ended is made anew when it is next needed; it may be refused again. */
  const database = (): Promise<IDBPDatabase<Schema>> => {
    connection ??= connect(name, () => {
      connection = null;
    }).catch((error: unknown) => {
      connection = null;
      throw error;
    });
    return connection;
  };
  await database();
  const channel = new BroadcastChannel(name);
  const listeners = new Set<(told: Told) => void>();
  channel.onmessage = ({ data }: MessageEvent<Told>) => {
    for (const listener of listeners) listener(data);
  };
  return {
    all: async <K extends Kind>(kind: K) => (await (await database()).getAll(kind)) as Records[K][],
    async change<K extends Kind>(kind: K, id: string, changes: Parameters<Store['change']>[2]) {
      const transaction = (await database()).transaction(kind, 'readwrite');
      const kept = (await transaction.store.get(id)) as Records[K] | undefined;
      const record = recordAfter<K>(kept, changes);
      await (record === null ? transaction.store.delete(id) : transaction.store.put(record));
      await transaction.done;
      channel.postMessage({ kind, id, record } satisfies Told);
      return record;
    },
    photos: async () => (await database()).getAllKeys('photos'),
    photo: async (id) => (await (await database()).get('photos', id)) ?? null,
    keepPhoto: async (id, photo) => {
      const photos = await database();
      await (photo === null ? photos.delete('photos', id) : photos.put('photos', photo, id));
    },
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      channel.close();
      void database().then((open) => {
        open.close();
      });
    },
  };
}
