import type { Notice } from '../figure/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { caution, figure, problem } from './codes.ts';
import { readFabric, type Fabric } from './fabric.ts';
import { crosswiseFold } from './lays/crosswiseFold.ts';
import { doubleFold } from './lays/doubleFold.ts';
import type { Lay, LayInput } from './lays/lay.ts';
import { lengthwiseFold } from './lays/lengthwiseFold.ts';
import { open } from './lays/open.ts';
import type { ClothOptions } from './options.ts';
import { panelPieces, partPieces, type CutPiece } from './cutPieces.ts';

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
export function layAll(skirt: Skirt, chosen: ClothOptions): ClothPlan {
  const fabric = readFabric(chosen);
  const [first, ...others] = panelPieces(skirt.panels, skirt.marking === 'swung');
  const parts = partPieces(skirt.parts, 'skirt');
  return layPieces({ mains: [first, ...others], parts, marking: skirt.marking, fabric }, chosen);
}

/**
 * Lays what is cut from the lining's cloth, which changes in the wash as the skirt's does and is cut by the same shop;
 * null where nothing is.
 */
export function layLining(skirt: Skirt, chosen: ClothOptions): ClothPlan | null {
  const [first, ...others] = partPieces(skirt.parts, 'lining');
  const cloth = skirt.extras.liningCloth;
  if (!first || !cloth) return null;
  const { washed, change, step, least, weight, colour } = chosen;
  const options: ClothOptions = {
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
  };
  const fabric = readFabric(options);
  const plan = layPieces({ mains: [first, ...others], parts: [], marking: 'by piece', fabric }, options);
  const tooNarrow = plan.notices.filter(({ code }) => code === 'cloth.noLayFits');
  // What is to be known of the cloth's wash was said of the skirt's own.
  return { ...plan, notices: tooNarrow.map(({ params }) => problem('cloth.liningTooNarrow', params)) };
}

function layPieces(input: LayInput, chosen: ClothOptions): ClothPlan {
  const { fabric } = input;
  const lays: [Lay, ...Lay[]] = [doubleFold(input), lengthwiseFold(input), crosswiseFold(input), open(input)];
  const have = chosen.have === undefined ? null : figure.length(chosen.have, 'cloth.have');
  const best = choose(lays, chosen, fabric, input.marking === 'at the fold');
  const wished = chosen.lay !== 'auto' && best.kind !== chosen.lay;
  const notices: Notice[] = [
    ...fabric.notices,
    ...best.notices.filter(({ level }) => level === 'caution'),
    ...(best.fits
      ? []
      : [
          problem('cloth.noLayFits', {
            ...sizeOf(largest(input)),
            usable: fabric.usable,
          }),
        ]),
    ...(wished ? [caution('cloth.layWished', { wished: chosen.lay, taken: best.kind })] : []),
    ...(fabric.oneWay && best.printOnItsSide ? [caution('cloth.printOnItsSide', { lay: best.kind })] : []),
    ...(have && best.fits && best.clothBefore.value > have.value
      ? [problem('cloth.notEnough', { needed: best.clothBefore, have })]
      : []),
  ];
  return { fabric, lays, chosen: best, notices };
}

/**
 * The lay that was asked for where it fits; else, for panels marked at the fold, the double fold that every
 * maker can mark by hand; else the one that takes least. A one-way print is kept upright where that can be had;
 * then a lay that the cloth at hand is too short for is passed over for one that it is not.
 */
function choose(
  lays: readonly [Lay, ...Lay[]],
  chosen: ClothOptions,
  fabric: Fabric,
  foldFirst: boolean,
): Lay {
  const fitting = lays.filter(({ fits }) => fits);
  const asked = fitting.find(({ kind }) => kind === chosen.lay);
  if (asked) return asked;
  const straight = fabric.oneWay ? fitting.filter(({ printOnItsSide }) => !printOnItsSide) : fitting;
  const upright = straight.length > 0 ? straight : fitting;
  const enough = upright.filter(({ clothBefore }) => clothBefore.value <= (chosen.have ?? Infinity));
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
