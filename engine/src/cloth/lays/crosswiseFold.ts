import type { Figure, Notice } from '../../figure/index.ts';
import { translate } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { rows, type Cutting } from '../blocks.ts';
import { caution, figure, problem } from '../codes.ts';
import { labelsOf, type CutPiece } from '../cutPieces.ts';
import type { Rect } from '../free.ts';
import { placed } from '../piece.ts';
import { place, type Choice, type Laying } from '../place.ts';
import { finishLay, fitsIn, onTheirFold, shorter, withMore, type Lay, type LayInput } from './lay.ts';
import { choiceOf, longestFirst, roomOf } from './loose.ts';
import { upright } from './alikePanels.ts';
import { oneByOne, pairAll } from './pairs.ts';
import type { LaidPiece } from './table.ts';
import { alone, deepestFirst, mayNest } from './ways.ts';

/** The panels on the folded cloth, and what of them is not laid there. */
interface Start {
  readonly pieces: readonly LaidPiece[];
  readonly boxes: readonly Rect[];
  /** Unfolded. */
  readonly length: Figure<Mm>;
  readonly used: Mm | null;
  readonly sideways: boolean;
  readonly headToTail: boolean;
  readonly loose: readonly Cutting[];
  readonly notices: readonly Notice[];
}

/**
 * Folded across once: pieces are cut in pairs through two layers, panels with their length along the bolt or, where
 * that is shorter, across it. Along the bolt the fold turns a one-way print upside down on one layer: such
 * cloth is cut along the fold and the upper layer turned. What makes no pair is cut in a single layer.
 */
export function crosswiseFold(input: LayInput): Lay {
  const simple = onTheirFold(input);
  const [first, ...others] = simple ? [abreast(simple, input)] : packedWays(input);
  return shorter([...lays(first, input), ...others.flatMap((start) => lays(start, input))]);
}

/** The parts on the folded cloth, or in a single layer besides. */
function lays(start: Start, input: LayInput): [Lay, ...Lay[]] {
  const half = start.length.value / 2;
  const apart = finish(start, { pieces: [], boxes: [], end: half, left: [] }, oneByOne(input.parts), input);
  const { pairs, odd } = pairAll(input.parts);
  if (pairs.length === 0) return [apart];
  const listed = longestFirst(pairs);
  const laying = place(listed.map(choiceOf), roomOf(input.fabric), start.boxes);
  const left = laying.left.flatMap((at) => listed[at] ?? []);
  const loose = [
    ...odd,
    ...left.flatMap(({ cut, copies }) => copies.map((copy) => ({ cut, copies: [copy] }))),
  ];
  return [apart, finish(start, laying, loose, input)];
}

/** Alike panels: pairs one below the other, or side by side across the bolt. An odd one leaves a layer over. */
function abreast({ piece, copies }: CutPiece, { fabric }: LayInput): Start {
  const { usable } = fabric;
  const pairs = figure.count(Math.ceil(copies.length / 2), 'cloth.pairs');
  const alongFits = fitsIn(piece.width.value, usable.value);
  const acrossFits = fitsIn(piece.depth.value, usable.value);
  const sideways =
    acrossFits && (!alongFits || piece.width.value < piece.depth.value) && !(fabric.oneWay && alongFits);
  const step = sideways ? piece.width : piece.depth;
  const length = figure.length(
    mm(2 * pairs.value * step.value),
    sideways ? 'cloth.pairsAbreast' : 'cloth.pairsStacked',
    {
      layers: figure.count(2, 'cloth.layers'),
      pairs,
      step,
    },
  );
  const notices: Notice[] = [];
  if (!alongFits && !acrossFits) notices.push(problem('cloth.panelTooWide', { width: piece.width, usable }));
  if (copies.length % 2 === 1) notices.push(caution('cloth.oddPanels', { panels: copies.length }));
  const used = sideways ? piece.depth.value : piece.width.value;
  const pieces = Array.from({ length: pairs.value }, (_, i) => ({
    outline: sideways
      ? placed(piece, i * step.value, fabric.selvage.value)
      : upright(piece, i * step.value, fabric.selvage.value),
    ...labelsOf(copies.slice(2 * i, 2 * i + 2)),
    onFold: false,
    turned: false,
  }));
  return {
    pieces,
    boxes: pieces.map((_, i) => ({
      x: i * step.value,
      y: fabric.selvage.value,
      along: step.value,
      across: used,
    })),
    length,
    used,
    sideways,
    headToTail: false,
    loose: [],
    notices,
  };
}

