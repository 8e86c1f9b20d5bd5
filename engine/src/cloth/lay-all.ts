import type { Notice } from '../figure/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { caution, figure, problem } from './codes.ts';
import { flawsBeyond } from './flaws.ts';
import { patternKind, readFabric, type Fabric } from './fabric.ts';
import { leastOf } from './hand/least.ts';
import { laysOn } from './hand/laysOn.ts';
import { offLength } from './hand/offLength.ts';
import { tooShort } from './hand/tooShort.ts';
import type { ClothJob } from './job/found.ts';
import { aboutPrint } from './job/print.ts';
import { lengthsOf } from './job/wanted.ts';
import type { Lay, LayInput } from './lays/lay.ts';
import { laysOf } from './lays/laysOf.ts';
import type { ClothOptions, LayKind } from './options.ts';
import { mm } from '../units/index.ts';
import type { ContrastName, ContrastOptions } from './contrast.ts';
import type { CutPiece } from './cutPieces.ts';
import { ownPieces, piecesOf } from './piecesOf.ts';

/** Every way to lay the pieces of one cloth, compared, and the one this plan goes on with. */
export interface ClothPlan {
  readonly fabric: Fabric;
  readonly lays: readonly Lay[];
  readonly chosen: Lay;
  readonly notices: readonly Notice[];
}

/**
 * Lays all that is cut from the skirt's own cloth in every way there is. Never throws: where nothing fits, the plan
 * says so and shows by how much.
 */
export const layAll = (
  skirt: Skirt,
  chosen: ClothOptions,
  contrast: readonly ContrastOptions[] = [],
): ClothPlan => layPieces({ ...ownPieces(skirt, contrast), fabric: readFabric(chosen) }, chosen);

/** Another cloth of the skirt: what is cut from it, and how it is laid. */
export interface ContrastPlan {
  /** Which of the other cloths, counted from 0. */
  readonly at: number;
  readonly pieces: readonly ContrastName[];
  readonly options: ClothOptions;
  readonly cloth: ClothPlan;
}

/** Lays what is cut from each of the skirt's other cloths; one that nothing is cut from is left out. */
export const layContrast = (skirt: Skirt, contrast: readonly ContrastOptions[]): ContrastPlan[] =>
  contrast.flatMap(({ pieces, cloth: options }, at) => {
    const cut = piecesOf(skirt, contrast, at);
    if (!cut) return [];
    return [{ at, pieces, options, cloth: layPieces({ ...cut, fabric: readFabric(options) }, options) }];
  });

/**
 * Lays what is cut from the lining's cloth, which changes in the wash as the skirt's does and is cut by the same shop;
 * null where nothing is.
 */
export function layLining(
  skirt: Skirt,
  chosen: ClothOptions,
  lay: ClothOptions['lay'] = 'auto',
): ClothPlan | null {
  const pieces = piecesOf(skirt, [], 'lining');
  const options = liningOptions(skirt, chosen);
  if (!pieces || !options) return null;
  const plan = layPieces({ ...pieces, fabric: readFabric(options) }, { ...options, lay });
  const tooNarrow = plan.notices.filter(({ code }) => code === 'cloth.noLayFits');
  // What is to be known of the cloth's wash was said of the skirt's own.
  return { ...plan, notices: tooNarrow.map(({ params }) => problem('cloth.liningTooNarrow', params)) };
}

/** The lining's cloth, as the skirt's own changes in the wash and is sold; null where there is none. */
export function liningOptions({ extras }: Skirt, chosen: ClothOptions): ClothOptions | null {
  const cloth = extras.liningCloth;
  if (!cloth) return null;
  const { washed, change, step, least, weight, colour } = chosen;
  return {
    name: cloth.name,
    width: cloth.width.value,
    selvage: cloth.selvage.value,
    washed,
    change,
    step,
    least,
    weight,
    colour,
    oneWay: false,
    lay: 'auto',
    between: mm(0),
    lengths: [],
    bolt: true,
  };
}

/** Told where another way is taken than the one that was asked for. */
export const notAsWished = ({ lay }: ClothOptions, { kind }: { readonly kind: LayKind }): Notice[] =>
  lay === 'auto' || kind === lay ? [] : [caution('cloth.layWished', { wished: lay, taken: kind })];

/** Whether a cloth has what a lay by hand knows nothing of: a pattern to meet, room to keep, other lengths than the one it is cut from. */
const asksForSearch = ({ lengths, bolt }: ClothOptions, fabric: Fabric, { from }: Lay): boolean =>
  patternKind(fabric) !== null || fabric.between.value > 0 || (!from && (lengths.length > 0 || !bolt));

