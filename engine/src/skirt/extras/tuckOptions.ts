import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import { mm } from '../../units/index.ts';

export const tuckDepthLimits = { least: mm(3), most: mm(80) };

/** Length kept in hand for growing. Defaults are common practice, no source. */
export const tuckOptions = (fields: Fields) =>
  z.strictObject({
    how: z.enum(['tucks', 'deep hem']).default('tucks'),
    /** Of tucks, and the depth of one, fold to stitching: worked out from what is to be let down. */
    count: z.int().min(1).max(8).optional(),
    depth: fields.length(tuckDepthLimits).optional(),
    /** For how long the skirt is to keep its level, where the growth is forecast. */
    months: z.number().min(1).max(120).optional(),
    /** All that is to be let down, where the maker knows it. */
    letsDown: fields.length({ least: mm(5), most: mm(500) }).optional(),
    /** From the panels' top line down to the first tuck. */
    below: fields.length({ least: mm(0), most: mm(1000) }).optional(),
  });

export type TuckOptions = z.infer<ReturnType<typeof tuckOptions>>;
