import type { Figure } from '../figure/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Panel, Skirt } from '../skirt/index.ts';
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
  const clear = clearTop(skirt);
  return {
    lowest: figure.length(chosen.lowest, 'ribbon.lowest'),
    highest:
      chosen.highest === undefined
        ? usualHighest(skirt.panelLength, bands, chosen, mark, clear)
        : figure.length(chosen.highest, 'ribbon.highest'),
    hemStitching: clearHem(skirt),
    clearTop: clear,
  };
}

/** Highest that a ribbon's upper edge may lie: clear of the waist's stitching, of tucks below it, and of where the waist dips. */
export function clearTop({ panelLength: length, waist, extras, rounds }: Skirt): Figure<Mm> {
  const clearance = figure.length(FROM_CASING, 'ribbon.clearance');
  const tucked = extras.tucks?.reach.value ?? 0;
  const depth = figure.length(
    mm(Math.max(waist.depth, tucked)),
    tucked > waist.depth ? 'ribbon.growthTucks' : 'ribbon.waistStitching',
  );
  const dips = figure.length(mm(dipOf(rounds[0].panels)), 'ribbon.dip');
  const value = mm(length.value - dips.value - depth.value - FROM_CASING);
  if (value < 0) return figure.length(mm(0), 'ribbon.noTop');
  return dips.value === 0
    ? figure.length(value, 'ribbon.clearTop', { length, depth, clearance })
    : figure.length(value, 'ribbon.clearTopDipped', { length, dips, depth, clearance });
}

/** Lowest that a row lies clear of the hem's stitching. */
export function clearHem({ hemAllowance, hemTurnUnder }: Skirt): Figure<Mm> {
  const value = mm(hemAllowance.value - hemTurnUnder + FROM_HEM_STITCHING);
  return figure.length(value, 'ribbon.hemStitching', { hem: hemAllowance });
}

/** How far the top line lies below the plain one where it lies lowest, as the front of a seated wearer's does. */
function dipOf(panels: readonly Panel[]): number {
  let lowest = 0;
  for (const { shape } of panels)
    for (const segment of shape.edges.find(({ name }) => name === 'waist')?.finished ?? [])
      // A curve of the top line lies below the plain line only where it is drawn point by point, in lines.
      if (segment.kind === 'line')
        lowest = Math.max(lowest, levelOf(shape, segment.from), levelOf(shape, segment.to));
  return lowest < HAIR ? 0 : lowest;
}

/** Depth of a point below the plain top line: along the radius of a ring, straight down a straight panel. */
const levelOf = ({ apex }: Panel['shape'], { x, y }: Point): number =>
  apex ? Math.hypot(x, y + apex.waistRadius) - apex.waistRadius : y;

/** What binary fractions lose is no dip. */
const HAIR = 1e-6;

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
