import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { openIndexedDb, openMemory, type PersonRecord, type Store } from './index.ts';

const robin: PersonRecord = {
  id: 'robin',
  name: 'Robin',
  body: { waist: '28 in' },
  note: '',
  made: 1,
  touched: 1,
};
let databases = 0;

/** The same suite on every place that keeps records. */
describe.each<[string, () => Promise<Store>]>([
  ['the browser’s database', () => openIndexedDb(`test ${String(++databases)}`)],
  ['memory', () => Promise.resolve(openMemory())],
])('%s', (_, open) => {
  test('keeps a record, changes a field of it, takes it away', async () => {
    const store = await open();
    expect(await store.change('people', 'robin', [{ path: [], value: robin }])).toEqual(robin);
    await store.change('people', 'robin', [{ path: ['body', 'hip'], value: '36 in' }]);
    expect(await store.all('people')).toEqual([{ ...robin, body: { waist: '28 in', hip: '36 in' } }]);
    expect(await store.change('people', 'robin', [{ path: [], value: undefined }])).toBeNull();
    expect(await store.all('people')).toEqual([]);
    store.close();
  });

  test('changes made at one time are all kept', async () => {
    const store = await open();
    await store.change('people', 'robin', [{ path: [], value: robin }]);
    await Promise.all(
      Array.from({ length: 20 }, (__, i) =>
        store.change('people', 'robin', [{ path: ['body', `take ${String(i)}`], value: i }]),
      ),
    );
    const [kept] = await store.all('people');
    expect(Object.keys(kept?.body ?? {})).toHaveLength(21);
    store.close();
  });

  test('a change of what was taken away meanwhile brings nothing back', async () => {
    const store = await open();
    expect(await store.change('people', 'gone', [{ path: ['name'], value: 'Robin' }])).toBeNull();
    expect(await store.all('people')).toEqual([]);
    store.close();
  });

  test('photos are kept beside the records', async () => {
    const store = await open();
    await store.keepPhoto('robin', new Blob(['cloth']));
    expect(await (await store.photo('robin'))?.text()).toBe('cloth');
    expect(await store.photos()).toEqual(['robin']);
    await store.keepPhoto('robin', null);
    expect(await store.photo('robin')).toBeNull();
    store.close();
  });
});

test('tabs on one database tell each other', async () => {
  const [here, there] = [await openIndexedDb('shared'), await openIndexedDb('shared')];
  const told = new Promise((resolve) => there.watch(resolve));
  await here.change('people', 'robin', [{ path: [], value: robin }]);
  expect(await told).toEqual({ kind: 'people', id: 'robin', record: robin });
  here.close();
  there.close();
});

test('a database of an older table keeps what is in it, and gets what it lacks', async () => {
  const old = await openDB('older', 1, {
    upgrade(fresh) {
      for (const kind of ['skirts', 'people', 'shelf', 'table'])
        fresh.createObjectStore(kind, { keyPath: 'id' });
      fresh.createObjectStore('photos');
    },
  });
  await old.put('people', robin);
  old.close();
  const store = await openIndexedDb('older');
  expect(await store.all('people')).toEqual([robin]);
  expect(await store.all('classes')).toEqual([]);
  store.close();
});
