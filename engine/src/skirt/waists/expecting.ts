import type { Notice } from '../../figure/index.ts';
import { caution } from '../codes.ts';
import type { DraftContext } from '../context.ts';

/** What every waist that does not grow with the belly tells somebody whose waist is going to. */
export const forExpecting = ({ body }: DraftContext): Notice[] =>
  body.expecting ? [caution('waist.bandForExpecting', { waist: body.waist })] : [];
