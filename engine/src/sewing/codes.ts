import { figures } from '../figure/index.ts';

export type SewingFigureCode =
  | 'sewing.setUp'
  | 'sewing.perMetre'
  | 'sewing.perPiece'
  | 'sewing.pieces'
  | 'sewing.length'
  | 'sewing.skill'
  | 'sewing.hands'
  | 'sewing.wait'
  | 'sewing.handsTotal'
  | 'sewing.waitTotal'
  | 'sewing.steps'
  | 'sewing.stitchLength'
  | 'sewing.zigzagWidth'
  | 'sewing.sprayDistance'
  | 'sewing.threadingOpening'
  | 'sewing.rows'
  | 'sewing.strips'
  | 'sewing.trimOff'
  | 'sewing.hemStitching'
  | 'sewing.casingStitching'
  | 'sewing.hangHours'
  | 'sewing.rawLength'
  | 'sewing.hemLine'
  | 'sewing.casingLine'
  | 'sewing.seamFromSelvage'
  | 'sewing.acrossCurve'
  | 'sewing.beyondHem'
  | 'sewing.threadChanges'
  | 'sewing.turnUnder';

export const figure = figures<SewingFigureCode>();
