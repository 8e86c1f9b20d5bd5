import { measureLimits } from '../../body/index.ts';
import type { Change } from '../../request/index.ts';
import { mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { hold, stepNear, written, type Hold } from './hold.ts';
import { lengthTaken } from './room.ts';

/** The finished length, down to the floor. */
export function lengthHold(plan: SkirtPlan): Hold {
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
