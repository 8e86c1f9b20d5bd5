import { figures, notices } from '../figure/index.ts';

export type RibbonFigureCode =
  | 'ribbon.width'
  | 'ribbon.lowest'
  | 'ribbon.highest'
  | 'ribbon.highestUsual'
  | 'ribbon.gap'
  | 'ribbon.lowestRow'
  | 'ribbon.nextRow'
  | 'ribbon.fromRawEdge'
  | 'ribbon.fromTierEdge'
  | 'ribbon.tierFromHem'
  | 'ribbon.tierSeam'
  | 'ribbon.belowSeam'
  | 'ribbon.onSeamAt'
  | 'ribbon.across'
  | 'ribbon.acrossRound'
  | 'ribbon.overhang'
  | 'ribbon.stripLength'
  | 'ribbon.total'
  | 'ribbon.strips'
  | 'ribbon.radius'
  | 'ribbon.curveShare'
  | 'ribbon.takeUp'
  | 'ribbon.tuck'
  | 'ribbon.tucks'
  | 'ribbon.easeLimit'
  | 'ribbon.room'
  | 'ribbon.roomNone'
  | 'ribbon.roomNeeded'
  | 'ribbon.hemStitching'
  | 'ribbon.clearance'
  | 'ribbon.clearTop'
  | 'ribbon.clearTopDipped'
  | 'ribbon.dip'
  | 'ribbon.growthTucks'
  | 'ribbon.waistStitching';

export type RibbonNoticeCode =
  | 'ribbon.noRoom'
  | 'ribbon.rowOnHemStitching'
  | 'ribbon.rowAcrossTierSeam'
  | 'ribbon.rowPastTop'
  | 'ribbon.easeWithSteam'
  | 'ribbon.willNotLieFlat';

export const figure = figures<RibbonFigureCode>();
export const { caution, problem } = notices<RibbonNoticeCode>();
