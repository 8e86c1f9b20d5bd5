import { figures, notices } from '../figure/index.ts';
import type { MeasureName } from './measures.ts';

/** Rules of this room's figures; their words are in the catalogues. */
export type BodyFigureCode =
  | `body.${MeasureName}`
  | 'body.largerOfTwo'
  | 'body.meanOfTwo'
  | 'body.takesDifference'
  | 'body.waistToFloorFromHeight'
  | 'body.heightFromWaistToFloor'
  | 'body.lineStart'
  | 'body.lineSlope'
  | 'body.expected'
  | 'body.least'
  | 'body.most'
  | 'body.hemHeight'
  | 'body.atFloor'
  | 'body.usualStepShare'
  | 'body.paceFactor'
  | 'body.stepShare'
  | 'body.step'
  | 'body.hipHeightShare'
  | 'body.hipHeight'
  | 'body.kneeHeightShare'
  | 'body.kneeHeight'
  | 'body.legLevelShare'
  | 'body.legLevel'
  | 'body.legGirthShare'
  | 'body.legGirth'
  | 'body.calfGirthShare'
  | 'body.legGirthFromCalf'
  | 'body.legGirthBetween'
  | 'body.stepGap'
  | 'body.bareHem'
  | 'body.everydayEase'
  | 'body.everydayHem'
  | 'body.levelForHem'
  | 'body.adultHemFloor'
  | 'body.noNeedKnown';

/** What this room may have to say; the words and what to do are in the catalogues. */
export type BodyNoticeCode =
  | 'body.takesDiffer'
  | 'body.estimated'
  | 'body.waistToFloorWanted'
  | 'body.improbablePair'
  | 'body.hipBelowWaist'
  | 'body.hemBelowFloor'
  | 'body.longHem'
  | 'body.longerThanHeight'
  | 'body.strideNotChecked'
  | 'body.childStrideNotChecked'
  | 'body.strideForFloorLength';

export const { length, ratio } = figures<BodyFigureCode>();
export const { caution, problem } = notices<BodyNoticeCode>();
