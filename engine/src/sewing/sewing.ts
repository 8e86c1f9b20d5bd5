import type { Figure } from '../figure/index.ts';
import { minutes, type Minutes } from '../units/index.ts';
import type { Bench } from './bench.ts';
import { figure } from './codes.ts';
import { bodySteps, panelSteps } from './body.ts';
import { cuttingSteps } from './cutting.ts';
import { finishingSteps } from './finishing.ts';
import { prepareSteps } from './prepare.ts';
import { testStitch } from './ribbonSteps.ts';
import type { Step, StepId } from './step.ts';
import { waistSteps } from './waists/index.ts';

/** The work on one skirt: steps in an order that their graph allows, and the time they take. */
export interface Sewing {
  readonly steps: readonly Step[];
  readonly hands: Figure<Minutes>;
  readonly wait: Figure<Minutes>;
}

export function planSewing(bench: Bench): Sewing {
  const steps = stepsOf(bench);
  const count = figure.count(steps.length, 'sewing.steps');
  const sum = (which: 'hands' | 'wait'): Minutes =>
    minutes(steps.reduce((all, step) => all + step[which].value, 0));
  return {
    steps,
    hands: figure.minutes(sum('hands'), 'sewing.handsTotal', { count }),
    wait: figure.minutes(sum('wait'), 'sewing.waitTotal', { count }),
  };
}

/** Panels first, then the tube, then its waist, then its hem; each goes on from what nothing has gone on from yet. */
function stepsOf(bench: Bench): Step[] {
  const flat = [...prepareSteps(bench), ...cuttingSteps(bench), testStitch(bench), ...panelSteps(bench)];
  const body = [...flat, ...bodySteps(bench, endsOf(flat))];
  const worn = [...body, ...waistSteps(bench, endsOf(body))];
  return [...worn, ...finishingSteps(bench, endsOf(worn))];
}

/** Steps that no other waits for. */
function endsOf(steps: readonly Step[]): StepId[] {
  const waitedFor = new Set(steps.flatMap(({ after }) => after));
  return steps.map(({ id }) => id).filter((id) => !waitedFor.has(id));
}
