import type { Figure, Notice } from '../../figure/index.ts';
import { inches, mm, roundTo, stepsIn, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftGiven } from '../context.ts';
import type { TuckOptions } from './tuckOptions.ts';

/** A deeper tuck does not lie flat. Common practice, no source. */
const MOST_DEPTH = inches(1);

interface Tucks {
  readonly count: Figure;
  readonly depth: Figure<Mm>;
  readonly notices: readonly Notice[];
}

/** How many tucks, and how deep each: of what was asked both are kept, as far as the skirt is long enough for them. */
export function tuckDepths({ body, mark }: DraftGiven, chosen: TuckOptions, letsDown: Figure<Mm>): Tucks {
  const deepest = chosen.depth ?? MOST_DEPTH;
  const wished = chosen.count ?? Math.max(1, stepsIn(letsDown.value, 2 * deepest, 'up'));
  const exact = mm(chosen.depth ?? letsDown.value / (2 * wished));
  const wish = Math.max(mark, roundTo(exact, mark, 'up'));
  // Tucks that were asked for by number and depth may be more than a skirt has length for.
  const room = body.waistToHem.value / 2;
  const depth = Math.min(wish, Math.max(mark, roundTo(mm(room / 2), mark, 'down')));
  const count = Math.min(wished, Math.max(1, stepsIn(room, 2 * depth, 'down')));
  const counted = figure.count(count, 'skirt.tuckCount');
  const deep = figure.length(mm(depth), 'skirt.tuckDepth', {}, { exact });
  const held = count < wished || depth < wish;
  return {
    count: counted,
    depth: deep,
    notices: held ? [caution('skirt.tucksHeld', { count, depth: deep })] : [],
  };
}
