import {
  classOfOne,
  howMany,
  parseClass,
  parseRequest,
  searchClass,
  type ClassRequest,
  type ClothLay,
} from '@ribbonwright/engine';
import type { Order, Told } from './order.ts';

/** Share of the time that goes to the lays of a class; in the rest it is looked what can be cut from what is at hand. */
const FOR_LAYS = 0.8;
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
  const past = (): number => (performance.now() - began) / (order.seconds * 1000);
  const isAsked = order.what === 'class' && howMany(request, null).length > 0;
  const forLays = isAsked ? FOR_LAYS : 1;
  const waiting = new Map<string, ClothLay>();
  let last = -Infinity;
  const flush = (isLast = false): void => {
    if (waiting.size === 0 || (!isLast && performance.now() - last < PAUSE)) return;
    last = performance.now();
    tell({ kind: 'better', lays: [...waiting.values()] });
    waiting.clear();
  };
  const searched = searchClass(request, {
    seed: order.seed,
    spent: () => {
      flush();
      return past() / forLays;
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
  if (isAsked) {
    const spent = (): number => (past() - forLays) / (1 - forLays);
    tell({ kind: 'shelf', shelf: howMany(request, { seed: order.seed, spent }, searched) });
  }
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
