import { Worker } from 'node:worker_threads';
import type { Asked } from './messages.ts';

/** A thread that searches: built, it runs the file beside this one; from source, what reads the source comes first. */
export function searchThread(asked: Asked): Worker {
  if (import.meta.url.endsWith('.js'))
    return new Worker(new URL('./worker.js', import.meta.url), { workerData: asked });
  const source = JSON.stringify(new URL('./worker.ts', import.meta.url).href);
  return new Worker(
    `import('tsx/esm/api').then(({ register }) => { register(); return import(${source}); });`,
    {
      eval: true,
      workerData: asked,
      execArgv: ['--conditions=source'],
    },
  );
}
