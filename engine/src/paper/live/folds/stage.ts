import type { SkirtPlan } from '../../../plan/index.ts';
import type { Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { dimension, drawing, inks, type Drawing, type Ink, type Mark } from '../../drawing/index.ts';
import { chalkOn, mixed } from '../../pictures/chalkOn.ts';

/** One thing to do on the way from the cloth to its panels. */
export interface FoldStage {
  readonly title: string;
  /** What to do, in sentences; never empty. */
  readonly words: string;
  readonly drawing: Drawing;
}

export const WIDTH = 114;
export const HEIGHT = 80;
/** Read on a screen as wide as a small phone. */
export const SIZE = mm(3.7);

/** What every stage is made from. */
export interface Scene {
  readonly plan: SkirtPlan;
  readonly speaker: Speaker;
  /** Right and wrong side of the cloth, the chalk on either. */
  readonly right: Ink;
  readonly wrong: Ink;
  readonly chalk: Ink;
}

/** The wrong side of dyed cloth is a little paler. */
const PALER = 0.22;

export function sceneOf(plan: SkirtPlan, speaker: Speaker): Scene {
  const right = plan.request.cloth.colour.hex;
  const wrong = mixed(right, '#ffffff', PALER);
  return { plan, speaker, right, wrong, chalk: chalkOn(wrong) };
}

/** The sentences of the sewing steps that go with a stage, in the order that they are asked for. */
export function sentences({ plan, speaker }: Scene, codes: readonly string[]): string {
  const all = plan.sewing.steps.flatMap((step) => step.sentences);
  return codes
    .flatMap((code) => all.filter((each) => each.code === code).map((each) => speaker.sentence(each)))
    .join(' ');
}

/** A stage whose picture says in words what its sentences say; without any, what the picture shows. */
export const stage = (title: string, words: string, marks: readonly Mark[], height = HEIGHT): FoldStage => ({
  title,
  words,
  drawing: drawing({
    width: mm(WIDTH),
    height: mm(height),
    title,
    description: words === '' ? title : `${title}. ${words}`,
    marks,
  }),
});

/** A measure in the words' own size; `offset` as in `dimension`. */
export const measure = (from: Point, to: Point, text: string, offset: number): Mark =>
  dimension({ from, to, text, offset: mm(offset), size: SIZE, ink: inks.ink });
