import { rotate, halfTurn, mirrorX, point, translate, type Path } from '../../geometry/index.ts';
import type { Placement } from '../../packing/index.ts';
import { radians } from '../../units/index.ts';
import { onFold, single, type Cutting, type Stance } from '../blocks.ts';
import { rightHalf } from '../lays/half.ts';

/** Where a piece's own fold lies, if it is cut on one: along the folded edge, or at the strip's beginning. */
export type OnFold = 'no' | 'along' | 'start';

/** One outline that is to be laid: a piece, two of them through two layers, or half of one on a fold. */
export interface Lying {
  readonly wearer: string;
  readonly cutting: Cutting;
  readonly stance: Stance;
  readonly onFold: OnFold;
}

/** Its outline before it is turned or moved; the corner of its box is at the origin. */
export function standing({ cutting, stance, onFold: fold }: Lying): Path {
  if (fold === 'along') return onFold(cutting).pieces[0]?.outline ?? [];
  if (fold === 'start') {
    const { piece } = cutting.cut;
    return translate(rightHalf(piece.outline), 0, -piece.top);
  }
  return single(cutting, stance).pieces[0]?.outline ?? [];
}

/** An outline where a placement has it. */
export function placedAt(outline: Path, { rotation, mirrored, x, y }: Omit<Placement, 'item'>): Path {
  const drawn = mirrored ? mirrorX(outline) : outline;
  const turned =
    rotation === 0
      ? drawn
      : rotation === 180
        ? halfTurn(drawn, point(0, 0))
        : rotate(drawn, radians((rotation * Math.PI) / 180));
  return translate(turned, x, y);
}

/** What a piece may be turned by on the cloth, from the stance it has. */
export function turnsOf(
  { cutting: { cut, copies }, onFold: fold }: Lying,
  oneWay: boolean,
): { readonly rotations: readonly number[]; readonly mirror: boolean } {
  // The half of a symmetric piece that lies on a fold is turned head to tail by being mirrored.
  if (fold === 'along') return { rotations: [0], mirror: !oneWay };
  if (fold === 'start') return { rotations: [0], mirror: false };
  // Of two through two layers either may be uppermost, of four through four too.
  const mirror = !oneWay && !cut.symmetric && copies.length > 1;
  const isFree = cut.grain === 'either';
  if (oneWay) return { rotations: isFree ? [0, 90] : [0], mirror };
  return { rotations: isFree || cut.swing > 0 ? [0, 90, 180, 270] : [0, 180], mirror };
}
