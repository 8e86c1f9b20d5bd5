import { parentPort, workerData } from 'node:worker_threads';
import {
  classOfOne,
  howMany,
  isClassText,
  parseClassText,
  parseRequestText,
  searchClass,
  type ClassRequest,
  type FoundCloth,
} from '@ribbonwright/engine';
import { laidAs } from './laidAs.ts';
import type { Asked, Told } from './messages.ts';

// A search does not let go of its thread: it has one of its own, and tells each better lay as it comes.
const port = parentPort;
const { text, seconds, seed, way, shelf } = workerData as Asked;

/** Share of the time that goes to the lays, where it is also asked what can be cut from the shelf. */
const FOR_LAYS = 0.8;
/** Better lays come in bursts: of those that follow one another faster than this only the last is told. */
const PAUSE = 100;

const tell = (told: Told): void => {
  port?.postMessage(told);
};

function requestOf(): ClassRequest | null {
  if (isClassText(text)) {
    const parsed = parseClassText(text);
    return parsed.ok ? laidAs(parsed.request, way) : null;
  }
  const parsed = parseRequestText(text);
  return parsed.ok ? laidAs(classOfOne(parsed.request), way) : null;
}

const request = requestOf();
if (request) {
  const began = performance.now();
  const spent = (share: number, from = 0): (() => number) => {
    const all = seconds * 1000;
    return () => {
      flush();
      return (performance.now() - began - from * all) / (share * all);
    };
  };
  const waiting = new Map<string, Told>();
  let last = -Infinity;
  const flush = (now = false): void => {
    if (waiting.size === 0 || (!now && performance.now() - last < PAUSE)) return;
    last = performance.now();
    for (const told of waiting.values()) tell(told);
    waiting.clear();
  };
  const better = (found: FoundCloth, cloth: string): void => {
    waiting.set(`${cloth} ${found.kind}`, { kind: 'better', cloth, found });
    flush();
  };
  const forLays = shelf ? FOR_LAYS : 1;
  // By hand it is known at once; the search may find room for more.
  if (shelf) tell({ kind: 'shelf', shelf: howMany(request, null) });
  const searched = searchClass(request, {
    seed,
    spent: spent(forLays),
    better: (_, found, { key }) => {
      better(found, key);
    },
    turnsTo: ({ key }, way) => {
      tell({ kind: 'turnsTo', cloth: key, way });
    },
  });
  flush(true);
  if (shelf)
    tell({ kind: 'shelf', shelf: howMany(request, { seed, spent: spent(1 - forLays, forLays) }, searched) });
}
tell({ kind: 'done' });
