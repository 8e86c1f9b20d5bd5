import type { Figure } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { length } from './codes.ts';
import { atFloor } from './hem-level.ts';
import { legGirthAt } from './legs.ts';
import type { Walker } from './walker.ts';

/** Least way round at one level: for a plain step, and with the ease of daily life. */
export interface HemNeed {
  readonly bare: Figure<Mm>;
  readonly everyday: Figure<Mm>;
}

/** Distance between the legs at a level, the legs opening like a pair of compasses from the hip. */
export function stepGap(step: Figure<Mm>, hipHeight: Figure<Mm>, level: Figure<Mm>): Figure<Mm> {
  return length(mm(step.value * (1 - level.value / hipHeight.value)), 'body.stepGap', {
    step,
    level,
    hipHeight,
  });
}

/** The cloth goes round both legs: out, back, and once round a leg. */
export function roundLegs(gap: Figure<Mm>, leg: Figure<Mm>): Figure<Mm> {
  return length(mm(2 * gap.value + leg.value), 'body.bareHem', { gap, leg });
}

const needAt = (walker: Walker, level: Figure<Mm>): Figure<Mm> =>
  roundLegs(stepGap(walker.step, walker.hipHeight, level), legGirthAt(walker.leg, level));

const withEase = (walker: Walker, bare: Figure<Mm>): Figure<Mm> =>
  length(mm(bare.value + walker.ease.value), 'body.everydayHem', { bare, ease: walker.ease });

/** Levels where the curve may bend, from the floor to the hip. */
const bends = ({ leg, hipHeight }: Walker): readonly Figure<Mm>[] => [
  atFloor(),
  ...leg.map(({ level }) => level).filter((level) => level.value < hipHeight.value),
  hipHeight,
];

/**
 * What a hem at `level` above the floor must measure round, for slits, shorter skirts and the hem itself.
 *
 * Where a leg above the hem asks for more than the hem's own level does (heavy thighs, short steps), that level
 * counts, because a skirt is no wider above its hem than at it. So the need never falls as a skirt gets longer. Above the hip, the
 * hip's own need.
 */
export function hemNeededAt(walker: Walker, level: Figure<Mm>): HemNeed {
  const { hipHeight } = walker;
  const hem = level.value > hipHeight.value ? hipHeight : level;
  const bare = bends(walker)
    .filter((bend) => bend.value > hem.value)
    .map((bend) => needAt(walker, bend))
    .reduce((most, each) => (each.value > most.value ? each : most), needAt(walker, hem));
  return { bare, everyday: withEase(walker, bare) };
}

/**
 * The same curve read backwards: the lowest level above the floor at which `around` is enough. A slit must reach
 * it; a skirt cut off there can be walked in. Null when no level below the hip will do.
 */
export function levelWhereEnough(
  walker: Walker,
  around: Figure<Mm>,
  which: keyof HemNeed = 'everyday',
): Figure<Mm> | null {
  const need = (level: Figure<Mm>) => {
    const bare = needAt(walker, level);
    return which === 'bare' ? bare : withEase(walker, bare);
  };
  const levels = bends(walker).toReversed();
  let high = levels[0];
  if (!high || need(high).value > around.value) return null;
  for (const low of levels.slice(1)) {
    if (need(low).value > around.value) return crossing(low, need(low), high, need(high), around);
    high = low;
  }
  return high;
}

function crossing(
  lowLevel: Figure<Mm>,
  lowNeed: Figure<Mm>,
  highLevel: Figure<Mm>,
  highNeed: Figure<Mm>,
  around: Figure<Mm>,
): Figure<Mm> {
  const part = (lowNeed.value - around.value) / (lowNeed.value - highNeed.value);
  return length(mm(lowLevel.value + (highLevel.value - lowLevel.value) * part), 'body.levelForHem', {
    lowLevel,
    highLevel,
    lowNeed,
    highNeed,
    around,
  });
}
