import type { Notice } from '../figure/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { caution, figure, problem } from './codes.ts';
import { readFabric, type Fabric } from './fabric.ts';
import { crosswiseFold } from './lays/crosswiseFold.ts';
import { doubleFold } from './lays/doubleFold.ts';
import type { Lay } from './lays/lay.ts';
import { lengthwiseFold } from './lays/lengthwiseFold.ts';
import { open } from './lays/open.ts';
import type { ClothOptions } from './options.ts';
import { pieceOf } from './piece.ts';

/** Every way to lay the panels, compared, and the one this plan goes on with. */
export interface ClothPlan {
  readonly fabric: Fabric;
  readonly lays: readonly Lay[];
  readonly chosen: Lay;
  readonly notices: readonly Notice[];
}

/** Lays one skirt in every way there is. Never throws: where nothing fits, the plan says so and shows by how much. */
export function layAll(skirt: Skirt, chosen: ClothOptions): ClothPlan {
  const fabric = readFabric(chosen);
  const input = { panels: skirt.panels, piece: pieceOf(skirt.panels[0].shape), fabric };
  const lays: [Lay, ...Lay[]] = [doubleFold(input), lengthwiseFold(input), crosswiseFold(input), open(input)];
  const have = chosen.have === undefined ? null : figure.length(chosen.have, 'cloth.have');
  const best = choose(lays, chosen, fabric, skirt.marking === 'at the fold');
  const wished = chosen.lay !== 'auto' && best.kind !== chosen.lay;
  const notices: Notice[] = [
    ...fabric.notices,
    ...best.notices.filter(({ level }) => level === 'caution'),
    ...(best.fits
      ? []
      : [
          problem('cloth.noLayFits', {
            width: input.piece.width,
            depth: input.piece.depth,
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
    (best, lay) => (best && best.clothBefore.value <= lay.clothBefore.value ? best : lay),
    undefined,
  );
  return byHand ?? least ?? lays[0];
}
