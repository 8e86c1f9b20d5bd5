import { mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { fullnessWithin } from './fullness.ts';
import { trimmedWidths } from './trimmedWidths.ts';
import { hold, stepUp, written, type Hold } from './hold.ts';
import { fieldLimits } from './room.ts';

/** Widest flare that is drawn as one panel, as the flared cut has it: half a circle. */
const WIDEST_SWEEP = Math.PI / 2;

/** The waist mark at the double fold: of a flared panel, of whole widths of cloth, or of widths that are cut down. */
export function waistMarkHolds(plan: SkirtPlan): Hold[] {
  const { cut } = plan.request;
  if (cut.kind === 'flared') return [flaredWaist(plan)];
  return cut.wholeWidths ? [wholeWidths(plan)] : trimmedWidths(plan, cut);
}

function flaredWaist(plan: SkirtPlan): Hold {
  const girth = plan.body.widest.value;
  const step = plan.request.mark;
  const { least, most } = fieldLimits.fullness;
  const markOf = (fullness: number): number => stepUp((girth * fullness) / 4, step);
  return hold({
    name: 'waistMark',
    value: plan.skirt.marks.waistQuarter.value,
    least: markOf(least),
    most: markOf(most),
    step,
    changes: (value) => [
      {
        path: ['cut', 'fullness'],
        value: fullnessWithin((4 * (value - step)) / girth, (4 * value) / girth),
      },
    ],
  });
}

/** Whole widths are not cut: the mark goes on by a quarter of the cloth's width, and they are counted. */
function wholeWidths(plan: SkirtPlan): Hold {
  const value = plan.skirt.marks.waistQuarter.value;
  const step = mm(value / plan.skirt.panels.length);
  return hold({
    name: 'waistMark',
    value,
    least: fieldLimits.widths.least * step,
    most: fieldLimits.widths.most * step,
    step,
    changes: (wish) => [{ path: ['cut', 'widths'], value: Math.round(wish / step) }],
  });
}

/** The hem mark at the double fold, which only a flared panel has of its own. */
export function hemMarkHolds(plan: SkirtPlan): Hold[] {
  if (plan.request.cut.kind !== 'flared') return [];
  const { marks, finishedLength } = plan.skirt;
  const top = marks.waistQuarter.value;
  const { least, most } = fieldLimits.hemAtFold;
  return [
    hold({
      name: 'hemMark',
      value: marks.hemQuarter.value,
      least: Math.max(least, top),
      most: Math.min(most, top + WIDEST_SWEEP * finishedLength.value),
      step: plan.request.mark,
      changes: (value) => [written(plan, ['cut', 'hemAtFold'], value)],
    }),
  ];
}
