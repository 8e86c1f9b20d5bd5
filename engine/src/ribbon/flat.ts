import type { Notice } from '../figure/index.ts';
import type { Apex } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import type { Figure } from '../figure/index.ts';
import { caution, figure } from './codes.ts';
import type { RibbonOptions } from './options.ts';
import type { Curve, Row } from './row.ts';

/** Cloth that one small tuck or gather takes up. Common practice, no source. */
const TUCK = mm(6);

/** A straight ribbon of width w along a curve of radius R has edges that differ by w/R. */
export function curveOf(apex: Apex, row: { readonly at: Mm; readonly width: Mm }, width: Figure<Mm>): Curve {
  const radius = figure.length(mm(apex.hemRadius - row.at - row.width), 'ribbon.radius');
  const share = figure.percent(row.width / Math.max(1, radius.value), 'ribbon.curveShare', { width, radius });
  const takeUp = figure.length(mm(2 * apex.halfSweep * row.width), 'ribbon.takeUp', { width });
  return { radius, share, takeUp };
}

/** Of rows that will not lie flat by themselves the worst is named; what helps one helps all. */
export function flatNotices(rows: readonly Row[], chosen: RibbonOptions): Notice[] {
  const worst = rows.reduce<Row | null>(
    (most, row) => ((row.curve?.share.value ?? 0) > (most?.curve?.share.value ?? 0) ? row : most),
    null,
  );
  if (!worst?.curve || worst.curve.share.value <= chosen.easesUnseen) return [];
  const { share, takeUp } = worst.curve;
  const widest = rows.filter((row) => (row.curve?.share.value ?? 0) > chosen.easesUnseen).length;
  if (share.value <= chosen.easesWithCare)
    return [caution('ribbon.easeWithSteam', { row: worst.number, rows: widest, share, takeUp })];
  const tucks = figure.count(Math.ceil(takeUp.value / TUCK), 'ribbon.tucks', {
    takeUp,
    tuck: figure.length(TUCK, 'ribbon.tuck'),
  });
  const limit = figure.percent(chosen.easesWithCare, 'ribbon.easeLimit');
  return [caution('ribbon.willNotLieFlat', { row: worst.number, rows: widest, share, takeUp, tucks, limit })];
}
