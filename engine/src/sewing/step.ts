import type { Figure, NoticeParam } from '../figure/index.ts';
import type { StitchClass } from '../seams/index.ts';
import type { Minutes, Mm } from '../units/index.ts';

/** Where a step is done. */
export type Station = 'table' | 'machine' | 'overlocker' | 'iron' | 'wash';

export type StepId =
  | 'measure'
  | 'colourTest'
  | 'prewash'
  | 'pressCloth'
  | 'straighten'
  | 'fold'
  | 'mark'
  | 'cut'
  | 'trim'
  | 'hang'
  | 'chalkRows'
  | 'cutRibbon'
  | 'testStitch'
  | 'firstSeams'
  | 'holdRibbon'
  | 'stitchRibbon'
  | 'pressRows'
  | 'applique'
  | 'sideSeams'
  | 'finishEdges'
  | 'hem'
  | 'casing'
  | 'threadElastic'
  | 'closeElastic'
  | 'finish';

/** Where work can hurt. The words defer to local rules. */
export type Caution =
  | 'shears'
  | 'hotIron'
  | 'satinIron'
  | 'needle'
  | 'spray'
  | 'flame'
  | 'hotWater'
  | 'pins'
  | 'longHem'
  | 'overlocker'
  | 'liquid';

/** A sentence of a step: its words are in the catalogues, its numbers are these. */
export interface Sentence {
  readonly code: SentenceCode;
  readonly params: Readonly<Record<string, NoticeParam>>;
}

export type SentenceCode =
  | 'measure.twice'
  | 'measure.numbers'
  | 'measure.string'
  | 'colourTest.dab'
  | 'colourTest.apart'
  | 'prewash.asWorn'
  | 'prewash.cloth'
  | 'prewash.ribbon'
  | 'prewash.edges'
  | 'pressCloth.flat'
  | 'straighten.thread'
  | 'straighten.square'
  | 'fold.double'
  | 'fold.doubleEdges'
  | 'fold.lengthwise'
  | 'fold.crosswise'
  | 'fold.crosswiseTurn'
  | 'fold.open'
  | 'fold.openHeadToTail'
  | 'fold.stack'
  | 'fold.wholePanels'
  | 'fold.grain'
  | 'mark.chalkScrap'
  | 'mark.fromFold'
  | 'mark.fromCentre'
  | 'mark.waist'
  | 'mark.casingEnd'
  | 'mark.hem'
  | 'mark.hemEnd'
  | 'mark.bottom'
  | 'mark.join'
  | 'mark.curve'
  | 'mark.curveWaist'
  | 'mark.curveHem'
  | 'mark.curveCut'
  | 'mark.curveJoin'
  | 'mark.through'
  | 'mark.widths'
  | 'cut.pinLayers'
  | 'cut.smooth'
  | 'cut.slitFold'
  | 'cut.frontBack'
  | 'cut.tear'
  | 'trim.square'
  | 'trim.curve'
  | 'trim.check'
  | 'trim.beforeRows'
  | 'hang.day'
  | 'hang.true'
  | 'chalkRows.rightSide'
  | 'chalkRows.fromRaw'
  | 'chalkRows.lowerEdge'
  | 'chalkRows.curve'
  | 'chalkRows.both'
  | 'cutRibbon.strips'
  | 'cutRibbon.round'
  | 'cutRibbon.sealant'
  | 'cutRibbon.flame'
  | 'cutRibbon.none'
  | 'testStitch.scrap'
  | 'testStitch.needle'
  | 'testStitch.bobbin'
  | 'firstSeams.round'
  | 'firstSeams.finish'
  | 'holdRibbon.lay'
  | 'holdRibbon.pins'
  | 'holdRibbon.glue'
  | 'holdRibbon.spray'
  | 'holdRibbon.touching'
  | 'stitchRibbon.sameWay'
  | 'stitchRibbon.edge'
  | 'stitchRibbon.thread'
  | 'stitchRibbon.order'
  | 'stitchRibbon.ease'
  | 'pressRows.cool'
  | 'applique.place'
  | 'applique.web'
  | 'applique.stitch'
  | 'sideSeams.match'
  | 'sideSeams.sew'
  | 'sideSeams.mirror'
  | 'sideSeams.catch'
  | 'finishEdges.overlock'
  | 'finishEdges.zigzag'
  | 'finishEdges.selvage'
  | 'finishEdges.press'
  | 'hem.turn'
  | 'hem.stitch'
  | 'hem.curve'
  | 'casing.turn'
  | 'casing.selvage'
  | 'casing.stitch'
  | 'casing.curve'
  | 'threadElastic.cut'
  | 'threadElastic.thread'
  | 'threadElastic.pin'
  | 'threadElastic.tryOn'
  | 'closeElastic.join'
  | 'closeElastic.opening'
  | 'closeElastic.even'
  | 'closeElastic.catch'
  | 'finish.ends'
  | 'finish.press'
  | 'finish.note';

/** How the machine is set for a step. */
export interface Stitch {
  readonly stitch: StitchClass;
  readonly length: Figure<Mm>;
  /** Of a zigzag; null for a straight stitch. */
  readonly width: Figure<Mm> | null;
}

/** One step of the work. */
export interface Step {
  readonly id: StepId;
  /** Steps that must be done first. */
  readonly after: readonly StepId[];
  readonly station: Station;
  readonly sentences: readonly Sentence[];
  readonly cautions: readonly Caution[];
  readonly stitch: Stitch | null;
  /** With hands on it, and waiting. */
  readonly hands: Figure<Minutes>;
  readonly wait: Figure<Minutes>;
}

export const say = (code: SentenceCode, params: Sentence['params'] = {}): Sentence => ({ code, params });
