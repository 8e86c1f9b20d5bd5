import { fromCloth, howMany, parseClass, parseRequest } from '@ribbonwright/engine';
import type { Answered, Asked } from './asked.ts';

/** How long a search for room for more skirts may take, ms. */
const SEARCH = 4000;

const tell = (answered: Answered): void => {
  postMessage(answered);
};

function answer({ what, document }: Asked): void {
  if (what === 'skirt') {
    const parsed = parseRequest(document);
    const have = parsed.ok ? parsed.request.cloth.have : undefined;
    if (!parsed.ok || have === undefined) throw new Error('no length of cloth to ask of');
    tell({ kind: 'skirt', answer: fromCloth(parsed.request, have) });
    return;
  }
  const parsed = parseClass(document);
  if (!parsed.ok) throw new Error('the class can’t be read');
  tell({ kind: 'class', shelf: howMany(parsed.request, null) });
  const began = performance.now();
  const spent = (): number => (performance.now() - began) / SEARCH;
  tell({ kind: 'class', shelf: howMany(parsed.request, { seed: 1, spent }) });
}

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  try {
    answer(data);
  } catch {
    tell({ kind: 'failed' });
  }
});
