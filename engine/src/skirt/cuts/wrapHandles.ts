import { mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { OptionHandle } from '../handle.ts';
import type { TopNeed } from '../top.ts';
import { wishFor, type Wishes } from '../wishFor.ts';
import { lengthsOf } from './common.ts';
import type { Draft } from './cut.ts';
import { hemRoundLimits, overlapLimits } from './limits.ts';
import { roundOfWrap, wrapWidths, type WrapEdges, type WrapWanted, type WrapWidths } from './wrapWidths.ts';

/** Each front has a quarter of what the overlap grows by in either half: one mark of a half front is four of the overlap. */
const HALF_FRONTS = 4;

/** How far the ends lie over one another at the waist; and the hem of a front, from its middle to its raw side. */
export function wrapHandles(
  context: DraftContext,
  chosen: WrapWanted,
  top: TopNeed,
  { sideSeamAllowance: seam, overlap, hemTurnUnder }: Draft,
): readonly OptionHandle[] {
  const { mark } = context;
  const length = lengthsOf(context, top).panel;
  const depth = mm((overlap?.facing.value ?? 0) + hemTurnUnder);
  const edges: WrapEdges = { seam, facing: figure.length(depth, 'skirt.facingDepth') };
  const drafted = (wish: Partial<WrapWanted>): WrapWidths =>
    wrapWidths(context, { ...chosen, ...wish }, top, { ...edges, length });
  const now = drafted({});
  return [overlapHandle(now, drafted, mark), hemHandle(now, drafted, edges, mark)];
}

type Drafted = (wish: Partial<WrapWanted>) => WrapWidths;

function overlapHandle(now: WrapWidths, drafted: Drafted, mark: Mm): OptionHandle {
  const wishes: Wishes = {
    least: overlapLimits.least,
    // Nothing laps further than round.
    most: Math.min(overlapLimits.most, now.closed.value),
    mark,
    comesTo: (overlap) => drafted({ overlap }).overlap.value,
  };
  return {
    name: 'overlap',
    value: now.overlap.value,
    least: wishes.comesTo(roundTo(mm(wishes.least), mark, 'up')),
    most: wishes.comesTo(roundTo(mm(wishes.most), mark, 'down')),
    step: mm(HALF_FRONTS * mark),
    from: now.overlap.value,
    writes: (value) => ({ lengths: { overlap: wishFor(value, wishes) } }),
  };
}

function hemHandle(now: WrapWidths, drafted: Drafted, edges: WrapEdges, mark: Mm): OptionHandle {
  const half = (hemRound: Mm): Mm => drafted({ hemRound }).hem.front.value;
  // No hem is narrower than what is above it: the least wish that is kept.
  const narrowest = roundOfWrap(drafted({ hemRound: hemRoundLimits.least }).hem, edges).value;
  const least = roundTo(mm(Math.max(hemRoundLimits.least, narrowest)), mark, 'up');
  const wishes: Wishes = { least, most: hemRoundLimits.most, mark, comesTo: half };
  return {
    name: 'hemMark',
    value: now.hem.front.value,
    least: half(least),
    // The last mark before the panels can flare no further.
    most: half(hemRoundLimits.most) - mark,
    step: mark,
    writes: (value) => ({ lengths: { hemRound: wishFor(value, wishes) } }),
  };
}
