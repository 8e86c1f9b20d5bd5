import { measureLimits } from '../../body/index.ts';
import type { Change } from '../../request/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { hold, stepNear, written, type Hold } from './hold.ts';
import { clearTop, fieldLimits, lengthTaken, rowsTake } from './room.ts';

/** The lengths along the skirt, which are fields of the request as they stand: finished length, casing and hem. */
export const lengthHolds = (plan: SkirtPlan): Hold[] => [
  lengthHold(plan),
  ...casingHold(plan),
  hemHold(plan),
];

function lengthHold(plan: SkirtPlan): Hold {
  const { body, skirt, request } = plan;
  const limits = measureLimits.waistToHem;
  const step = request.mark;
  const floor = body.waistToFloor?.value ?? (body.height ? body.height.value - step : Infinity);
  return hold({
    name: 'length',
    value: skirt.finishedLength.value,
    // The length is chalked at the nearest mark, so a mark just past the limits stands for the limit itself.
    least: Math.max(stepNear(limits.least, step), lengthTaken(plan)),
    most: Math.min(stepNear(limits.most, step), floor),
    step,
    changes: (value) => [
      written(plan, ['body', 'waistToHem'], mm(Math.min(limits.most, Math.max(limits.least, value)))),
      ...withoutSecondTake(plan),
    ],
  });
}

/** Of two takes the mean counts: a length that is chosen, not measured, has no second one. */
const withoutSecondTake = ({ request }: SkirtPlan): Change[] =>
  request.body.second?.waistToHem === undefined
    ? []
    : [{ path: ['body', 'second', 'waistToHem'], value: undefined }];

/** A casing turned over elastic is as deep as it is for the elastic's width; no other waist has such a line to move. */
function casingHold(plan: SkirtPlan): Hold[] {
  const { elasticWidth, ease, turnUnder } = plan.request.waist;
  if (typeof elasticWidth !== 'number' || typeof ease !== 'number' || typeof turnUnder !== 'number')
    return [];
  const { least, most } = fieldLimits.elasticWidth;
  const rest = ease + turnUnder;
  const depth: Mm = plan.skirt.waist.topAllowance.value;
  const free = clearTop(plan) - rowsTake(plan);
  return [
    hold({
      name: 'casing',
      value: depth,
      least: least + rest,
      most: Math.min(most + rest, depth + free),
      step: plan.request.mark,
      changes: (value) => [written(plan, ['waist', 'elasticWidth'], mm(value - rest))],
    }),
  ];
}

const hemHold = (plan: SkirtPlan): Hold =>
  hold({
    name: 'hem',
    value: plan.skirt.hemAllowance.value,
    least: fieldLimits.hem.least,
    most: Math.min(fieldLimits.hem.most, plan.skirt.finishedLength.value),
    step: plan.request.mark,
    changes: (value) => [written(plan, ['cut', 'hem'], value)],
  });
