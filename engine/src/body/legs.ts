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

/** The usual leg for a height; where the calf was measured every girth is scaled with it. */
export function legOf(height: Figure<Mm>, calf: Figure<Mm> | null, { legShares }: BodySettings): Leg {
  const at = (point: LegPoint): LegLevel => {
    const share = legShares[point];
    const levelShare = ratio(share.level, 'body.legLevelShare');
    const level = length(mm(height.value * share.level), 'body.legLevel', { height, levelShare });
    if (calf && point === 'calf') return { level, girth: calf };
    const girthShare = ratio(share.girth, 'body.legGirthShare');
    const calfShare = ratio(legShares.calf.girth, 'body.calfGirthShare');
    const girth = calf
      ? length(mm((calf.value * share.girth) / legShares.calf.girth), 'body.legGirthFromCalf', {
          calf,
          girthShare,
          calfShare,
        })
      : length(mm(height.value * share.girth), 'body.legGirth', { height, girthShare });
    return { level, girth };
  };
  const [lowest, ...others] = legPoints;
  return [at(lowest), ...others.map(at)];
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
