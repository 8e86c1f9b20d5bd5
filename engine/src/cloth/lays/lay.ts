import type { Figure, Notice } from '../../figure/index.ts';
import type { Path } from '../../geometry/index.ts';
import type { Panel } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { beforeWash, toBuy, type Fabric } from '../fabric.ts';
import type { LayKind } from '../options.ts';
import type { Piece } from '../piece.ts';

/** What runs along a side of the cloth as it lies on the table. */
export type TableEdge =
  'selvage' | 'selvages' | 'fold' | 'two folds' | 'fold and two ends' | 'two ends' | 'raw end';

/** A panel, or the half of one that lies against a fold, on the table. Bolt runs along x, y goes across. */
export interface LaidPiece {
  readonly outline: Path;
  /** Panels that this outline cuts: two where it is cut through two layers. */
  readonly panels: readonly Panel[];
  readonly onFold: boolean;
  readonly turned: boolean;
}

/** The cloth as it lies on the table, folded as this lay asks. */
export interface Table {
  readonly along: Mm;
  readonly across: Mm;
  readonly layers: 1 | 2 | 4;
  readonly top: TableEdge;
  readonly bottom: TableEdge;
  readonly left: TableEdge;
  readonly right: TableEdge;
  readonly pieces: readonly LaidPiece[];
}

/** One way to lay the panels of one skirt. */
export interface Lay {
  readonly kind: LayKind;
  readonly fits: boolean;
  /** Length of cloth after the wash and before it, and what the shop cuts. */
  readonly clothAfter: Figure<Mm>;
  readonly clothBefore: Figure<Mm>;
  readonly toBuy: Figure<Mm>;
  /** The rectangle left in one piece beside the panels, after the wash. */
  readonly left: { readonly across: Figure<Mm>; readonly along: Figure<Mm> };
  /** Whether the panels' length runs across the bolt, so that a print lies on its side. */
  readonly printOnItsSide: boolean;
  /** Whether panels lie head to tail. */
  readonly headToTail: boolean;
  readonly table: Table;
  readonly notices: readonly Notice[];
}

/** What every lay starts from. */
export interface LayInput {
  readonly panels: readonly Panel[];
  /** All panels of one skirt of these cuts are alike. */
  readonly piece: Piece;
  readonly fabric: Fabric;
}

export interface Laid {
  readonly kind: LayKind;
  readonly clothAfter: Figure<Mm>;
  /** Width that the panels take of the `usable` width. */
  readonly used: Mm;
  readonly usable: Figure<Mm>;
  readonly printOnItsSide: boolean;
  readonly headToTail?: boolean;
  readonly table: Table;
  /** A lay with a problem among these does not fit. */
  readonly notices: readonly Notice[];
}

/** What binary fractions lose is no want of cloth: a width cut from selvage to selvage fits between them. */
const HAIR = 1e-6;
export const fitsIn = (size: Mm, room: Mm): boolean => size <= room + HAIR;

/** Completes a lay with what it takes before the wash, at the shop, and leaves. */
export function finishLay(laid: Laid, fabric: Fabric): Lay {
  const { clothAfter, usable, notices } = laid;
  const clothBefore = beforeWash(clothAfter, fabric.lengthwise);
  return {
    kind: laid.kind,
    fits: notices.every(({ level }) => level !== 'problem'),
    clothAfter,
    clothBefore,
    toBuy: toBuy(clothBefore, fabric),
    left: {
      across: leftAcross(usable, laid.used),
      along: figure.length(clothAfter.value, 'cloth.leftLength'),
    },
    printOnItsSide: laid.printOnItsSide,
    headToTail: laid.headToTail ?? false,
    table: laid.table,
    notices,
  };
}

function leftAcross(usable: Figure<Mm>, taken: Mm): Figure<Mm> {
  if (usable.value <= taken) return figure.length(mm(0), 'cloth.nothingLeft');
  const used = figure.length(taken, 'cloth.across');
  return figure.length(mm(usable.value - taken), 'cloth.leftWidth', { usable, used });
}
