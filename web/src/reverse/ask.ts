import type { Answered, Asked } from './asked.ts';

/** Asks off the main thread; what is returned ends it, when the answer is of no use any more. */
export function ask(asked: Asked, told: (answered: Answered) => void): () => void {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<Answered>) => {
    told(data);
  };
  worker.onerror = () => {
    told({ kind: 'failed' });
  };
  worker.postMessage(asked);
  return () => {
    worker.terminate();
  };
}
