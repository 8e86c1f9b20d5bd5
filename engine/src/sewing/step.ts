import type { Figure } from '../figure/index.ts';
import type { StitchClass } from '../seams/index.ts';
import type { Work } from '../skirt/index.ts';
import type { Minutes, Mm } from '../units/index.ts';
import type { Sentence } from './sentence.ts';

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
  | 'firstJoins'
  | 'holdRibbon'
  | 'stitchRibbon'
  | 'pressRows'
  | 'applique'
  | 'pockets'
  | 'darts'
  | 'sideSeams'
  | 'panelSeams'
  | 'joinStrips'
  | 'finishEdges'
  | 'gather'
  | 'sewTiers'
  | 'seamRows'
  | 'faceEdges'
  | 'slits'
  | 'opening'
  | 'tucks'
  | 'lining'
  | 'hem'
  | 'casing'
  | 'casingStrip'
  | 'ties'
  | 'bandPrepare'
  | 'band'
  | 'cordEyelets'
  | 'threadCord'
  | 'threadElastic'
  | 'closeElastic'
  | 'fasten'
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
  | 'liquid'
  | 'cord'
  | 'wheels';

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
  /** What is sewn here of the skirt's works. */
  readonly works: readonly Work[];
  /** With hands on it, and waiting. */
  readonly hands: Figure<Minutes>;
  readonly wait: Figure<Minutes>;
}
