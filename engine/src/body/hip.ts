import type { Figure, Notice } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { caution, length, type BodyNoticeCode } from './codes.ts';
import { hipOf } from './estimate.ts';
import type { Halves, SizeInterval } from './measures.ts';
import type { BodySettings } from './settings.ts';
import { SLACK } from './slack.ts';

export interface HipKnown {
  readonly waist: Figure<Mm>;
  /** Round the whole, where it was taped. */
  readonly taped: Figure<Mm> | null;
  readonly halves: Halves<Mm> | undefined;
  readonly size: SizeInterval | undefined;
  readonly adult: boolean;
}

export interface Hip {
  readonly hip: Figure<Mm>;
  /** Which add up to the hip. */
  readonly sides: Halves<Figure<Mm>>;
  readonly measured: boolean;
  readonly notices: readonly Notice<BodyNoticeCode>[];
}

/** The hip by the surest way there is: the tape, its two halves, a printed size, an adult's waist. */
export function readHip(known: HipKnown, settings: BodySettings): Hip {
  const { taped, halves } = known;
  if (halves) return fromHalves(taped, halves, settings);
  if (taped) return { hip: taped, sides: evenly(taped), measured: true, notices: [] };
  return estimated(known, settings);
}

function fromHalves(taped: Figure<Mm> | null, halves: Halves<Mm>, settings: BodySettings): Hip {
  const left = length(halves.left, 'body.halfLeft');
  const right = length(halves.right, 'body.halfRight');
  const sum = length(mm(left.value + right.value), 'body.hipFromHalves', { left, right });
  if (!taped) return { hip: sum, sides: { left, right }, measured: true, notices: [] };
  // As of two takes round the body, the larger counts.
  const hip = length(mm(Math.max(taped.value, sum.value)), 'body.largerOfTwo', { first: taped, second: sum });
  const [larger, smaller] = taped.value >= sum.value ? [taped, sum] : [sum, taped];
  const difference = length(mm(larger.value - smaller.value), 'body.takesDifference', { larger, smaller });
  const side = (half: Figure<Mm>): Figure<Mm> =>
    length(mm((hip.value * half.value) / sum.value), 'body.hipSide', { hip, half, sum });
  return {
    hip,
    sides: { left: side(left), right: side(right) },
    measured: true,
    notices:
      difference.value > settings.takeTolerance + SLACK
        ? [caution('body.halvesDiffer', { hip: taped, sum, difference, used: hip })]
        : [],
  };
}

function estimated({ waist, size, adult }: HipKnown, settings: BodySettings): Hip {
  if (!size && !adult) {
    // No survey took the hips of children under 12: nothing is guessed, the waist stands in for them until they are measured.
    const hip = length(waist.value, 'body.hipAsWaist');
    return { hip, sides: evenly(hip), measured: false, notices: [caution('body.hipWanted', { hip })] };
  }
  const hip = size ? fromSize(size, settings) : hipOf(waist, settings.waistLevel);
  return {
    hip,
    sides: evenly(hip),
    measured: false,
    notices: [caution('body.estimated', { measure: 'hip', estimate: hip })],
  };
}

/** The middle of the printed interval, and half of it either way. */
function fromSize(size: SizeInterval, settings: BodySettings): Figure<Mm> {
  const from = length(mm(Math.min(size.from, size.to)), 'body.sizeFrom');
  const to = length(mm(Math.max(size.from, size.to)), 'body.sizeTo');
  const plusMinus = mm(Math.max((to.value - from.value) / 2, settings.sizePlusMinus));
  return length(mm((from.value + to.value) / 2), 'body.hipFromSize', { from, to }, { plusMinus });
}

function evenly(hip: Figure<Mm>): Halves<Figure<Mm>> {
  const uncertainty = hip.plusMinus === undefined ? {} : { plusMinus: mm(hip.plusMinus / 2) };
  const half = length(mm(hip.value / 2), 'body.hipHalf', { hip }, uncertainty);
  return { left: half, right: half };
}
