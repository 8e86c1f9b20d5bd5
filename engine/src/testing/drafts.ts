import { readBody, strideNeed } from '../body/index.ts';
import { readFabric } from '../cloth/index.ts';
import type { SkirtRequest } from '../request/index.ts';
import { draftSkirt, type DraftContext, type Skirt } from '../skirt/index.ts';
import { requestOf, type RawRequest } from './requests.ts';

export interface Drafted {
  readonly request: SkirtRequest;
  readonly context: DraftContext;
  readonly skirt: Skirt;
}

/** The line as far as the skirt: what a property over thousands of skirts has time for. */
export function draftOf(raw: RawRequest = {}): Drafted {
  const request = requestOf(raw);
  const body = readBody(request.body);
  const context: DraftContext = {
    body,
    stride: strideNeed(body),
    clothWidth: readFabric(request.cloth).usable,
    clothWeight: request.cloth.weight,
    mark: request.mark,
  };
  return { request, context, skirt: draftSkirt(context, request.cut, request.waist) };
}

/** Codes of the notices, in their order. */
export const codesOf = (told: {
  readonly notices: readonly { readonly code: string }[];
}): readonly string[] => told.notices.map(({ code }) => code);
