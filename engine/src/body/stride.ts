import type { Figure, Notice } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import type { Body } from './body.ts';
import { caution, length, type BodyNoticeCode } from './codes.ts';
import { atFloor } from './hem-level.ts';
import { hemNeededAt, type HemNeed } from './hem-need.ts';
import { bodySettings, type BodySettings } from './settings.ts';
import { walkerOf } from './walker.ts';

/** What walking asks of the finished hem, all the way round. */
export interface Stride {
  /** Below this a plain step is cut short. Null when it could not be worked out, or no step is taken. */
  readonly bare: Figure<Mm> | null;
  /** Below this, daily life is. Null when it could not be worked out. */
  readonly everyday: Figure<Mm> | null;
  /**
   * What the default hem is built from: `everyday` where there is one. For an adult of unknown uprights the makers' 60 in, which counts
   * before seams; for a child of known height the need of a skirt to the floor, more than any shorter skirt's; for other
   * children 0, and for those who sit, so that the cut's own flare decides.
   */
  readonly needed: Figure<Mm>;
  /** Whether `needed` is known to be enough. */
  readonly checked: boolean;
  readonly notices: readonly Notice<BodyNoticeCode>[];
}

/** Room to walk at the body's own hem. Geometry in `hem-need.ts`; shares and ease in the settings, with their sources. */
export function strideNeed(body: Body, settings: BodySettings = bodySettings): Stride {
  if (!body.walks)
    return {
      bare: null,
      everyday: null,
      needed: length(mm(0), 'body.noStepsTaken'),
      checked: true,
      notices: [],
    };
  const walker = walkerOf(body, settings);
  if (walker && body.hemHeight) {
    const need = spread(body, body.hemHeight, hemNeededAt(walker, body.hemHeight), settings);
    return { ...need, needed: need.everyday, checked: true, notices: [] };
  }
  if (walker && !body.adult) {
    const needed = hemNeededAt(walker, atFloor()).everyday;
    return unchecked(needed, caution('body.strideForFloorLength', { needed }));
  }
  if (!body.adult) return unchecked(length(mm(0), 'body.noNeedKnown'), caution('body.childStrideNotChecked'));
  const needed = length(settings.adultHemFloor, 'body.adultHemFloor');
  return unchecked(needed, caution('body.strideNotChecked', { needed }));
}

const unchecked = (needed: Figure<Mm>, notice: Notice<BodyNoticeCode>): Stride => ({
  bare: null,
  everyday: null,
  needed,
  checked: false,
  notices: [notice],
});

/** Carries the ± of an estimated height or waist to floor through the curve: the larger change at either end of it. */
function spread(body: Body, hemHeight: Figure<Mm>, need: HemNeed, settings: BodySettings): HemNeed {
  const { height } = body;
  if (height?.plusMinus === undefined && hemHeight.plusMinus === undefined) return need;
  const changes = [-1, 1].map((sign) => {
    const walker = walkerOf({ ...body, height: height && moved(height, sign) }, settings);
    const there = walker ? hemNeededAt(walker, moved(hemHeight, sign)).bare.value : need.bare.value;
    return Math.abs(there - need.bare.value);
  });
  const plusMinus = mm(Math.max(...changes));
  const bare = { ...need.bare, plusMinus };
  return { bare, everyday: { ...need.everyday, inputs: { ...need.everyday.inputs, bare }, plusMinus } };
}

const moved = (figure: Figure<Mm>, sign: number): Figure<Mm> => ({
  ...figure,
  value: mm(Math.max(0, figure.value + sign * (figure.plusMinus ?? 0))),
});
