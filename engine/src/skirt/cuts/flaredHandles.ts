import { mm, roundTo } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { OptionHandle } from '../handle.ts';
import type { Draft } from './cut.ts';
import { fullnessWithin } from './fullness.ts';
import { fullnessLimits, hemAtFoldLimits } from './limits.ts';

/** Widest flare drawn as one panel: half a circle. Past it the cut is a circle, not a flare. */
export const WIDEST_SWEEP = Math.PI / 2;

/** The two marks at the double fold: the waist by its fullness, the hem as a mark of its own. */
export function flaredHandles({ body, mark }: DraftContext, draft: Draft): readonly OptionHandle[] {
  const { waistQuarter, hemQuarter } = draft.marks;
  const girth = body.widest.value;
  const top = waistQuarter.value;
  const markOf = (fullness: number): number => roundTo(mm((girth * fullness) / 4), mark, 'up');
  return [
    {
      name: 'waistMark',
      value: top,
      least: markOf(fullnessLimits.least),
      most: markOf(fullnessLimits.most),
      step: mark,
      writes: (value) => ({
        numbers: { fullness: fullnessWithin((4 * (value - mark)) / girth, (4 * value) / girth) },
      }),
    },
    {
      name: 'hemMark',
      value: hemQuarter.value,
      least: Math.max(hemAtFoldLimits.least, top),
      most: Math.min(hemAtFoldLimits.most, top + WIDEST_SWEEP * draft.panelLength.value),
      step: mark,
      writes: (value) => ({ lengths: { hemAtFold: value } }),
    },
  ];
}
