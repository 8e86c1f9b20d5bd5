import type { Notice } from '../../figure/index.ts';
import { translate } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { rows, single, stancesOf, type Block } from '../blocks.ts';
import { figure, problem } from '../codes.ts';
import { place, type Choice } from '../place.ts';
import { acrossBolt, alongBolt, type Arrangement } from './alikePanels.ts';
import { alike, finishLay, withMore, type Lay, type LayInput } from './lay.ts';
import { choiceOf, longestFirst, NO_STRIPS, roomOf } from './loose.ts';
import { oneByOne } from './pairs.ts';
import { alone, deepestFirst, mayNest } from './ways.ts';

/**
 * Opened out in a single layer: of the plain arrangements (side by side or head to tail, along the bolt or
 * across it) the one that takes the least cloth, other pieces filling what the panels leave. Constructed, not searched.
 */
export function open(input: LayInput): Lay {
  const { fabric, mains } = input;
  const { usable, oneWay } = fabric;
  const candidates = [
    ...arrangements(input, false, !oneWay),
    // Across the bolt a one-way print lies on its side: only where nothing else fits.
    ...arrangements(input, true, !oneWay),
  ].map((each) => withParts(each, input));
  const preferred = oneWay ? candidates.filter(({ sideways }) => !sideways) : candidates;
  const best = shortest(preferred) ?? shortest(candidates);
  const chosen = best ?? withParts(unfitting(input), input);
  const [{ piece }] = mains;
  const notices: Notice[] = [
    ...(best ? [] : [problem('cloth.panelTooWide', { width: piece.width, usable })]),
    ...chosen.unfit.map(({ cut }) =>
      problem('cloth.pieceTooLarge', { width: cut.piece.width, depth: cut.piece.depth, usable }),
    ),
  ];
  return finishLay(
    {
      kind: 'open',
      clothAfter: chosen.length,
      used: chosen.used,
      usable,
      printOnItsSide: chosen.sideways,
      headToTail: chosen.headToTail,
      table: {
        along: chosen.length.value,
        across: mm(usable.value + 2 * fabric.selvage.value),
        layers: 1,
        top: 'selvage',
        bottom: 'selvage',
        left: 'raw end',
        right: 'raw end',
        pieces: chosen.pieces,
      },
      loose: [],
      beside: NO_STRIPS,
      notices,
    },
    fabric,
  );
}

const shortest = (all: readonly Arrangement[]): Arrangement | undefined =>
  all.reduce<Arrangement | undefined>(
    (best, each) => (best && best.length.value <= each.length.value + 1e-6 ? best : each),
    undefined,
  );

function arrangements(input: LayInput, sideways: boolean, mayTurn: boolean): Arrangement[] {
  const one = input.marking === 'swung' ? null : alike(input);
  const ways = mayTurn && (one ? one.copies.length > 1 : mayNest(input)) ? [false, true] : [false];
  return ways.flatMap((headToTail) => {
    if (!one) return packed(input, sideways, headToTail);
    return (sideways ? acrossBolt : alongBolt)(one, input, headToTail);
  });
}

/** The other pieces where the panels leave room, then beyond them. */
function withParts(panels: Arrangement, { parts, fabric }: LayInput): Arrangement {
  if (parts.length === 0) return panels;
  const listed = longestFirst(oneByOne(parts));
  const laying = place(listed.map(choiceOf), roomOf(fabric), panels.boxes);
  const lower = laying.boxes.map(({ y, across }) => y + across - fabric.selvage.value);
  return {
    ...panels,
    length: withMore(panels.length, laying.end - panels.length.value),
    used: mm(Math.max(panels.used, ...lower)),
    pieces: [...panels.pieces, ...laying.pieces],
    boxes: [...panels.boxes, ...laying.boxes],
    unfit: laying.left.flatMap((at) => listed[at] ?? []),
  };
}

/** Panels of several shapes: each by itself where it makes the cloth longer by least, or in rows head to tail. */
function packed(input: LayInput, sideways: boolean, headToTail: boolean): Arrangement[] {
  const { mains, fabric } = input;
  const sorted = deepestFirst(oneByOne(mains));
  const stance = sideways ? 'across' : 'along';
  const choices = headToTail
    ? rows(sorted, stance, fabric.usable.value).map((block): Choice => [block])
    : alone(sorted, input, stance);
  const laying = place(choices, roomOf(fabric));
  if (laying.left.length > 0) return [];
  return [
    {
      length: figure.length(mm(laying.end), 'cloth.asTheyLie'),
      used: mm(Math.max(...laying.boxes.map(({ y, across }) => y + across)) - fabric.selvage.value),
      sideways,
      headToTail: laying.pieces.some(({ turned }) => turned),
      pieces: laying.pieces,
      boxes: laying.boxes,
      unfit: [],
    },
  ];
}

/** Drawn all the same where the cloth is too narrow either way, so that the maker sees by how much. */
function unfitting(input: LayInput): Arrangement {
  const { fabric, mains } = input;
  const one = alike(input);
  const sorted = deepestFirst(oneByOne(mains));
  let x = 0;
  const pieces = sorted.flatMap((cutting) => {
    const block: Block = single(cutting, stancesOf(cutting.cut)[0] ?? 'along');
    const at = x;
    x += block.along;
    return block.pieces.map((piece) => ({
      ...piece,
      outline: translate(piece.outline, at, fabric.selvage.value),
    }));
  });
  const length = one
    ? figure.length(mm(one.copies.length * one.piece.depth.value), 'cloth.rowsStacked', {
        rows: figure.count(one.copies.length, 'cloth.rows'),
        depth: one.piece.depth,
      })
    : figure.length(mm(x), 'cloth.asTheyLie');
  return {
    length,
    used: fabric.usable.value,
    sideways: false,
    headToTail: false,
    pieces,
    boxes: [{ x: 0, y: fabric.selvage.value, along: x, across: fabric.usable.value }],
    unfit: [],
  };
}
