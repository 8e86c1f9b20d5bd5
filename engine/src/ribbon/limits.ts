import type { Figure } from '../figure/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { longest, mm, roundTo, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { Band, RibbonOptions } from './options.ts';

/** Rows stay this far from the stitching of hem and casing. Common practice, no source. */
const FROM_HEM_STITCHING = mm(3);
const FROM_CASING = mm(12);

/** Without a wish the rows take the lower part of the skirt. Common practice, no source. */
const USUAL_SHARE = 0.45;
/** Gap that the usual zone leaves at least, so that many rows reach higher rather than crowd. */
const USUAL_LEAST_GAP = mm(20);

export interface RowLimits {
  readonly lowest: Figure<Mm>;
  readonly highest: Figure<Mm>;
  /** The works of the skirt: the hem's stitching, and the casing with its gathers. */
  readonly hemStitching: Figure<Mm>;
  readonly clearTop: Figure<Mm>;
}

/** Where rows may lie on this skirt, measured up from the finished hem. `mark` is the finest that will be chalked. */
export function rowLimits(skirt: Skirt, bands: readonly Band[], chosen: RibbonOptions, mark: Mm): RowLimits {
  const length = skirt.finishedLength;
  const clearance = figure.length(FROM_CASING, 'ribbon.clearance');
  const casing = skirt.waist.topAllowance;
  const clearTop = figure.length(
    mm(Math.max(0, length.value - skirt.waist.depth - FROM_CASING)),
    'ribbon.clearTop',
    { length, casing, clearance },
  );
  const hem = mm(skirt.hemAllowance.value - skirt.hemTurnUnder + FROM_HEM_STITCHING);
  return {
    lowest: figure.length(chosen.lowest, 'ribbon.lowest'),
    highest:
      chosen.highest === undefined
        ? usualHighest(length, bands, chosen, mark, clearTop)
        : figure.length(chosen.highest, 'ribbon.highest'),
    hemStitching: figure.length(hem, 'ribbon.hemStitching', { hem: skirt.hemAllowance }),
    clearTop,
  };
}

function usualHighest(
  length: Figure<Mm>,
  bands: readonly Band[],
  chosen: RibbonOptions,
  mark: Mm,
  clearTop: Figure<Mm>,
): Figure<Mm> {
  const ribbon = bands.flat().reduce((sum, { width }) => sum + width, 0);
  // From the mark that the lowest row will lie on: a zone measured from below it could be too small for one row.
  const lowest = roundTo(chosen.lowest, mark, 'up');
  const roomy = mm(lowest + ribbon + USUAL_LEAST_GAP * Math.max(0, bands.length - 1));
  const wish = longest(mm(length.value * USUAL_SHARE), roomy);
  return figure.length(mm(Math.min(wish, clearTop.value)), 'ribbon.highestUsual', { length, clearTop });
}
