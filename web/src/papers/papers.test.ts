import { catalogueOf, exampleRequest } from '@ribbonwright/engine';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Order, Told } from './order.ts';
import { Cancelled, orderPapers, type Progress } from './papers.ts';

/** A worker that does what the test has it do; the real one is tested in a browser. */
class FakeWorker {
  static last: FakeWorker;
  onmessage: ((event: { readonly data: Told }) => void) | null = null;
  onerror: ((event: { readonly message?: string }) => void) | null = null;
  readonly postMessage = vi.fn();
  readonly terminate = vi.fn();
  constructor() {
    FakeWorker.last = this;
  }
}

const order: Order = {
  what: 'skirt',
  document: exampleRequest('en'),
  lays: [],
  language: 'en',
  words: await catalogueOf('en'),
  measure: 'inches',
  names: ['card'],
  date: null,
};
const card = { name: 'card' as const, bytes: new Uint8Array([1, 2, 3]) };

const asked: Progress[] = [];
const place = () => {
  asked.length = 0;
  const { done, cancel } = orderPapers(order, (progress) => asked.push(progress));
  return { done, cancel, worker: FakeWorker.last };
};

beforeEach(() => {
  vi.stubGlobal('Worker', FakeWorker);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

test('papers come with their progress, and the worker goes home', async () => {
  const { done, worker } = place();
  expect(worker.postMessage).toHaveBeenCalledWith(order);
  const progress: Progress = { made: 0, of: 1, name: 'card' };
  worker.onmessage?.({ data: { kind: 'progress', progress } });
  expect(asked).toEqual([progress]);
  expect(worker.terminate).not.toHaveBeenCalled();
  worker.onmessage?.({ data: { kind: 'done', files: [card] } });
  expect(await done).toEqual([card]);
  expect(worker.terminate).toHaveBeenCalledOnce();
});

test('cancelling stops the worker, by its own name and for good', async () => {
  const { done, cancel, worker } = place();
  cancel();
  cancel();
  worker.onmessage?.({ data: { kind: 'done', files: [card] } });
  await expect(done).rejects.toBeInstanceOf(Cancelled);
  await expect(done).rejects.toMatchObject({ name: 'Cancelled' });
  expect(worker.terminate).toHaveBeenCalledOnce();
});

test('what went wrong is told, also where the worker itself never came', async () => {
  const failed = place();
  failed.worker.onmessage?.({ data: { kind: 'failed', message: 'no such font' } });
  await expect(failed.done).rejects.toThrow('no such font');
  const missing = place();
  missing.worker.onerror?.({});
  await expect(missing.done).rejects.toThrow('the papers could not be started');
  expect(missing.worker.terminate).toHaveBeenCalledOnce();
});
