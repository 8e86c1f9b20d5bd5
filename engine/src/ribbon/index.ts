export { composeRibbons, type Composition } from './compose.ts';
export {
  bandsOf,
  ribbonOptions,
  type BandRow,
  type EndSeal,
  type Hold,
  type Placement,
  type RibbonOptions,
  type Spacing,
} from './options.ts';
export { ribbonTotals, type RibbonTotal } from './totals.ts';
export type { Spaced, SpacingWish } from './spacing.ts';
export type { Curve, Row, Strip } from './row.ts';
export type { RibbonFigureCode, RibbonNoticeCode } from './codes.ts';
