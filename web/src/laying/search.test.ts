import {
  classOfOne,
  exampleRequest,
  parseRequest,
  planClass,
  searchClass,
  type ClothLay,
} from '@ribbonwright/engine';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Order, Told } from './order.ts';
import { Search } from './search.svelte.ts';

/** A worker that does what the test has it do; the real one is tested in a browser. */
class FakeWorker {
  static last: FakeWorker;
  onmessage: ((event: { readonly data: Told }) => void) | null = null;
  onerror: (() => void) | null = null;
  readonly postMessage = vi.fn();
  readonly terminate = vi.fn();
  constructor() {
    FakeWorker.last = this;
  }
}

const parsed = parseRequest(exampleRequest('en'));
if (!parsed.ok) throw new Error('the example can’t be read');
const request = classOfOne(parsed.request);
const plan = planClass(request);
const found: ClothLay[] = [];
searchClass(request, {
  seed: 1,
  evaluations: 4000,
  better: (_, lay, { key }) => found.push({ cloth: key, found: lay }),
});
const [better] = found;

const order: Order = { what: 'skirt', document: exampleRequest('en'), seconds: 20, seed: 1 };
const end = vi.fn();
function begun(): { search: Search; worker: FakeWorker } {
  const search = new Search();
  search.start({ order, plan, now: plan, lays: [], end });
  const worker = FakeWorker.last;
  worker.onmessage?.({ data: { kind: 'begun' } });
  return { search, worker };
}

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('Worker', FakeWorker);
  end.mockClear();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('stopped, it ends the worker and hands back the best so far, once', () => {
  if (!better) throw new Error('the search finds nothing in the example');
  const { search, worker } = begun();
  worker.onmessage?.({ data: { kind: 'better', lays: [better] } });
  vi.advanceTimersByTime(3000);
  expect(search.spent).toBeCloseTo(3);
  expect(search.isOn).toBe(true);
  search.stop();
  search.stop();
  expect(worker.terminate).toHaveBeenCalledOnce();
  expect(end).toHaveBeenCalledExactlyOnceWith([better], true);
  expect(search.outcome).toBe('better');
  expect(search.plan?.cloths[0]?.chosen).toBe(better.found);
});

test('a worker that does not come back is ended when its time is over', () => {
  const { search, worker } = begun();
  vi.advanceTimersByTime(30_000);
  expect(worker.terminate).toHaveBeenCalledOnce();
  expect(search.outcome).toBe('nothing');
  const [cloth] = plan.cloths;
  // What is taken by hand is kept too: but it is no closer.
  expect(end).toHaveBeenCalledExactlyOnceWith([{ cloth: cloth?.key, found: cloth?.chosen }], false);
});

test('laid otherwise than in what takes least, the least of what is laid by hand is closer', () => {
  const search = new Search();
  const [cloth] = plan.cloths;
  if (!cloth) throw new Error('the example has a cloth');
  const most = cloth.ways.reduce((one, other) => (other.toBuy.value > one.toBuy.value ? other : one));
  const now = { ...plan, cloths: [{ ...cloth, chosen: most }] };
  search.start({ order, plan, now, lays: [], end });
  search.stop();
  expect(search.outcome).toBe('better');
  expect(search.closer).toEqual([cloth]);
  expect(end).toHaveBeenCalledExactlyOnceWith([{ cloth: cloth.key, found: cloth.chosen }], true);
});

test('what went wrong is told; what was for something else is told to nobody', () => {
  const failed = begun();
  failed.worker.onerror?.();
  expect(failed.search.outcome).toBe('failed');
  end.mockClear();
  const left = begun();
  left.search.leave();
  expect(left.worker.terminate).toHaveBeenCalledOnce();
  expect(left.search.isOn).toBe(false);
  expect(end).not.toHaveBeenCalled();
});
