import { figures, notices } from '../figure/index.ts';

export type SuppliesFigureCode =
  | 'thread.ratio'
  | 'thread.seam'
  | 'thread.share'
  | 'thread.sum'
  | 'thread.waste'
  | 'thread.tail'
  | 'thread.starts'
  | 'thread.needle'
  | 'thread.under'
  | 'thread.total'
  | 'supplies.spool'
  | 'supplies.spools'
  | 'supplies.cones'
  | 'supplies.spare'
  | 'supplies.withSpare'
  | 'supplies.step'
  | 'supplies.least'
  | 'supplies.buy'
  | 'supplies.pieces'
  | 'supplies.boltWidth'
  | 'supplies.pieceWidth'
  | 'supplies.pieceHeight'
  | 'supplies.knit'
  | 'supplies.bandPiece'
  | 'supplies.interfacingWidth'
  | 'supplies.zip';

export type SuppliesNoticeCode = 'supplies.unwashedRibbon' | 'supplies.flame' | 'supplies.flameAndSpray';

export const figure = figures<SuppliesFigureCode>();
export const { caution } = notices<SuppliesNoticeCode>();
