import {
  classOfOne,
  parseClass,
  parseRequest,
  searchClass,
  type ClassRequest,
  type ClothLay,
} from '@ribbonwright/engine';
import type { Order, Told } from './order.ts';

/** Better lays come in bursts: of those that follow one another faster than this only the last is told. */
const PAUSE = 250;

const tell = (told: Told): void => {
  postMessage(told);
};

function requestOf({ what, document }: Order): ClassRequest {
  if (what === 'class') {
    const parsed = parseClass(document);
    if (parsed.ok) return parsed.request;
  } else {
    const parsed = parseRequest(document);
    if (parsed.ok) return classOfOne(parsed.request);
  }
  throw new Error('what is to be laid can’t be read');
}

function look(order: Order): void {
  const request = requestOf(order);
  tell({ kind: 'begun' });
  const began = performance.now();
  const waiting = new Map<string, ClothLay>();
  let last = -Infinity;
  const flush = (isLast = false): void => {
    if (waiting.size === 0 || (!isLast && performance.now() - last < PAUSE)) return;
    last = performance.now();
    tell({ kind: 'better', lays: [...waiting.values()] });
    waiting.clear();
  };
  searchClass(request, {
    seed: order.seed,
    spent: () => {
      flush();
      return (performance.now() - began) / (order.seconds * 1000);
    },
    better: (_, found, { key }) => {
      waiting.set(`${key} ${found.kind}`, { cloth: key, found });
      flush();
    },
    turnsTo: ({ key }, way) => {
      tell({ kind: 'turnsTo', place: { cloth: key, way } });
    },
  });
  flush(true);
  tell({ kind: 'done' });
}

// A search does not let go of its thread: whoever started it stops it by ending the worker.
addEventListener('message', ({ data }: MessageEvent<Order>) => {
  try {
    look(data);
  } catch (error) {
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
});
