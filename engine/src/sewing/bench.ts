import type { ClothOptions, ClothPlan, ContrastPlan, SkirtCloths } from '../cloth/index.ts';
import type { Figure } from '../figure/index.ts';
import { boundsOf } from '../geometry/index.ts';
import type { Composition, RibbonOptions, Row } from '../ribbon/index.ts';
import type { StitchLine } from '../seams/index.ts';
import type { Skirt, Work } from '../skirt/index.ts';
import type { Supplies, SuppliesOptions } from '../supplies/index.ts';
import { mm, type Minutes, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { SewingOptions } from './options.ts';
import type { Sentence } from './sentence.ts';
import type { Caution, Step, StepId, Station, Stitch } from './step.ts';
import { noWait } from './time.ts';
import type { Body } from '../body/index.ts';

/** All that the steps speak of. */
export interface Bench {
  readonly body: Body;
  readonly skirt: Skirt;
  readonly ribbons: Composition;
  readonly ribbonOptions: RibbonOptions;
  readonly cloth: ClothPlan;
  readonly clothOptions: ClothOptions;
  /** The skirt's other cloths, and what is cut from which. */
  readonly contrast: readonly ContrastPlan[];
  readonly cloths: SkirtCloths;
  readonly lines: readonly StitchLine[];
  readonly supplies: Supplies;
  /** Whose colour the thread has of a seam between two cloths. */
  readonly threadColour: SuppliesOptions['thread']['colour'];
  readonly options: SewingOptions;
}

interface StepParts {
  readonly id: StepId;
  readonly after: readonly StepId[];
  readonly station: Station;
  readonly sentences: readonly (Sentence | false)[];
  readonly cautions?: readonly (Caution | false)[];
  readonly stitch?: Stitch;
  readonly works?: readonly Work[];
  readonly hands: Figure<Minutes>;
  readonly wait?: Figure<Minutes>;
}

export const step = (parts: StepParts): Step => ({
  id: parts.id,
  after: parts.after,
  station: parts.station,
  sentences: parts.sentences.filter((each) => each !== false),
  cautions: (parts.cautions ?? []).filter((each) => each !== false),
  stitch: parts.stitch ?? null,
  works: parts.works ?? [],
  hands: parts.hands,
  wait: parts.wait ?? noWait,
});

/** Straight stitch for medium cotton, 2.5 mm; zigzag 3 mm wide. Handbook figures for home machines. */
export const straightStitch: Stitch = {
  stitch: '301',
  length: figure.length(mm(2.5), 'sewing.stitchLength'),
  width: null,
};
/** Long enough to be drawn up, and to come out again. Common practice, no source. */
export const longStitch: Stitch = {
  stitch: '301',
  length: figure.length(mm(4.5), 'sewing.stitchLength'),
  width: null,
};
export const zigzagStitch: Stitch = {
  stitch: '304',
  length: figure.length(mm(2), 'sewing.stitchLength'),
  width: figure.length(mm(3), 'sewing.zigzagWidth'),
};

/** Length of all stitching of one name. */
export const lengthOfLines = (bench: Bench, name: StitchLine['name']): Mm =>
  mm(bench.lines.filter((line) => line.name === name).reduce((sum, line) => sum + line.length.value, 0));

/** Rows that go on while the panels lie flat; one that covers the seam of two tiers goes on after that seam. */
export const flatRows = ({ ribbons }: Pick<Bench, 'ribbons'>): readonly Row[] =>
  ribbons.rows.filter(({ onSeam }) => onSeam === null);
export const seamRows = ({ ribbons }: Pick<Bench, 'ribbons'>): readonly Row[] =>
  ribbons.rows.filter(({ onSeam }) => onSeam !== null);

/** Whether the rows go round: then all seams but the last are sewn before them. */
export const goRound = (bench: Pick<Bench, 'ribbons'>): boolean =>
  bench.ribbons.where === 'round' && flatRows(bench).length > 0;

export const stripsOf = (rows: readonly Row[]): number =>
  rows.reduce((sum, row) => sum + row.strips.length, 0);

/** Whole widths keep their selvages: the panel is counted between them. */
export const keepsSelvages = ({ skirt, cloth }: Bench): boolean =>
  skirt.marking === 'straight widths' &&
  boundsOf(skirt.panels[0].shape.cut).width >= cloth.fabric.usable.value - WHOLE;

/** Below a hundredth of a millimetre two widths are one. */
const WHOLE = 0.01;

/** Where a seam is sewn, from the cloth's own edge: inside the selvage where that is kept. */
export function seamFromEdge(bench: Bench): Figure<Mm> {
  const seam = bench.skirt.sideSeamAllowance;
  if (!keepsSelvages(bench)) return seam;
  const { selvage } = bench.cloth.fabric;
  return figure.length(mm(selvage.value + seam.value), 'sewing.seamFromSelvage', { selvage, seam });
}
