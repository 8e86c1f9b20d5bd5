import { isPanelPiece } from '../cutPieces.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob } from '../job/found.ts';
import { foldsOn } from './foldOn.ts';
import { patternOn } from './linesOn.ts';
import type { HandPlaced } from './handStart.ts';
import { breadthOf, lotsOf, relaxed, type Lot } from './lots.ts';
import { phasesOn, type Phases } from './match.ts';
import type { Run } from './run.ts';
import { stripOf, type FoldOn, type Strip } from './strip.ts';
import { inSingleLayer, variantsOf, type Variant } from './variants.ts';

/** The cloth as it lies for the packing, where the pattern passes on it, and the ways of giving it the pieces. */
export interface Folding {
  readonly foldOn: FoldOn;
  readonly strip: Strip;
  readonly phases: Phases;
  readonly runs: readonly Run[];
}

/**
 * How the cloth is laid out for the packing. Stripes that meet may be folded on a line or midway between two: where more
 * finds room; of two that are as good where more variants may lie so, then where more of the cloth lies double. Null where a
 * pattern that has to meet can't be folded so.
 */
export function foldingOf(job: ClothJob, way: LayKind): Folding | null {
  const { fabric, wanted } = job;
  const meets = fabric.pattern?.match === true;
  const variants = variantsOf(job, way);
  const foldings = (meets && way === 'lengthwise fold' ? (['line', 'between'] as const) : ['line' as const])
    .map((foldOn): Folding => {
      const may = (each: Variant): boolean =>
        !meets || way === 'open' || foldsOn(each, wanted, fabric).includes(foldOn);
      const strip = stripOf(job, way, foldOn);
      const phases = phasesOn(fabric, wanted, patternOn(fabric, way, strip, foldOn));
      const on = { strip, phases };
      return { foldOn, ...on, runs: variants.filter(may).map((each) => runOf(each, job, way, on)) };
    })
    .filter(({ runs }) => runs.length > 0);
  return foldings.reduce<Folding | null>((best, each) => (best && !isBetter(each, best) ? best : each), null);
}

function isBetter(one: Folding, other: Folding): boolean {
  const less = fewestUnfit(other.runs) - fewestUnfit(one.runs);
  const more = ableOf(one.runs).length - ableOf(other.runs).length;
  return (less || more || one.strip.width - other.strip.width) > 0;
}

const fewestUnfit = (runs: readonly Run[]): number => Math.min(...runs.map(({ unfit }) => unfit.length));

/** The ways in which least is too broad. */
export const ableOf = (runs: readonly Run[]): Run[] => {
  const fewest = fewestUnfit(runs);
  return runs.filter(({ unfit }) => unfit.length === fewest);
};

const HAIR = 1e-6;

/** One way of giving the pieces to the packing, from a lay by hand where there is one. */
export function runOf(
  variant: Variant,
  { fabric, wanted }: ClothJob,
  way: LayKind,
  { strip, phases }: Pick<Folding, 'strip' | 'phases'>,
  start: readonly HandPlaced[] | null = null,
): Run {
  const lots = lotsOf(variant.lying, fabric, phases).map((lot) => relaxed(lot, strip));
  const fits = (lot: Lot): boolean => breadthOf(lot) <= strip.width + HAIR;
  const lying = lots.filter(fits);
  const broad = lots.filter((lot) => !fits(lot)).flatMap(({ members }) => members);
  // What is too broad for the fold may find room on a single layer: of several skirts anything, of a pattern only what need not meet it.
  const mayPart =
    fabric.pattern?.match === true ? !broad.some(({ cutting }) => isPanelPiece(cutting)) : wanted.length > 1;
  const apart = way !== 'open' && lying.length > 0 && mayPart ? broad : [];
  return {
    lots: lying,
    variant: {
      ...variant,
      loose: [...variant.loose, ...apart.flatMap((each) => inSingleLayer(each, fabric))],
    },
    unfit: apart.length > 0 ? [] : broad.map(({ cutting }) => cutting),
    apart: wanted.length > 1 ? [...new Set(apart.map(({ wearer }) => wearer))] : [],
    start,
  };
}
