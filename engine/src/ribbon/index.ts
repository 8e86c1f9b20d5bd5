export { composeRibbons, type Composition } from './compose.ts';
export {
  alongLimits,
  bandsOf,
  MOST_ROWS,
  ribbonOptions,
  type BandRow,
  type EndSeal,
  type Hold,
  type Placement,
  type RibbonOptions,
  type Spacing,
} from './options.ts';
export { clearHem, clearTop } from './limits.ts';
export { ribbonTotals, type RibbonTotal } from './totals.ts';
export type { Spaced, SpacingWish } from './spacing.ts';
export type { Curve, Row, RowLine, Strip } from './row.ts';
export type { RibbonFigureCode, RibbonNoticeCode } from './codes.ts';
