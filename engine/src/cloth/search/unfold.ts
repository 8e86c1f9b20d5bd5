import { boundsOf, halfTurn, mirrorX, point, translate, type Path } from '../../geometry/index.ts';
import type { Copy, CutPiece } from '../cutPieces.ts';
import { single, type Cutting } from '../blocks.ts';
import type { Lay } from '../lays/lay.ts';
import type { LaidPiece, Table } from '../lays/table.ts';
import type { Fabric } from '../fabric.ts';
import type { Wanted } from '../job/found.ts';

/** One piece of an unfolded lay; x along the cloth, y across it from the inner edge of its selvage. */
export interface Opened {
  readonly cutting: Cutting;
  readonly outline: Path;
}

/** Every piece of a lay where it lies once the cloth is opened out: each by itself, none on a fold. */
export function unfold(lay: Lay, wanted: Wanted, fabric: Fabric): Opened[] {
  const { selvage, usable } = fabric;
  const owners = ownersIn(wanted);
  const { table, more } = lay;
  const first = table.pieces.flatMap((piece) => opened(piece, lay, fabric, owners(piece)));
  let strips = 0;
  const others = more.flatMap((each) => {
    const strip = strips;
    if (each.where === 'beside') strips++;
    const [dx, dy] =
      each.where === 'beside'
        ? [0, strip === 0 ? usable.value - stripOf(each, selvage.value) : 0]
        : [lay.tableCloth.value, -selvage.value];
    return each.pieces.flatMap((piece) =>
      owners(piece).map((cutting): Opened => ({ cutting, outline: translate(piece.outline, dx, dy) })),
    );
  });
  return [...first, ...others];
}

const stripOf = ({ across }: Table, selvage: number): number => across - selvage;

/** A piece of the folded table on each of its layers. */
function opened(piece: LaidPiece, lay: Lay, fabric: Fabric, cuttings: readonly Cutting[]): Opened[] {
  const { table, kind } = lay;
  const { selvage, usable, oneWay } = fabric;
  const [first, second] = cuttings;
  if (!first) return [];
  const level = translate(piece.outline, 0, -selvage.value);
  const { left, top, bottom, right } = boundsOf(level);
  if (kind === 'open') return [{ cutting: first, outline: level }];
  if (kind === 'double fold')
    // The waist lies on the selvage there; here it lies beside it.
    return cuttings.map((cutting, i) => {
      const whole = standingOf(cutting, 'across');
      return { cutting, outline: translate(whole, i * boundsOf(whole).width, 0) };
    });
  if (piece.onFold) {
    const whole = standingOf(first, 'along');
    return [
      { cutting: first, outline: translate(whole, left, usable.value / 2 - boundsOf(whole).height / 2) },
    ];
  }
  const upper: Opened = { cutting: first, outline: level };
  if (!second) return [upper];
  const folded = mirrorX(level, (left + right) / 2);
  const over =
    kind === 'lengthwise fold'
      ? // Mirrored up and down: left to right, and then half a turn.
        translate(
          halfTurn(folded, point((left + right) / 2, (top + bottom) / 2)),
          0,
          usable.value - bottom - top,
        )
      : oneWay && !lay.printOnItsSide
        ? translate(
            halfTurn(folded, point((left + right) / 2, (top + bottom) / 2)),
            table.along,
            usable.value - bottom - top,
          )
        : translate(folded, 2 * table.along - right - left, 0);
  return [upper, { cutting: second, outline: over }];
}

const standingOf = (cutting: Cutting, stance: 'along' | 'across'): Path =>
  single(cutting, stance).pieces[0]?.outline ?? [];

/** The pieces that an outline cuts, each by itself: read off its labels. */
function ownersIn({ mains, parts }: Wanted): (piece: LaidPiece) => Cutting[] {
  const known = new Map<object, Cutting>();
  const list = (cut: CutPiece, copy: Copy): void => {
    for (const label of [...copy.panels, ...copy.parts]) known.set(label, { cut, copies: [copy] });
  };
  for (const cut of [...mains, ...parts]) for (const copy of cut.copies) list(cut, copy);
  return ({ panels, parts: small }) => [...panels, ...small].flatMap((label) => known.get(label) ?? []);
}
