import type { Figure, Notice } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { caution, length, ratio, type BodyNoticeCode } from './codes.ts';
import type { BodyMeasures, WaistPlace, WayToWear } from './measures.ts';
import type { BodySettings } from './settings.ts';
import { SLACK } from './slack.ts';

/** Waist to floor at the places round the waist where it was measured. */
export type Levels = Readonly<Partial<Record<WaistPlace, Figure<Mm>>>>;

const levelNames = {
  front: 'levelFront',
  back: 'levelBack',
  left: 'levelLeft',
  right: 'levelRight',
} as const satisfies Record<WaistPlace, string>;

export function readLevels(measures: BodyMeasures['levels']): Levels {
  const taken = (place: WaistPlace): Levels => {
    const value = measures?.[place];
    return value === undefined ? {} : { [place]: length(value, `body.${levelNames[place]}`) };
  };
  return { ...taken('front'), ...taken('back'), ...taken('left'), ...taken('right') };
}

/** Waist to floor out of its levels: the mean of the sides, of one side if only one was taken; without sides, of front and back. */
export const floorFromLevels = ({ left, right, front, back }: Levels): Figure<Mm> | null =>
  middleOf(left, right) ?? middleOf(front, back);

function middleOf(first?: Figure<Mm>, second?: Figure<Mm>): Figure<Mm> | null {
  if (!first || !second) return first ?? second ?? null;
  return length(mm((first.value + second.value) / 2), 'body.floorFromLevels', { first, second });
}

export interface RisesOn {
  readonly levels: Levels;
  /** Waist to floor that the levels are held against; null only where there are none. */
  readonly base: Figure<Mm> | null;
  readonly waistToHem: Figure<Mm>;
  readonly wears: WayToWear;
}

/** How much longer (less than 0: shorter) the skirt is from the waist to its level hem than at its base. */
export type Rises = Readonly<Record<WaistPlace, Figure<Mm>>>;

/** "The difference is made at the top, never at the hem" (The Perfect Dressmaking System, 1914). */
export function risesOf(on: RisesOn, settings: BodySettings): Rises {
  const at = (place: WaistPlace): Figure<Mm> => held(riseAt(place, on, settings), on.waistToHem, settings);
  return { front: at('front'), back: at('back'), left: at('left'), right: at('right') };
}

function riseAt(place: WaistPlace, { levels, base, wears }: RisesOn, settings: BodySettings): Figure<Mm> {
  const level = levels[place];
  if (level && base) return length(mm(level.value - base.value), 'body.rise', { level, base });
  const usual = settings.rises[wears][place];
  return usual === undefined ? length(mm(0), 'body.noRise') : length(usual, 'body.usualRise');
}

function held(rise: Figure<Mm>, waistToHem: Figure<Mm>, { mostRiseShare }: BodySettings): Figure<Mm> {
  if (Math.abs(rise.value) <= mostRiseShare * waistToHem.value) return rise;
  const share = ratio(Math.sign(rise.value) * mostRiseShare, 'body.mostRiseShare');
  return length(mm(waistToHem.value * share.value), 'body.riseHeld', { waistToHem, share });
}

/** Asks about each level that is far from the base. */
export function levelNotices(
  levels: Levels,
  base: Figure<Mm> | null,
  { farRise }: BodySettings,
): readonly Notice<BodyNoticeCode>[] {
  return Object.entries(levels).flatMap(([place, level]) => {
    if (!base || Math.abs(level.value - base.value) <= farRise + SLACK) return [];
    const [larger, smaller] = level.value > base.value ? [level, base] : [base, level];
    const difference = length(mm(larger.value - smaller.value), 'body.takesDifference', { larger, smaller });
    return [caution('body.levelFar', { measure: levelNames[place as WaistPlace], level, base, difference })];
  });
}
