import type { SkirtRequest } from '../../request/index.ts';
import { mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { fullnessWithin } from './fullness.ts';
import { hold, stepUp, type Hold } from './hold.ts';
import { fieldLimits } from './room.ts';

type GatheredChoice = Extract<SkirtRequest['cut'], { kind: 'gathered' }>;

/** What the quarter of widths that are cut down is made of, as the gathered cut has it. */
interface Widths {
  readonly cloth: number;
  readonly seam: number;
  readonly mark: number;
  /** Of the maker's own, where she has one. */
  readonly asked: number | undefined;
}

/**
 * The quarter mark of gathered widths that are cut down to their fullness. Each width is cut at a mark, so that the
 * quarter goes on by a mark for every four of them; where one width more comes in, its two seams leave quarters that no
 * fullness gives. No handle where the fullness decides nothing: a step, the floor of the hem, or the way over the hips asks for more.
 */
export function trimmedWidths(plan: SkirtPlan, cut: GatheredChoice): Hold[] {
  const quarter = plan.skirt.marks.waistQuarter;
  const needs = quarter.inputs['round']?.inputs ?? {};
  const girth = plan.body.widest.value;
  const { mark } = plan.request;
  const widths: Widths = {
    cloth: plan.cloth.fabric.usable.value,
    seam: plan.skirt.sideSeamAllowance.value,
    mark,
    asked: cut.widths,
  };
  const others = Math.max(...['step', 'floor', 'hip'].map((name) => needs[name]?.value ?? 0));
  const widest = fieldLimits.fullness.most * girth;
  if (others >= widest) return [];
  const least = quarterOf(Math.max(others, fieldLimits.fullness.least * girth), widths);
  const whole = ((cut.widths ?? fieldLimits.widths.most) * widths.cloth) / 4;
  const most = Math.min(quarterOf(widest, widths), whole);
  return [
    hold({
      name: 'waistMark',
      value: quarter.value,
      least,
      most: Math.max(least, most),
      step: mm((mark * plan.skirt.panels.length) / 4),
      changes: (value) => {
        const [over, upTo] = roundsOf(value, widths);
        return [{ path: ['cut', 'fullness'], value: fullnessWithin(over / girth, upTo / girth) }];
      },
    }),
  ];
}

const usable = ({ cloth, seam }: Widths): number => Math.max(1, cloth - 2 * seam);

function quarterOf(round: number, widths: Widths): number {
  const count =
    widths.asked ?? Math.min(fieldLimits.widths.most, Math.max(1, Math.ceil(round / usable(widths) - 1e-6)));
  const enough = (round + 2 * count * widths.seam) / count;
  const chalked = stepUp(enough, mm(widths.mark));
  return ((enough <= widths.cloth ? Math.min(chalked, widths.cloth) : chalked) * count) / 4;
}

/** The rounds, above the first and up to the second, whose quarter comes nearest to the one wished. */
function roundsOf(quarter: number, widths: Widths): [number, number] {
  const { cloth, seam, mark, asked } = widths;
  const enough = Math.max(1, Math.ceil((4 * quarter) / cloth - 1e-6));
  const count = asked ?? Math.min(fieldLimits.widths.most, enough);
  // Below this one width less would do.
  const fewer = asked === undefined ? (count - 1) * usable(widths) : 0;
  const nearest = Math.round((4 * quarter) / count / mark);
  const marks = Math.max(nearest, Math.floor((fewer / count + 2 * seam) / mark + 1e-6) + 1);
  const round = (panel: number): number => count * (panel - 2 * seam);
  return [Math.max(fewer, round((marks - 1) * mark)), round(marks * mark)];
}
