import type { Order, PaperFile, Progress, Told } from './order.ts';

export type { Order, PaperFile, Progress } from './order.ts';

/** Papers that were asked for and are no longer wanted. */
export class Cancelled extends Error {
  override readonly name = 'Cancelled';
}

/** Papers on their way. */
export interface Making {
  /** Rejects with `Cancelled`, or with what went wrong. */
  readonly done: Promise<readonly PaperFile[]>;
  readonly cancel: () => void;
}

/** Has papers made beside the page: it stays in the hand meanwhile, and the work can be stopped at any moment. */
export function orderPapers(order: Order, onProgress: (progress: Progress) => void): Making {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  let stop: (reason: Error) => void = () => undefined;
  const done = new Promise<readonly PaperFile[]>((resolve, reject) => {
    stop = reject;
    worker.onmessage = ({ data }: MessageEvent<Told>) => {
      if (data.kind === 'progress') onProgress(data.progress);
      else if (data.kind === 'done') resolve(data.files);
      else reject(new Error(data.message));
    };
    worker.onerror = ({ message }) => {
      // A worker that could not be fetched tells of it without a message.
      reject(new Error(message || 'the papers could not be started'));
    };
    worker.onmessageerror = () => {
      reject(new Error('the papers could not be handed over'));
    };
    worker.postMessage(order);
  }).finally(() => {
    worker.terminate();
  });
  return {
    done,
    cancel: () => {
      stop(new Cancelled());
    },
  };
}
