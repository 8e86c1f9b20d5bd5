import type { Figure, Notice } from '../../figure/index.ts';
import { boundsOf, translate } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { onFold, rows, type Cutting } from '../blocks.ts';
import { figure, problem } from '../codes.ts';
import type { CutPiece } from '../cutPieces.ts';
import type { Fabric } from '../fabric.ts';
import type { Rect } from '../free.ts';
import { place, type Choice } from '../place.ts';
import type { LayInput } from './lay.ts';
import { oneByOne, pairAll } from './pairs.ts';
import type { LaidPiece } from './table.ts';
import { alone, deepestFirst } from './ways.ts';

/** What is laid on the folded cloth of the panels, and what of them can't be. */
export interface Start {
  readonly pieces: readonly LaidPiece[];
  readonly boxes: readonly Rect[];
  readonly length: Figure<Mm>;
  readonly loose: readonly Cutting[];
  readonly notices: readonly Notice[];
}

export const roomOn = ({ selvage }: Fabric, usable: Figure<Mm>): Rect => ({
  x: 0,
  y: selvage.value,
  along: Infinity,
  across: usable.value,
});

/** On the fold, or two of a shape through both layers: side by side, or head to tail. */
type Way = 'fold' | 'pairs' | 'pairs head to tail';

/** Panels that are chalked from their fold have to lie on one. */
export function waysOf({ marking, fabric }: LayInput): readonly Way[] {
  if (marking !== 'by piece' && marking !== 'swung') return ['fold'];
  return fabric.oneWay ? ['fold', 'pairs'] : ['fold', 'pairs', 'pairs head to tail'];
}

interface Listed {
  readonly cut: CutPiece;
  readonly choice: Choice;
}

/** Panels of any shapes. Those with a left and a right lie in pairs in any case. */
export function packed(input: LayInput, usable: Figure<Mm>, way: Way): Start {
  const { mains, fabric } = input;
  const inPairs = mains.filter(({ symmetric }) => !symmetric || way !== 'fold');
  const { pairs, odd } = pairAll(inPairs);
  const loose = odd.filter(({ cut }) => !cut.symmetric);
  const folded = [
    ...oneByOne(mains.filter((cut) => !inPairs.includes(cut))),
    ...odd.filter(({ cut }) => cut.symmetric),
  ];
  const [first] = pairs;
  const paired: Listed[] =
    first && way === 'pairs head to tail'
      ? rows(deepestFirst(pairs), 'along', usable.value).map((block) => ({ cut: first.cut, choice: [block] }))
      : alone(pairs, input, 'along').map((choice, i) => ({ cut: pairs[i]?.cut ?? mains[0], choice }));
  const listed = [...paired, ...folded.map((each): Listed => ({ cut: each.cut, choice: [onFold(each)] }))];
  const sorted = listed.toSorted(
    (a, b) =>
      b.choice[0].along - a.choice[0].along || Number(b.choice[0].onFold) - Number(a.choice[0].onFold),
  );
  const laying = place(
    sorted.map(({ choice }) => choice),
    roomOn(fabric, usable),
    [],
    true,
  );
  const wide = laying.left.flatMap((at) => sorted[at] ?? []);
  const notices = [
    ...(loose.length > 0 ? [problem('cloth.notOnFold', { panels: loose.length })] : []),
    ...wide.slice(0, 1).map(({ cut }) => problem('cloth.panelTooWide', { width: cut.piece.width, usable })),
  ];
  const over = overhanging(
    wide.map(({ choice }) => choice[0].pieces),
    laying.end,
    mm(usable.value + fabric.selvage.value),
  );
  return {
    pieces: [...laying.pieces, ...over.pieces],
    boxes: laying.boxes,
    length: figure.length(mm(Math.max(1, over.end)), 'cloth.asTheyLie'),
    loose,
    notices,
  };
}

/** Drawn all the same where the cloth is too narrow, so that the maker sees by how much. */
function overhanging(
  wide: readonly (readonly LaidPiece[])[],
  from: number,
  fold: Mm,
): { readonly pieces: readonly LaidPiece[]; readonly end: number } {
  let end = from;
  const pieces = wide.flatMap((each) =>
    each.map((piece) => {
      const { width, bottom } = boundsOf(piece.outline);
      const laid = { ...piece, outline: translate(piece.outline, end, fold - bottom) };
      end += width;
      return laid;
    }),
  );
  return { pieces, end };
}
