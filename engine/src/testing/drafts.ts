import fc from 'fast-check';
import { readBody, strideNeed } from '../body/index.ts';
import { readFabric } from '../cloth/index.ts';
import type { SkirtRequest } from '../request/index.ts';
import { draftSkirt, type DraftGiven, type Skirt } from '../skirt/index.ts';
import { requestOf, type RawRequest } from './requests.ts';
import { runs } from './runs.ts';

export interface Drafted {
  readonly raw: RawRequest;
  readonly request: SkirtRequest;
  readonly context: DraftGiven;
  readonly skirt: Skirt;
}

/** The line as far as the skirt: what a property over thousands of skirts has time for. */
export function draftOf(raw: RawRequest = {}): Drafted {
  const request = requestOf(raw);
  const body = readBody(request.body);
  const context: DraftGiven = {
    body,
    stride: strideNeed(body),
    clothWidth: readFabric(request.cloth).usable,
    clothWeight: request.cloth.weight,
    mark: request.mark,
  };
  return { raw, request, context, skirt: draftSkirt(context, request) };
}

/** The same request for a body whose front, back and sides are alike, standing: what is drafted for it has a level top. */
export function ofLevelBody(raw: RawRequest): RawRequest {
  const body = Object.entries(raw.body ?? {}).filter(([key]) => key !== 'levels' && key !== 'wears');
  return { ...raw, body: Object.fromEntries(body) };
}

/** Codes of the notices, in their order. */
export const codesOf = (told: {
  readonly notices: readonly { readonly code: string }[];
}): readonly string[] => told.notices.map(({ code }) => code);

/**
 * Many samples, made once for all the properties of a file: reading a request takes longer than checking it.
 * Always the same ones, so that a failure stays; a longer search (see `runs`) adds to them.
 */
export function samples<T extends { readonly raw: RawRequest }>(
  raws: fc.Arbitrary<RawRequest>,
  of: (raw: RawRequest) => T,
  numRuns = 1000,
): (check: (sample: T) => void) => () => void {
  const made = fc.sample(raws, { numRuns: runs(numRuns), seed: 1 }).map(of);
  return (check) => () => {
    for (const sample of made)
      try {
        check(sample);
      } catch (error) {
        throw new Error(`${String(error)}\nfor ${JSON.stringify(sample.raw)}`, { cause: error });
      }
  };
}
