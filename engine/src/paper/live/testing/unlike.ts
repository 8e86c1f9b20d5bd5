import fc from 'fast-check';
import { anyCircle, anyGored, anyTiered, anyWrap } from '../../../testing/cuts.ts';
import { anyRequest, type RawRequest } from '../../../testing/requests.ts';

/** Any request of a cut whose pieces are shown one by one; its waist is named, for each cut has another usual one. */
export const anyUnlike: fc.Arbitrary<RawRequest> = fc
  .tuple(anyRequest, fc.oneof(anyGored, anyTiered, anyCircle, anyWrap))
  .map(([raw, cut]) => ({ ...raw, cut, waist: { kind: 'turned casing', ...raw.waist } }));