/** Panels of any shapes, in pairs: each by itself or in rows head to tail, along the bolt or across it. */
function packedWays(input: LayInput): [Start, ...Start[]] {
  const { pairs, odd } = pairAll(input.mains);
  const { fabric } = input;
  const sorted = deepestFirst(pairs);
  const room = fabric.usable.value;
  const starts = (sideways: boolean): Start[] => {
    const stance = sideways ? 'across' : 'along';
    const ways =
      !mayNest(input) || pairs.length < 2
        ? [alone(sorted, input, stance)]
        : [alone(sorted, input, stance), rows(sorted, stance, room).map((block): Choice => [block])];
    return ways.map((choices) => packed(choices, odd, input, sideways));
  };
  const straight = starts(false);
  const isFine = ({ notices }: Start): boolean => notices.length === 0;
  // Across the bolt a one-way print lies on its side: only where nothing else fits.
  const all = fabric.oneWay && straight.some(isFine) ? straight : [...straight, ...starts(true)];
  const [first = packed(alone(sorted, input, 'along'), odd, input, false), ...others] = all;
  return [first, ...others];
}

function packed(
  choices: readonly Choice[],
  odd: readonly Cutting[],
  { fabric, mains }: LayInput,
  sideways: boolean,
): Start {
  const laying = place(choices, roomOf(fabric));
  const wide = laying.left.flatMap((at) => choices[at]?.[0] ?? []);
  let end = laying.end;
  const over = wide.flatMap((block) => {
    const from = end;
    end += block.along;
    return block.pieces.map((piece) => ({
      ...piece,
      outline: translate(piece.outline, from, fabric.selvage.value),
    }));
  });
  const [{ piece }] = mains;
  return {
    pieces: [...laying.pieces, ...over],
    boxes: laying.boxes,
    length: figure.length(mm(Math.max(1, 2 * end)), 'cloth.asTheyLieTwice'),
    used: null,
    sideways,
    headToTail: [...laying.pieces, ...over].some(({ turned }) => turned),
    loose: odd,
    notices: [
      ...(choices.length === 0 ? [problem('cloth.notOnFold', { panels: odd.length })] : []),
      ...(wide.length > 0
        ? [problem('cloth.panelTooWide', { width: piece.width, usable: fabric.usable })]
        : []),
    ],
  };
}

function finish(start: Start, parts: Laying, loose: readonly Cutting[], { fabric }: LayInput): Lay {
  const { usable, selvage, oneWay } = fabric;
  const clothAfter = withMore(start.length, 2 * parts.end - start.length.value);
  const lower = Math.max(
    0,
    ...[...start.boxes, ...parts.boxes].map(({ y, across }) => y + across - selvage.value),
  );
  const used = parts.boxes.length === 0 && start.used !== null ? start.used : mm(lower);
  return finishLay(
    {
      kind: 'crosswise fold',
      clothAfter,
      used,
      usable,
      printOnItsSide: start.sideways,
      headToTail: start.headToTail,
      table: {
        along: mm(clothAfter.value / 2),
        across: mm(usable.value + 2 * selvage.value),
        layers: 2,
        top: 'selvages',
        bottom: 'selvages',
        left: 'two ends',
        right: 'fold',
        pieces: [...start.pieces, ...parts.pieces],
      },
      loose: [...start.loose, ...loose],
      beside: { count: 1, along: clothAfter.value, across: Math.max(0, usable.value - lower) },
      notices: [...start.notices, ...(oneWay && !start.sideways ? [caution('cloth.oneWayCrosswise')] : [])],
    },
    fabric,
  );
}
