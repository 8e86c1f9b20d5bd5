import type { Figure } from '../../figure/index.ts';
import { rotate, translate } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { onFold, type Cutting } from '../blocks.ts';
import { figure, problem } from '../codes.ts';
import { labelsOf, type CutPiece } from '../cutPieces.ts';
import { place, type Choice, type Laying } from '../place.ts';
import { packed, roomOn, waysOf, type Start } from './foldedPanels.ts';
import { rightHalf } from './half.ts';
import { finishLay, fitsIn, onTheirFold, shorter, withMore, type Lay, type LayInput } from './lay.ts';
import { choiceOf, longestFirst } from './loose.ts';
import { oneByOne, pairAll } from './pairs.ts';

const QUARTER_TURN = radians(-Math.PI / 2);

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
