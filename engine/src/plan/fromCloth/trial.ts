import { readBody, strideNeed } from '../../body/index.ts';
import { leastOffBolt, readFabric, type Lay, type OffBolt } from '../../cloth/index.ts';
import type { SkirtRequest } from '../../request/index.ts';
import { draftSkirt, type Skirt } from '../../skirt/index.ts';
import type { Mm } from '../../units/index.ts';
import { givenOf } from '../given.ts';

/** The skirt of a request, its ribbons left out: as much of it as a length of cloth asks about. */
export function drafted(request: SkirtRequest): Skirt {
  const body = readBody(request.body);
  return draftSkirt(givenOf(request, { body, stride: strideNeed(body) }, readFabric(request.cloth)), request);
}

/** How a length of cloth that is asked about is cut: least by hand, whatever is at hand; null where none fits or is wanted. */
export const leastLay = (request: SkirtRequest, wanted: OffBolt): Lay | null =>
  leastOffBolt(drafted(request), request.cloth, request.contrast, wanted);

/**
 * The largest step that is enough, null where none is. A longer or fuller skirt mostly takes more cloth, but not always:
 * its hem can become straight enough to be cut level, its panels lie better on one another, or fit the cloth in more
 * ways. So what is enough is looked for from above, so many steps `apart`, and its end by halving. The step after the
 * answer is never enough; steps that are, but fewer of them than lie between two looks, may be passed over.
 */
export function largest(
  from: number,
  to: number,
  apart: number,
  isEnough: (step: number) => boolean,
): number | null {
  let refused = to + 1;
  let enough = to;
  while (!isEnough(enough)) {
    if (enough <= from) return null;
    refused = enough;
    enough = Math.max(from, enough - apart);
  }
  while (refused - enough > 1) {
    const middle = Math.floor((enough + refused) / 2);
    if (isEnough(middle)) enough = middle;
    else refused = middle;
  }
  return enough;
}

/** The same skirt of another length, and no second hem. */
export const ofLength = (request: SkirtRequest, waistToHem: Mm): SkirtRequest => ({
  ...request,
  body: { ...request.body, second: undefined, waistToHem },
});
