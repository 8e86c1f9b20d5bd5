import type { Figure, Notice } from '../../figure/index.ts';
import type { Marking } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Cutting } from '../blocks.ts';
import { figure, problem } from '../codes.ts';
import type { CutPiece } from '../cutPieces.ts';
import { beforeWash, boughtOff, type Fabric } from '../fabric.ts';
import type { LayKind } from '../options.ts';
import { layLoose, type MoreTable, type Strips } from './loose.ts';
import type { Table } from './table.ts';

/** One way to lay all pieces of one skirt. */
export interface Lay {
  readonly kind: LayKind;
  readonly fits: boolean;
  /** Length of cloth, unfolded, that lies on the first table: what is folded. */
  readonly tableCloth: Figure<Mm>;
  /** Length of cloth after the wash and before it, and what the shop cuts. */
  readonly clothAfter: Figure<Mm>;
  readonly clothBefore: Figure<Mm>;
  readonly toBuy: Figure<Mm>;
  /** The length at hand that all of it is cut from; null where there is none of that size. */
  readonly from: { readonly name: string; readonly length: Mm; readonly washed: boolean } | null;
  /** The rectangle left in one piece beside the panels, after the wash. */
  readonly left: { readonly across: Figure<Mm>; readonly along: Figure<Mm> };
  /** Whether the panels' length runs across the bolt, so that a print lies on its side. */
  readonly printOnItsSide: boolean;
  /** Whether panels lie head to tail. */
  readonly headToTail: boolean;
  readonly table: Table;
  /** Cloth that is laid besides, in a single layer: beside the panels once they are cut, and beyond them. */
  readonly more: readonly MoreTable[];
  readonly notices: readonly Notice[];
}

/** What every lay starts from. */
export interface LayInput {
  /** The panels by their shapes, never none. */
  readonly mains: readonly [CutPiece, ...CutPiece[]];
  readonly parts: readonly CutPiece[];
  readonly marking: Marking;
  readonly fabric: Fabric;
}

/** Panels that are all alike, none of them the mirror image of the others. */
export function alike({ mains }: LayInput): CutPiece | null {
  const [first, ...others] = mains;
  return others.length === 0 && first.copies.every(({ mirrored }) => !mirrored) ? first : null;
}

/** Alike panels that are chalked at their centre fold, or torn from the whole width: each lies with its centre on a fold. */
export const onTheirFold = (input: LayInput): CutPiece | null =>
  (input.marking === 'at the fold' || input.marking === 'straight widths') && input.mains[0].symmetric
    ? alike(input)
    : null;

export const panelCount = ({ mains }: LayInput): number =>
  mains.reduce((sum, { copies }) => sum + copies.length, 0);

export interface Laid {
  readonly kind: LayKind;
  /** Length of cloth on the table, unfolded. */
  readonly clothAfter: Figure<Mm>;
  /** Width that the panels take of the `usable` width. */
  readonly used: Mm;
  readonly usable: Figure<Mm>;
  readonly printOnItsSide: boolean;
  readonly headToTail?: boolean;
  readonly table: Table;
  /** Pieces that have no place on the table, and the cloth that stays free beside what has. */
  readonly loose: readonly Cutting[];
  readonly beside: Strips;
  /** A lay with a problem among these does not fit. */
  readonly notices: readonly Notice[];
}

/** What binary fractions lose is no want of cloth: a width cut from selvage to selvage fits between them. */
const HAIR = 1e-6;
export const fitsIn = (size: Mm, room: Mm): boolean => size <= room + HAIR;

/** Completes a lay: its loose pieces, what it takes before the wash and at the shop, and what it leaves. */
export function finishLay(laid: Laid, fabric: Fabric): Lay {
  const { usable } = laid;
  const { more, length, used, unfit } = layLoose(laid.loose, laid.beside, fabric);
  const notices = [
    ...laid.notices,
    ...unfit.map(({ cut: { piece } }) =>
      problem('cloth.pieceTooLarge', { width: piece.width, depth: piece.depth, usable: fabric.usable }),
    ),
  ];
  const clothAfter = withMore(laid.clothAfter, length);
  const clothBefore = beforeWash(clothAfter, fabric.lengthwise);
  return {
    kind: laid.kind,
    fits: notices.every(({ level }) => level !== 'problem'),
    tableCloth: laid.clothAfter,
    clothAfter,
    clothBefore,
    toBuy: boughtOff(clothAfter, clothBefore, fabric),
    from: null,
    left: {
      across: leftAcross(usable, mm(laid.used + used)),
      along: figure.length(laid.clothAfter.value, 'cloth.leftLength'),
    },
    printOnItsSide: laid.printOnItsSide,
    headToTail: laid.headToTail ?? false,
    table: laid.table,
    more,
    notices,
  };
}

/** Length of cloth for panels, and what other pieces add to it. */
export function withMore(panels: Figure<Mm>, more: number): Figure<Mm> {
  if (more <= HAIR) return panels;
  const others = figure.length(mm(more), 'cloth.otherPieces');
  return figure.length(mm(panels.value + more), 'cloth.withOthers', { panels, others });
}

/** The lay that takes less; the first of two that take the same. A lay that fits comes before one that does not. */
export const shorter = (lays: readonly [Lay, ...Lay[]]): Lay =>
  lays.reduce((best, lay) => {
    if (lay.fits !== best.fits) return lay.fits ? lay : best;
    return lay.clothAfter.value < best.clothAfter.value - HAIR ? lay : best;
  });

function leftAcross(usable: Figure<Mm>, taken: Mm): Figure<Mm> {
  if (usable.value <= taken) return figure.length(mm(0), 'cloth.nothingLeft');
  const used = figure.length(taken, 'cloth.across');
  return figure.length(mm(usable.value - taken), 'cloth.leftWidth', { usable, used });
}
