import type { Figure } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { length, ratio } from './codes.ts';
import { legPoints, type BodySettings, type LegPoint } from './settings.ts';

/** Girth of one leg at a level above the floor. */
export interface LegLevel {
  readonly level: Figure<Mm>;
  readonly girth: Figure<Mm>;
}

/** A leg from the ankle up, as a girth at each known level; straight between them, even beyond them. */
export type Leg = readonly [LegLevel, ...LegLevel[]];

/** Girths of a leg that were measured. */
export interface MeasuredLeg {
  readonly calf: Figure<Mm> | null;
  readonly thigh: Figure<Mm> | null;
}

/**
 * The usual leg for a height, with the measured girths in it. The others are scaled with what foretells them best in 1,986 women
 * (ANSUR II): above the knee the mean of calf and thigh misses by 12 mm, the calf alone by 14, the thigh alone by 16, the
 * height by 26; the ankle goes with the calf (8 mm, the height 11, the thigh 14).
 */
export function legOf(height: Figure<Mm>, { calf, thigh }: MeasuredLeg, { legShares }: BodySettings): Leg {
  const girthAt = (point: LegPoint): Figure<Mm> => {
    const girthShare = ratio(legShares[point].girth, 'body.legGirthShare');
    const fromHeight = () =>
      length(mm(height.value * girthShare.value), 'body.legGirth', { height, girthShare });
    const calfShare = ratio(legShares.calf.girth, 'body.calfGirthShare');
    const fromCalf =
      calf &&
      length(mm((calf.value * girthShare.value) / calfShare.value), 'body.legGirthFromCalf', {
        calf,
        girthShare,
        calfShare,
      });
    const thighShare = ratio(legShares.thigh.girth, 'body.thighGirthShare');
    const fromThigh =
      thigh &&
      length(mm((thigh.value * girthShare.value) / thighShare.value), 'body.legGirthFromThigh', {
        thigh,
        girthShare,
        thighShare,
      });
    switch (point) {
      case 'ankle':
        return fromCalf ?? fromHeight();
      case 'calf':
        return calf ?? fromThigh ?? fromHeight();
      case 'aboveKnee':
        return meanOf(fromCalf, fromThigh) ?? fromHeight();
      case 'thigh':
        return thigh ?? fromCalf ?? fromHeight();
    }
  };
  const at = (point: LegPoint): LegLevel => {
    const levelShare = ratio(legShares[point].level, 'body.legLevelShare');
    const level = length(mm(height.value * levelShare.value), 'body.legLevel', { height, levelShare });
    return { level, girth: girthAt(point) };
  };
  const [lowest, ...others] = legPoints;
  return [at(lowest), ...others.map(at)];
}

function meanOf(fromCalf: Figure<Mm> | null, fromThigh: Figure<Mm> | null): Figure<Mm> | null {
  if (!fromCalf || !fromThigh) return fromCalf ?? fromThigh;
  return length(mm((fromCalf.value + fromThigh.value) / 2), 'body.legGirthFromBoth', { fromCalf, fromThigh });
}

/** Girth of the leg at a level above the floor, in proportion between the two levels around it. */
export function legGirthAt(leg: Leg, level: Figure<Mm>): Figure<Mm> {
  let low = leg[0];
  if (level.value <= low.level.value) return low.girth;
  for (const high of leg.slice(1)) {
    if (level.value === high.level.value) return high.girth;
    if (level.value < high.level.value) return between(low, high, level);
    low = high;
  }
  return low.girth;
}

function between(low: LegLevel, high: LegLevel, level: Figure<Mm>): Figure<Mm> {
  const part = (level.value - low.level.value) / (high.level.value - low.level.value);
  return length(mm(low.girth.value + (high.girth.value - low.girth.value) * part), 'body.legGirthBetween', {
    lowGirth: low.girth,
    highGirth: high.girth,
    lowLevel: low.level,
    highLevel: high.level,
    level,
  });
}
