import type { Figure } from '../../../figure/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Step } from '../../../sewing/index.ts';
import type { Speaker } from '../../../words/index.ts';
import type { Mark } from '../../drawing/index.ts';

/** What a step's drawing is made from. */
export interface Scene {
  readonly plan: SkirtPlan;
  readonly step: Step;
  readonly speaker: Speaker;
}

/** Marks on a sheet `WIDTH` wide and `height` high, millimetres at print size. */
export interface Picture {
  readonly height: number;
  readonly marks: readonly Mark[];
}

export type Draw = (scene: Scene) => Picture;

/** Half a column of the booklet. */
export const WIDTH = 86;

/** The figure that the step's own sentences name so; a number drawn is then the number read beside it. */
export function spoken({ step }: Scene, name: string): Figure | null {
  for (const { params } of step.sentences) {
    const found = params[name];
    if (typeof found === 'object') return found;
  }
  return null;
}

/** A number between two bounds. */
export const within = (least: number, value: number, most: number): number =>
  Math.min(most, Math.max(least, value));
