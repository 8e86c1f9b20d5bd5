import type { Figure, Notice } from '../../figure/index.ts';
import { boundsOf, rotate, translate, type Path } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { rows, single, stancesOf, type Block, type Cutting } from '../blocks.ts';
import { figure, problem } from '../codes.ts';
import { labelsOf, type CutPiece } from '../cutPieces.ts';
import type { Rect } from '../free.ts';
import { nestDistance, placed, type Piece } from '../piece.ts';
import { place, type Choice } from '../place.ts';
import { alike, finishLay, fitsIn, withMore, type LaidPiece, type Lay, type LayInput } from './lay.ts';
import { choiceOf, longestFirst, NO_STRIPS, roomOf } from './loose.ts';
import { oneByOne } from './pairs.ts';

/** One arrangement of all pieces on a single layer. */
interface Arrangement {
  readonly length: Figure<Mm>;
  readonly used: Mm;
  readonly sideways: boolean;
  readonly headToTail: boolean;
  readonly pieces: readonly LaidPiece[];
  /** The rectangles that they take. */
  readonly boxes: readonly Rect[];
  /** Those that are too large for the cloth. */
  readonly unfit: readonly Cutting[];
}

/** The piece with its length along the bolt, its waist towards the start; (x, y) is its upper left corner. */
export function upright(piece: Piece, x: number, y: number, turned = false): Path {
  const laid = rotate(placed(piece, 0, 0, turned), radians(-Math.PI / 2));
  return translate(laid, x, y + piece.width.value);
}

/** Those that reach furthest along the bolt first, so that what follows stands beside them. */
export const deepestFirst = (cuttings: readonly Cutting[]): Cutting[] =>
  cuttings.toSorted(
    ({ cut: { piece: a } }, { cut: { piece: b } }) =>
      b.depth.value - a.depth.value || b.width.value - a.width.value,
  );

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

/** Whether panels of several shapes save anything head to tail: straight widths don't. */
export const mayNest = ({ marking, mains, fabric }: LayInput): boolean =>
  !fabric.oneWay && marking !== 'straight widths' && oneByOne(mains).length > 1;

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

/** How panels lie one by one. A part of a circle has no way up: it lies as it takes least, unless the print has one. */
export function alone(
  cuttings: readonly Cutting[],
  { marking, fabric }: LayInput,
  stance: 'along' | 'across',
): Choice[] {
  const isFree = marking === 'swung' && !fabric.oneWay && stance === 'along';
  return cuttings.map((cutting) => (isFree ? choiceOf(cutting) : [single(cutting, stance)]));
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

/** Alike panels laid by rule. */
function byRule(
  { piece, copies }: CutPiece,
  rule: Pick<Arrangement, 'length' | 'used' | 'sideways' | 'headToTail'>,
  turnedAt: (i: number) => boolean,
  pieceAt: (i: number) => Path,
): Arrangement {
  const pieces = copies.map((copy, i) => ({
    outline: pieceAt(i),
    ...labelsOf([copy]),
    onFold: false,
    turned: turnedAt(i),
  }));
  const size = rule.sideways
    ? { along: piece.width.value, across: piece.depth.value }
    : { along: piece.depth.value, across: piece.width.value };
  const boxes = pieces.map(({ outline }) => {
    const { left, top } = boundsOf(outline);
    return { x: left, y: top, ...size };
  });
  return { ...rule, pieces, boxes, unfit: [] };
}

/** Panels' length along the bolt: as many abreast as the width holds, then the next row. */
function alongBolt(one: CutPiece, { fabric }: LayInput, headToTail: boolean): Arrangement[] {
  const { piece, copies } = one;
  const step = headToTail ? nestDistance(piece) : piece.width.value;
  if (!fitsIn(piece.width.value, fabric.usable.value)) return [];
  const room = fabric.usable.value - piece.width.value;
  const perRow = Math.min(copies.length, 1 + Math.floor(room / step + 1e-9));
  const count = Math.ceil(copies.length / perRow);
  const length = figure.length(mm(count * piece.depth.value), 'cloth.rowsStacked', {
    rows: figure.count(count, 'cloth.rows'),
    depth: piece.depth,
  });
  const turnedAt = (i: number): boolean => headToTail && (i % perRow) % 2 === 1;
  const used = mm(piece.width.value + (perRow - 1) * step);
  const rule = { length, used, sideways: false, headToTail: headToTail && perRow > 1 };
  return [
    byRule(one, rule, turnedAt, (i) =>
      upright(
        piece,
        Math.floor(i / perRow) * piece.depth.value,
        fabric.selvage.value + (i % perRow) * step,
        turnedAt(i),
      ),
    ),
  ];
}

/** Panels' length across the bolt: side by side along it, in as many rows as the width holds. */
function acrossBolt(one: CutPiece, { fabric }: LayInput, headToTail: boolean): Arrangement[] {
  const { piece, copies } = one;
  const step = headToTail ? nestDistance(piece) : piece.width.value;
  const count = Math.min(copies.length, Math.floor(fabric.usable.value / piece.depth.value + 1e-9));
  if (count < 1) return [];
  const perRow = Math.ceil(copies.length / count);
  const length = figure.length(
    mm(piece.width.value + (perRow - 1) * step),
    headToTail ? 'cloth.headToTail' : 'cloth.abreast',
    {
      width: piece.width,
      more: figure.count(perRow - 1, 'cloth.more'),
      step: figure.length(mm(step), 'cloth.nest'),
    },
  );
  const turnedAt = (i: number): boolean => headToTail && (i % perRow) % 2 === 1;
  const used = mm(count * piece.depth.value);
  return [
    byRule(one, { length, used, sideways: true, headToTail: headToTail && perRow > 1 }, turnedAt, (i) =>
      placed(
        piece,
        (i % perRow) * step,
        fabric.selvage.value + Math.floor(i / perRow) * piece.depth.value,
        turnedAt(i),
      ),
    ),
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
