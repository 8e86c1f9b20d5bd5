import { boundsOf, rotate, translate } from '../../geometry/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { onFold, rows, type Cutting } from '../blocks.ts';
import { figure, problem } from '../codes.ts';
import { labelsOf, type CutPiece } from '../cutPieces.ts';
import type { Fabric } from '../fabric.ts';
import type { Rect } from '../free.ts';
import { place, type Choice, type Laying } from '../place.ts';
import { rightHalf } from './half.ts';
import {
  finishLay,
  fitsIn,
  onTheirFold,
  shorter,
  withMore,
  type LaidPiece,
  type Lay,
  type LayInput,
} from './lay.ts';
import { choiceOf, longestFirst } from './loose.ts';
import { alone, deepestFirst } from './open.ts';
import { oneByOne, pairAll } from './pairs.ts';

const QUARTER_TURN = radians(-Math.PI / 2);

/** What is laid on the folded cloth of the panels, and what of them can't be. */
interface Start {
  readonly pieces: readonly LaidPiece[];
  readonly boxes: readonly Rect[];
  readonly length: Figure<Mm>;
  readonly loose: readonly Cutting[];
  readonly notices: readonly Notice[];
}

/**
 * Folded selvage to selvage. Panels lie with their centre on the fold, or, where they are narrow or have a left and
 * a right, in pairs through both layers; other pieces follow them on the fold or in a single layer.
 */
export function lengthwiseFold(input: LayInput): Lay {
  const usable = figure.length(mm(input.fabric.usable.value / 2), 'cloth.foldedWidth', {
    usable: input.fabric.usable,
  });
  const simple = onTheirFold(input);
  const starts = simple
    ? [stacked(simple, input, usable)]
    : waysOf(input).map((way) => packed(input, usable, way));
  const [first, ...others] = starts.flatMap((start) => lays(start, input, usable));
  return first ? shorter([first, ...others]) : lays(packed(input, usable, 'fold'), input, usable)[0];
}

/** The parts on the folded cloth, or in a single layer besides. */
function lays(start: Start, input: LayInput, usable: Figure<Mm>): [Lay, ...Lay[]] {
  const { parts } = input;
  const apart = finish(
    start,
    { pieces: [], boxes: [], end: start.length.value, left: [] },
    oneByOne(parts),
    input,
    usable,
  );
  if (parts.length === 0) return [apart];
  const { pairs, odd } = pairAll(parts);
  const mayFold = ({ cut }: Cutting): boolean => cut.symmetric && cut.grain !== 'across';
  const folded = odd.filter(mayFold);
  const listed = longestFirst([...pairs, ...folded]);
  const laying = place(
    listed.map((each): Choice => (folded.includes(each) ? [onFold(each)] : choiceOf(each))),
    roomOn(input.fabric, usable),
    start.boxes,
    true,
  );
  const left = laying.left.flatMap((at) => listed[at] ?? []);
  const loose = [
    ...odd.filter((each) => !mayFold(each)),
    ...left.flatMap(({ cut, copies }) => copies.map((copy) => ({ cut, copies: [copy] }))),
  ];
  return [apart, finish(start, laying, loose, input, usable)];
}

const roomOn = ({ selvage }: Fabric, usable: Figure<Mm>): Rect => ({
  x: 0,
  y: selvage.value,
  along: Infinity,
  across: usable.value,
});

/** Panels that are chalked from their fold: one below the other. */
function stacked({ piece, copies }: CutPiece, { fabric }: LayInput, usable: Figure<Mm>): Start {
  const length = figure.length(mm(copies.length * piece.depth.value), 'cloth.stacked', {
    panels: figure.count(copies.length, 'cloth.panels'),
    depth: piece.depth,
  });
  // The fold lies at the bottom of the table; a panel's waist points back along the bolt.
  const outline = rotate(rightHalf(piece.outline), QUARTER_TURN);
  const across = mm(usable.value + fabric.selvage.value);
  const pieces = copies.map((copy, i) => ({
    outline: translate(outline, i * piece.depth.value - piece.top, across),
    ...labelsOf([copy]),
    onFold: true,
    turned: false,
  }));
  const half = mm(piece.width.value / 2);
  return {
    pieces,
    boxes: pieces.map((_, i) => ({
      x: i * piece.depth.value,
      y: across - half,
      along: piece.depth.value,
      across: half,
    })),
    length,
    loose: [],
    notices: fitsIn(half, usable.value)
      ? []
      : [problem('cloth.panelTooWide', { width: piece.width, usable: fabric.usable })],
  };
}

/** On the fold, or two of a shape through both layers: side by side, or head to tail. */
type Way = 'fold' | 'pairs' | 'pairs head to tail';

/** Panels that are chalked from their fold have to lie on one. */
function waysOf({ marking, fabric }: LayInput): readonly Way[] {
  if (marking !== 'by piece' && marking !== 'swung') return ['fold'];
  return fabric.oneWay ? ['fold', 'pairs'] : ['fold', 'pairs', 'pairs head to tail'];
}

interface Listed {
  readonly cut: CutPiece;
  readonly choice: Choice;
}

/** Panels of any shapes. Those with a left and a right lie in pairs in any case. */
function packed(input: LayInput, usable: Figure<Mm>, way: Way): Start {
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
    ...wide
      .slice(0, 1)
      .map(({ cut }) => problem('cloth.panelTooWide', { width: cut.piece.width, usable: fabric.usable })),
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

function finish(
  start: Start,
  parts: Laying,
  loose: readonly Cutting[],
  { fabric }: LayInput,
  usable: Figure<Mm>,
): Lay {
  const clothAfter = withMore(start.length, parts.end - start.length.value);
  const upper = Math.min(
    ...[...start.boxes, ...parts.boxes].map(({ y }) => y),
    fabric.selvage.value + usable.value,
  );
  const beside = Math.max(0, upper - fabric.selvage.value);
  const pieces = [...start.pieces, ...parts.pieces];
  return finishLay(
    {
      kind: 'lengthwise fold',
      clothAfter,
      used: mm(usable.value - beside),
      usable,
      printOnItsSide: false,
      table: {
        along: clothAfter.value,
        across: mm(usable.value + fabric.selvage.value),
        layers: 2,
        top: 'selvages',
        bottom: 'fold',
        left: 'raw end',
        right: 'raw end',
        pieces,
      },
      loose: [...start.loose, ...loose],
      beside: { count: 2, along: clothAfter.value, across: beside },
      notices: start.notices,
    },
    fabric,
  );
}
