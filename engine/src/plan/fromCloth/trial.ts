import { readBody, strideNeed } from '../../body/index.ts';
import { layAll, leastOf, readFabric, type Lay } from '../../cloth/index.ts';
import type { SkirtRequest } from '../../request/index.ts';
import { draftSkirt, type Skirt } from '../../skirt/index.ts';
import type { Mm } from '../../units/index.ts';
import { givenOf } from '../given.ts';

/** The skirt of a request, its ribbons left out: as much of it as a length of cloth asks about. */
export function drafted(request: SkirtRequest): Skirt {
  const body = readBody(request.body);
  return draftSkirt(givenOf(request, { body, stride: strideNeed(body) }, readFabric(request.cloth)), request);
}

/** The lay by hand that takes least, whatever is at hand; null where none fits. */
export function leastLay(request: SkirtRequest): Lay | null {
  const endless = { ...request.cloth, have: undefined, lengths: [], bolt: true };
  const { lays, fabric } = layAll(drafted(request), endless, request.contrast);
  return leastOf(lays, fabric) ?? null;
}

/** Whether a skirt can be cut from a length of cloth. */
export function isEnough(request: SkirtRequest, have: Mm): boolean {
  const lay = leastLay(request);
  return lay !== null && lay.clothBefore.value <= have;
}

/** Largest step for which the cloth is enough; a longer or fuller skirt never takes less. */
export function largest(from: number, to: number, isEnough: (step: number) => boolean): number | null {
  if (!isEnough(from)) return null;
  let low = from;
  let high = to;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (isEnough(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The same skirt of another length, and no second hem. */
export const ofLength = (request: SkirtRequest, waistToHem: Mm): SkirtRequest => ({
  ...request,
  body: { ...request.body, second: undefined, waistToHem },
});
