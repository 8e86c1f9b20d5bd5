import type { Figure } from '../figure/index.ts';
import { minutes, type Minutes } from '../units/index.ts';
import type { Bench } from './bench.ts';
import { figure } from './codes.ts';
import { constructSteps } from './construct.ts';
import { cuttingSteps } from './cutting.ts';
import { finishingSteps } from './finishing.ts';
import { prepareSteps } from './prepare.ts';
import { ribbonSteps } from './ribbonSteps.ts';
import type { Step } from './step.ts';

/** The work on one skirt: steps in an order that their graph allows, and the time they take. */
export interface Sewing {
  readonly steps: readonly Step[];
  readonly hands: Figure<Minutes>;
  readonly wait: Figure<Minutes>;
}

export function planSewing(bench: Bench): Sewing {
  const steps = [
    ...prepareSteps(bench),
    ...cuttingSteps(bench),
    ...ribbonSteps(bench),
    ...constructSteps(bench),
    ...finishingSteps(bench),
  ];
  const count = figure.count(steps.length, 'sewing.steps');
  const sum = (which: 'hands' | 'wait'): Minutes =>
    minutes(steps.reduce((all, step) => all + step[which].value, 0));
  return {
    steps,
    hands: figure.minutes(sum('hands'), 'sewing.handsTotal', { count }),
    wait: figure.minutes(sum('wait'), 'sewing.waitTotal', { count }),
  };
}
