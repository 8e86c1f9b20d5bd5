import { afterEach, describe, expect, test, vi } from 'vitest';
import { openMemory, type PersonRecord, type Store } from '../store/index.ts';
import { Keeper } from './keeper.svelte.ts';

const robin: PersonRecord = { id: 'robin', name: 'Robin', body: {}, note: '', made: 1, touched: 1 };
const made = { path: [], value: robin };
const named = (value: string) => ({ path: ['name'], value });

async function keeperWith(store: Store = openMemory()) {
  const keeper = await Keeper.open(store);
  keeper.change('people', 'robin', [made]);
  return { keeper, store, name: () => keeper.all.people['robin']?.name };
}

/** A store, and how another tab tells of its changes there. */
function watched() {
  const listeners: Parameters<Store['watch']>[0][] = [];
  const store: Store = {
    ...openMemory(),
    watch: (listener) => {
      listeners.push(listener);
      return () => undefined;
    },
  };
  const tell: Parameters<Store['watch']>[0] = (told) => {
    for (const listener of listeners) listener(told);
  };
  return { store, tell };
}

describe('what is changed', () => {
  test('is seen at once and kept soon', async () => {
    const { keeper, store, name } = await keeperWith();
    keeper.change('people', 'robin', [named('Wren')]);
    expect(name()).toBe('Wren');
    expect(keeper.isKept).toBe(false);
    await keeper.keep();
    expect(keeper.isKept).toBe(true);
    expect(await store.all('people')).toEqual([{ ...robin, name: 'Wren' }]);
  });

  test('while something is written is written after it', async () => {
    const { keeper, store } = await keeperWith();
    const first = keeper.keep();
    keeper.change('people', 'robin', [named('Wren')]);
    await first;
    await keeper.keep();
    expect(await store.all('people')).toEqual([{ ...robin, name: 'Wren' }]);
  });

  test('in another tab is seen here, under what waits here', async () => {
    const { store, tell } = watched();
    const { keeper } = await keeperWith(store);
    await keeper.keep();
    keeper.change('people', 'robin', [named('Wren')]);
    tell({ kind: 'people', id: 'robin', record: { ...robin, note: 'from the other tab' } });
    expect(keeper.all.people['robin']).toMatchObject({ name: 'Wren', note: 'from the other tab' });
  });
});

describe('undo', () => {
  test('brings back what was, and redo what came', async () => {
    const { keeper, name } = await keeperWith();
    keeper.change('people', 'robin', [named('Wren')]);
    keeper.undo();
    expect(name()).toBe('Robin');
    keeper.undo();
    expect(name()).toBeUndefined();
    keeper.redo();
    keeper.redo();
    expect(name()).toBe('Wren');
    expect(keeper.redo()).toBeNull();
  });

  test('takes one gesture as one thing, however many frames it had', async () => {
    const { keeper, name } = await keeperWith();
    for (let i = 0; i < 50; i++) keeper.change('people', 'robin', [named(String(i))], 'a drag');
    keeper.undo();
    expect(name()).toBe('Robin');
    keeper.redo();
    expect(name()).toBe('49');
  });

  test('a new change ends what could be done again', async () => {
    const { keeper } = await keeperWith();
    keeper.undo();
    keeper.change('people', 'robin', [made]);
    expect(keeper.canRedo).toBe(false);
  });

  test('of a change on what another tab took away meanwhile makes no half of a record', async () => {
    const { store, tell } = watched();
    const { keeper } = await keeperWith(store);
    keeper.change('people', 'robin', [named('Wren')]);
    await keeper.keep();
    await store.change('people', 'robin', [{ path: [], value: undefined }]);
    tell({ kind: 'people', id: 'robin', record: null });
    keeper.undo();
    expect(keeper.all.people).toEqual({});
    await keeper.keep();
    expect(await store.all('people')).toEqual([]);
  });

  test('brings back what was taken away', async () => {
    const { keeper, store } = await keeperWith();
    keeper.change('people', 'robin', [{ path: [], value: undefined }]);
    await keeper.keep();
    expect(await store.all('people')).toEqual([]);
    keeper.undo();
    await keeper.keep();
    expect(await store.all('people')).toEqual([robin]);
  });
});

describe('where there is no room', () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  test('nothing is lost: it is told, and kept once there is', async () => {
    vi.useFakeTimers();
    const store = openMemory();
    let isFull = true;
    const { keeper, name } = await keeperWith({
      ...store,
      change: (...change) =>
        isFull ? Promise.reject(new DOMException('', 'QuotaExceededError')) : store.change(...change),
    });
    await keeper.keep();
    expect(keeper.trouble).toBe('full');
    expect(name()).toBe('Robin');
    isFull = false;
    await vi.advanceTimersByTimeAsync(10_000);
    expect(keeper.trouble).toBeNull();
    expect(await store.all('people')).toEqual([robin]);
  });

  test('the trouble stays until everything is kept, not only the first of it', async () => {
    const store = openMemory();
    const told: unknown[] = [];
    let isFull = true;
    const { keeper } = await keeperWith({
      ...store,
      change: (...change) => {
        told.push(keeper.trouble);
        return isFull ? Promise.reject(new DOMException('', 'QuotaExceededError')) : store.change(...change);
      },
    });
    keeper.change('table', 'table', [{ path: ['note'], value: 'second' }]);
    await keeper.keep();
    isFull = false;
    await keeper.keep();
    expect(told).toEqual([null, 'full', 'full']);
    expect(keeper.trouble).toBeNull();
  });
});
