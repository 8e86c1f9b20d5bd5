import type { Figure, Notice } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { figure, problem } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import { hipNeed } from '../goesOn.ts';
import type { OptionHandle } from '../handle.ts';
import { roundAt } from './roundAt.ts';
import type { WaistPlan } from './waist.ts';

/** From the top of the waist down, where the maker wants one of her own. */
export const openingLimits = { least: mm(20), most: mm(600) };

interface Opened {
  /** From the top of the waist down, and what of it lies below the band. */
  readonly depth: Figure<Mm>;
  readonly below: Figure<Mm>;
  readonly notices: readonly Notice[];
}

/** Zips are sold by the inch, or by 5 cm. */
const ZIP_STEP = { inches: inches(1), metric: mm(50) } as const;
/** An opening leaves a part of the panel closed, on the shortest skirt too. */
const MOST_OF_PANEL = 0.8;
/** Two lengths within a hundredth of a millimetre are one. */
const HAIR = 0.01;

/**
 * An opening goes down to the hip line, or as far as it must for band and opening together to pass over the hips: spread open,
 * the round is band + 2 × depth.
 */
export function openingOf(
  context: DraftContext,
  draft: Draft,
  band: Figure<Mm>,
  height: Figure<Mm>,
  asked: Mm | undefined,
): Opened {
  const { hipDepth } = context.body;
  const needed = hipNeed(context.body);
  const spread = figure.length(mm((needed.value - band.value) / 2), 'waist.openingSpread', { needed, band });
  const enough = enoughOf(context, hipDepth, spread, height);
  const { least, most } = boundsOf(context, draft, height);
  const depth =
    asked === undefined
      ? { ...enough, value: mm(Math.min(enough.value, most)) }
      : figure.length(mm(Math.min(most, Math.max(least, asked))), 'waist.openingAsked');
  const below = figure.length(mm(depth.value - height.value), 'waist.openingBelow', { depth, height });

  const under = (from: number): Mm => mm(from - height.value);
  const atHip = roundAt(draft, under(hipDepth.value));
  // Where the skirt is tight at the hip line no opening helps.
  if (atHip.value < needed.value - HAIR)
    return { depth, below, notices: [problem('waist.tightAtHip', { round: atHip, needed, hipDepth })] };
  const tooShort =
    depth.value < spread.value - HAIR || roundAt(draft, under(depth.value)).value < needed.value - HAIR;
  return {
    depth,
    below,
    notices: tooShort ? [problem('waist.openingTooShort', { depth, needed, enough })] : [],
  };
}

function boundsOf(
  { mark }: DraftContext,
  draft: Draft,
  height: Figure<Mm>,
): { readonly least: Mm; readonly most: Mm } {
  return { least: mm(height.value + mark), most: mm(height.value + MOST_OF_PANEL * draft.panelLength.value) };
}

/** How far the opening goes down; nothing where the waist does not open. */
export function openingHandles(
  context: DraftContext,
  draft: Draft,
  { above, closure }: WaistPlan,
): readonly OptionHandle[] {
  // On the deepest hips the zip that is enough is longer than anybody may write.
  if (!closure || closure.depth.value > openingLimits.most) return [];
  const { least, most } = boundsOf(context, draft, above);
  return [
    {
      name: 'opening',
      value: closure.depth.value,
      least: Math.max(openingLimits.least, least),
      most: Math.min(openingLimits.most, most),
      step: context.mark,
      writes: (value) => ({ lengths: { openingDepth: value } }),
    },
  ];
}

/** The next length of zip below the band that does. */
function enoughOf(
  { mark }: DraftContext,
  hipDepth: Figure<Mm>,
  spread: Figure<Mm>,
  height: Figure<Mm>,
): Figure<Mm> {
  // Inch marks are no whole number of millimetres.
  const step = Number.isInteger(mark) ? ZIP_STEP.metric : ZIP_STEP.inches;
  const up = (from: number): Mm =>
    mm(height.value + Math.max(step, roundTo(mm(from - height.value), step, 'up')));
  return spread.value > hipDepth.value
    ? figure.length(up(spread.value), 'waist.openingDepth', { hipDepth, spread }, { exact: spread.value })
    : figure.length(up(hipDepth.value), 'waist.openingHipDepth', { hipDepth }, { exact: hipDepth.value });
}
