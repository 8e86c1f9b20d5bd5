import type { LengthLimits } from '../../fields/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { OptionHandle } from '../handle.ts';
import { wishFor, type Wishes } from '../wishFor.ts';
import { elasticWidthLimits } from './elastic.ts';
import { foldedStrip, heldStrip, type FoldedStripOptions } from './foldedStrip.ts';
import { mostHeight } from './held.ts';

interface Turned {
  /** The option that the depth is for: the width of what runs in the casing. */
  readonly key: string;
  readonly width: Mm;
  readonly limits: LengthLimits;
  /** Ease and turn-under, which stay. */
  readonly rest: number;
}

/** The depth of a casing that is turned from the panels: what runs in it takes what the casing gets. */
export const turnedHandle = ({ mark }: DraftContext, { key, width, limits, rest }: Turned): OptionHandle => ({
  name: 'casing',
  value: mm(width + rest),
  least: limits.least + rest,
  most: limits.most + rest,
  step: mark,
  lowersTop: true,
  writes: (value) => ({ lengths: { [key]: mm(value - rest) } }),
});

/** The height of a strip folded over elastic, which is cut at a mark: the elastic takes what the strip gets. */
export function stripHandle(
  name: 'casing' | 'band',
  context: DraftContext,
  chosen: FoldedStripOptions,
): OptionHandle {
  const { mark } = context;
  const comesTo = (elasticWidth: Mm): Mm =>
    foldedStrip(heldStrip(context, { ...chosen, elasticWidth }), mark).height.value;
  const least = roundTo(elasticWidthLimits.least, mark, 'up');
  const room = mm(Math.min(elasticWidthLimits.most, mostHeight(context) - chosen.ease / 2));
  const wishes: Wishes = { least, most: Math.max(least, roundTo(room, mark, 'down')), mark, comesTo };
  return {
    name,
    value: comesTo(chosen.elasticWidth),
    least: comesTo(least),
    most: comesTo(mm(wishes.most)),
    step: mark,
    // Elastic goes on by marks; the strip's height, half of what is cut, need not lie on one.
    from: comesTo(least),
    lowersTop: true,
    writes: (value) => ({ lengths: { elasticWidth: wishFor(value, wishes) } }),
  };
}

/** The height of a band, no more than the skirt is long enough for. */
export const bandHandle = (
  context: DraftContext,
  height: Mm,
  { least, most }: LengthLimits,
): OptionHandle => ({
  name: 'band',
  value: height,
  least,
  most: Math.min(most, mostHeight(context)),
  step: context.mark,
  lowersTop: true,
  writes: (value) => ({ lengths: { height: value } }),
});