function layPieces(input: LayInput, chosen: ClothOptions): ClothPlan {
  const { fabric } = input;
  const lengths = lengthsOf(chosen);
  const [first, ...others] = laysOf(input);
  const on = laysOn({ lengths, fabric }, [first, ...others], () => input);
  const cut = (lay: Lay): Lay => offLength(lay, { lengths, fabric }, on);
  const lays = [cut(first), ...others.map(cut)] as const;
  const best = choose(lays, chosen, fabric, input.marking === 'at the fold');
  // Where the way that was asked for is kept, what others would take is no help.
  const isKept = best.fits && best.kind === chosen.lay;
  const able = (at: number): Lay[] =>
    on(at).filter(({ fits, kind }) => fits && (!isKept || kind === best.kind));
  const notices: Notice[] = [
    ...fabric.notices,
    ...flawsBeyond(chosen),
    ...best.notices.filter(({ level }) => level === 'caution'),
    ...whyNot(best, able, chosen, { lengths, fabric }, largest(input)),
    ...(asksForSearch(chosen, fabric, best) ? [caution('cloth.laidByHand')] : []),
    ...notAsWished(chosen, best),
    ...aboutPrint(fabric, best.kind, best.fits && best.printOnItsSide),
  ];
  return { fabric, lays, chosen: best, notices };
}

/** What keeps the skirt from being cut: too little cloth, or too narrow; `able` are the lays that a length is wide enough for. */
function whyNot(
  best: Lay,
  able: (length: number) => readonly Lay[],
  { have, bolt }: ClothOptions,
  job: Pick<ClothJob, 'lengths' | 'fabric'>,
  panel: CutPiece,
): Notice[] {
  if (best.from) return [];
  if (best.fits && have !== undefined)
    return [
      problem('cloth.notEnough', { needed: best.clothBefore, have: figure.length(have, 'cloth.have') }),
    ];
  if (best.fits && bolt) return [];
  const there = bolt ? [] : job.lengths.flatMap((_, at) => able(at));
  const needed = leastOf(there, job.fabric) ?? (best.fits ? best : undefined);
  return needed
    ? [tooShort('', needed, job, (at) => able(at).length > 0)]
    : [problem('cloth.noLayFits', { ...sizeOf(panel), usable: job.fabric.usable })];
}

/**
 * The lay that was asked for where it fits; else, for panels marked at the fold, the double fold that every
 * maker can mark by hand; else the one that takes least. Where there is no bolt, what is at hand is to be long enough for it, if it
 * is for any; a one-way print is kept upright where that can be had; then a lay that no cloth at hand is long enough for is passed
 * over for one that some is.
 */
function choose(
  lays: readonly [Lay, ...Lay[]],
  chosen: ClothOptions,
  fabric: Fabric,
  foldFirst: boolean,
): Lay {
  const able = lays.filter(({ fits }) => fits);
  const asked = able.find(({ kind }) => kind === chosen.lay);
  if (asked) return asked;
  const there = chosen.bolt && chosen.have === undefined ? [] : able.filter(({ from }) => from !== null);
  const fitting = there.length > 0 ? there : able;
  const straight = fabric.oneWay ? fitting.filter(({ printOnItsSide }) => !printOnItsSide) : fitting;
  const upright = straight.length > 0 ? straight : fitting;
  const enough = upright.filter(({ from }) => from !== null);
  const candidates = enough.length > 0 ? enough : upright;
  const byHand = foldFirst ? candidates.find(({ kind }) => kind === 'double fold') : undefined;
  const least = candidates.reduce<Lay | undefined>(
    (best, lay) => (best && !isBetter(lay, best) ? best : lay),
    undefined,
  );
  return byHand ?? least ?? lays[0];
}

/** Below a millionth of a millimetre two lengths are one. */
const HAIR = 1e-6;

/** Less cloth; of as much, fewer lengths of it to lay out one after the other. */
function isBetter(lay: Lay, best: Lay): boolean {
  const less = best.clothBefore.value - lay.clothBefore.value;
  if (lay.more.length === best.more.length) return less > 0;
  return lay.more.length < best.more.length ? less > -HAIR : less > HAIR;
}

/** The panel that asks for the widest cloth. */
const largest = ({ mains }: LayInput): CutPiece =>
  mains.reduce((most, each) => (breadth(each) > breadth(most) ? each : most));
const breadth = ({ piece }: CutPiece): number => Math.min(piece.width.value, piece.depth.value);
const sizeOf = ({ piece: { width, depth } }: CutPiece) => ({ width, depth });
