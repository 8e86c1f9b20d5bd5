import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import { caution, count, type BodyNoticeCode } from '../codes.ts';
import {
  growthLine,
  heightAfter,
  hemRiseAfter,
  keepFor,
  shortThen,
  waistToFloorAfter,
  type GrowthLine,
  type ShortThen,
} from './forecast.ts';
import type { Growing } from './options.ts';
import { referenceAges } from './reference.ts';

/** How a child will have grown by the end of the time that the skirt is to fit, and when it will be too short. */
export interface Growth {
  /** For other spans of time: `heightAfter`, `hemRiseAfter`, `keepFor`, `shortThen`. */
  readonly line: GrowthLine;
  readonly months: Figure;
  readonly height: Figure<Mm>;
  readonly waistToFloor: Figure<Mm> | null;
  readonly hemRise: Figure<Mm>;
  /** For a growth tuck or a deeper hem. */
  readonly keep: Figure<Mm>;
  /** Null where that is not before 20 years. */
  readonly short: ShortThen | null;
}

interface Uprights {
  /** As measured: an estimated height has no place in the reference. */
  readonly height: Figure<Mm> | null;
  readonly waistToHem: Figure<Mm>;
  readonly waistToFloor: Figure<Mm> | null;
}

/** Null, with the notice that says why, where no forecast is made. */
interface Read {
  readonly growth: Growth | null;
  readonly notices: readonly Notice<BodyNoticeCode>[];
}

/** Reads a child's growth from the measurements. */
export function readGrowth(uprights: Uprights, growing: Growing): Read {
  const { height } = uprights;
  const { ageMonths, months } = growing;
  const refused = (why: 'notMeasured' | 'age' | 'farFromUsual'): Read => ({
    growth: null,
    notices: [caution('body.growthNotForecast', { why, age: ageMonths })],
  });
  if (!height) return refused('notMeasured');
  if (!(ageMonths >= referenceAges.least && ageMonths <= referenceAges.most)) return refused('age');
  const line = growthLine({ ...uprights, ...growing, height });
  if (!line) return refused('farFromUsual');
  const growth: Growth = {
    line,
    months: count(months, 'body.fitMonths'),
    height: heightAfter(line, months),
    waistToFloor: waistToFloorAfter(line, months),
    hemRise: hemRiseAfter(line, months),
    keep: keepFor(line, months),
    short: shortThen(line),
  };
  return { growth, notices: [] };
}

/**
 * A caution where the skirt will be too short sooner than it is to fit. `kept` is what a growth tuck or a deeper hem holds, known
 * once the skirt is drafted.
 */
export function growsShort(
  growth: Growth,
  kept: Figure<Mm> | null = null,
): readonly Notice<BodyNoticeCode>[] {
  const { line, months, hemRise, keep } = growth;
  const short = shortThen(line, kept);
  if (!short || (short.months.exact ?? short.months.value) >= months.value) return [];
  return [
    caution('body.growsShort', {
      date: short.on,
      months: short.months,
      wanted: months,
      rise: hemRise,
      keep,
    }),
  ];
}
