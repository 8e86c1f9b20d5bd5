import { mm, roundTo } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { OptionHandle } from '../handle.ts';
import type { Draft } from './cut.ts';
import { fullnessWithin } from './fullness.ts';
import { fullnessLimits, widthsLimits } from './limits.ts';

interface Chosen {
  readonly widths?: number | undefined;
  readonly wholeWidths: boolean;
}

/** The quarter mark: of whole widths of cloth, or of widths that are cut down to their fullness. */
export const gatheredHandles = (
  context: DraftContext,
  chosen: Chosen,
  draft: Draft,
): readonly OptionHandle[] =>
  chosen.wholeWidths ? [wholeWidths(draft)] : trimmedWidths(context, chosen, draft);

/** Whole widths are not cut: the mark goes on by a quarter of the cloth's width, and they are counted. */
function wholeWidths({ marks, panels }: Draft): OptionHandle {
  const value = marks.waistQuarter.value;
  const step = mm(value / panels.length);
  return {
    name: 'waistMark',
    value,
    least: widthsLimits.least * step,
    most: widthsLimits.most * step,
    step,
    writes: (wish) => ({ numbers: { widths: Math.round(wish / step) } }),
  };
}

/** What the quarter of widths that are cut down is made of. */
interface Widths {
  readonly cloth: number;
  readonly seam: number;
  readonly mark: number;
  /** Of the maker's own, where she has one. */
  readonly asked: number | undefined;
}

/**
 * Each width is cut at a mark, so that the quarter goes on by a mark for every four of them; where one width more comes in, its
 * two seams leave quarters that no fullness gives. No handle where the fullness decides nothing: a step, the floor of the hem, or
 * the way over the hips asks for more.
 */
function trimmedWidths(
  { body, clothWidth, mark }: DraftContext,
  chosen: Chosen,
  draft: Draft,
): readonly OptionHandle[] {
  const quarter = draft.marks.waistQuarter;
  const needs = quarter.inputs['round']?.inputs ?? {};
  const girth = body.widest.value;
  const widths: Widths = {
    cloth: clothWidth.value,
    seam: draft.sideSeamAllowance.value,
    mark,
    asked: chosen.widths,
  };
  const others = Math.max(...['step', 'floor', 'hip'].map((name) => needs[name]?.value ?? 0));
  const widest = fullnessLimits.most * girth;
  if (others >= widest) return [];
  const least = quarterOf(Math.max(others, fullnessLimits.least * girth), widths);
  const whole = ((chosen.widths ?? widthsLimits.most) * widths.cloth) / 4;
  const most = Math.min(quarterOf(widest, widths), whole);
  return [
    {
      name: 'waistMark',
      value: quarter.value,
      least,
      most: Math.max(least, most),
      step: mm((mark * draft.panels.length) / 4),
      writes: (value) => {
        const [over, upTo] = roundsOf(value, widths);
        return { numbers: { fullness: fullnessWithin(over / girth, upTo / girth) } };
      },
    },
  ];
}

const usable = ({ cloth, seam }: Widths): number => Math.max(1, cloth - 2 * seam);

function quarterOf(round: number, widths: Widths): number {
  const count =
    widths.asked ?? Math.min(widthsLimits.most, Math.max(1, Math.ceil(round / usable(widths) - 1e-6)));
  const enough = (round + 2 * count * widths.seam) / count;
  const chalked = roundTo(mm(enough), mm(widths.mark), 'up');
  return ((enough <= widths.cloth ? Math.min(chalked, widths.cloth) : chalked) * count) / 4;
}

/** The rounds, above the first and up to the second, whose quarter comes nearest to the one wished. */
function roundsOf(quarter: number, widths: Widths): [number, number] {
  const { cloth, seam, mark, asked } = widths;
  const enough = Math.max(1, Math.ceil((4 * quarter) / cloth - 1e-6));
  const count = asked ?? Math.min(widthsLimits.most, enough);
  // Below this one width less would do.
  const fewer = asked === undefined ? (count - 1) * usable(widths) : 0;
  const nearest = Math.round((4 * quarter) / count / mark);
  const marks = Math.max(nearest, Math.floor((fewer / count + 2 * seam) / mark + 1e-6) + 1);
  const round = (panel: number): number => count * (panel - 2 * seam);
  return [Math.max(fewer, round((marks - 1) * mark)), round(marks * mark)];
}
