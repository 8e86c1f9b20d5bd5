import type { Body, Stride } from '../body/index.ts';
import type { Fabric } from '../cloth/index.ts';
import type { SkirtRequest } from '../request/index.ts';
import type { DraftGiven } from '../skirt/index.ts';

/** What a skirt is drafted from besides its own options. */
export const givenOf = (
  request: SkirtRequest,
  { body, stride }: { readonly body: Body; readonly stride: Stride },
  { usable }: Pick<Fabric, 'usable'>,
): DraftGiven => ({
  body,
  stride,
  clothWidth: usable,
  clothWeight: request.cloth.weight,
  mark: request.mark,
});
