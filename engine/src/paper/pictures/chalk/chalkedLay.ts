import type { FoundTable, TableEdge } from '../../../cloth/index.ts';
import { boundsOf, flatten, point, polyline, type Point } from '../../../geometry/index.ts';
import { mm, radians, type Mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import {
  area,
  dimension,
  drawing,
  inks,
  label,
  place,
  rectangle,
  straight,
  stroke,
  type Drawing,
  type Ink,
  type Mark,
} from '../../drawing/index.ts';
import { chalkLine, clothStyle, foldLine } from '../cloth.ts';
import { chalkOn, mixed } from '../chalkOn.ts';
import { fitPath, fitPoint, type Fit } from '../fit.ts';
import {
  cornerLabel,
  edgeScale,
  namedWithin,
  scaleDepth,
  SCALE_SIZE,
  type EdgeValue,
  type Taken,
} from './labels.ts';
import { numbered, type NumberedPiece } from './numbered.ts';
import { stretchesOf, type Stretch } from './stretches.ts';
import { betweenUprights, roomWithin, uncut } from './within.ts';

/** How a length of cloth is drawn to chalk from. */
export interface ChalkedLook {
  readonly speaker: Speaker;
  /** What a piece is called; whose it is stands before it. */
  readonly nameOf: (piece: FoundTable['pieces'][number]) => string;
  /** Width of the paper. */
  readonly width: Mm;
  /** The cloth is drawn no deeper than this, and where it is long no shallower than the least. */
  readonly most: Mm;
  readonly least: Mm;
  /** Colour of the cloth on a screen; a wash on paper. */
  readonly cloth?: Ink;
  /** Whose pieces stand out; nobody's where it is left out. */
  readonly wearer?: string;
}

/** Outline of a piece that stands out. */
const HERS = mm(1.1);

const SIDE = { left: 13, right: 5 } as const;
const EDGE_WORDS = 4.2;

/**
 * A length of cloth to scale, to chalk from: at its edges how far along from its start each piece begins and ends, at the
 * corners of the pieces how far across from its upper edge, whose each piece is, spoilt places and what is left over.
 * A long one is drawn in stretches, one drawing each, all to one scale.
 */
export function chalkedLay(table: FoundTable, look: ChalkedLook): [Drawing, ...Drawing[]] {
  const pieces = numbered(table);
  const along = Math.max(table.along, ...pieces.map(({ box }) => box.right));
  const room = look.width - SIDE.left - SIDE.right;
  const whole = Math.min(room / along, look.most / table.across);
  // A long cloth is parted until it is no longer drawn as a ribbon.
  const scale = table.across * whole >= look.least ? whole : Math.max(whole, look.least / table.across);
  const boxes = pieces.map(({ box }) => box);
  const [first = { from: 0, to: along }, ...others] = stretchesOf(along, room / scale, boxes);
  const several = others.length > 0;
  const draw = (stretch: Stretch): Drawing => stretchDrawing(table, pieces, stretch, scale, several, look);
  return [draw(first), ...others.map(draw)];
}

/** The same with its stretches below each other in one drawing. */
export function chalkedSheet(table: FoundTable, look: ChalkedLook): Drawing {
  const stretches = chalkedLay(table, look);
  const [first] = stretches;
  let y = 0;
  const marks = stretches.map((each) => {
    const placed = place(each, mm(0), mm(y));
    y += each.height + 4;
    return placed;
  });
  return drawing({ ...first, height: mm(y - 4), marks });
}

function stretchDrawing(
  table: FoundTable,
  pieces: readonly NumberedPiece[],
  { from, to }: Stretch,
  scale: number,
  several: boolean,
  { speaker, nameOf, width, cloth, wearer }: ChalkedLook,
): Drawing {
  const { workshop } = speaker.words;
  const here = pieces.filter(({ box }) => box.right > from + 1 && box.left < to - 1);
  const [upper, lower] = scalesOf(here, { from, to }, scale, table.across, speaker);
  const over = Math.max(0, ...here.map(({ box }) => -box.top)) * scale;
  const under = Math.max(0, ...here.map(({ box }) => box.bottom - table.across)) * scale;
  const captioned = several ? 5 : 0;
  const y = captioned + EDGE_WORDS + scaleDepth(upper) + over;
  const fit: Fit = { scale, dx: SIDE.left - from * scale, dy: y };
  const across = table.across * scale;
  const right = fit.dx + Math.min(to, table.along) * scale;
  const height = y + across + under + scaleDepth(lower) + EDGE_WORDS;
  const dress = cloth
    ? { cloth, piece: mixed(cloth, chalkOn(cloth), 0.16), line: chalkOn(cloth) }
    : { cloth: inks.wash, piece: inks.paper, line: inks.ink };
  const taken: Taken = [];
  const shapes = here.map((each) => ({ each, ...shapeOf(each, from, to, fit) }));
  const names = shapes.flatMap(({ each, corners }) =>
    corners.length < 3
      ? []
      : namedWithin(roomWithin(corners), namesOf(each, nameOf, shareHere(each, { from, to })), taken),
  );
  const cornerWords = shapes.flatMap(({ each, corners }) => {
    const middle = corners.length < 3 ? point(0, 0) : roomWithin(corners).at;
    return cornersHere(each, from, to, scale).flatMap(
      (at) => cornerLabel(fitPoint(at, fit), middle, speaker.length(mm(Math.max(0, at.y))), taken) ?? [],
    );
  });
  return drawing({
    // A cloth that takes less than the paper's width leaves the rest of it out.
    width: several ? width : mm(Math.min(width, right + SIDE.right + 4)),
    height: mm(height),
    title: several
      ? speaker.text(workshop.stretch, { from: speaker.length(mm(from)), to: speaker.length(mm(to)) })
      : workshop.layTitle,
    description: speaker.text(workshop.altChalked, {
      pieces: here
        .map(({ number, piece }) => `${String(number)} ${titleOf(piece.wearer, nameOf(piece))}`)
        .join(', '),
    }),
    marks: [
      ...(several
        ? [
            label(
              point(SIDE.left, 2.6),
              speaker.text(workshop.stretch, { from: speaker.length(mm(from)), to: speaker.length(mm(to)) }),
              { size: mm(3), bold: true, baseline: 'middle' },
            ),
          ]
        : []),
      rectangle(SIDE.left, y, right - SIDE.left, across, { ...clothStyle, stroke: null, fill: dress.cloth }),
      ...edges(table, { from, to, left: SIDE.left, right, y, across }),
      ...leftOver(table, { from, to }, fit, speaker),
      ...shapes.flatMap(({ each, fill, lines }) => {
        const isHers = wearer !== undefined && each.piece.wearer === wearer;
        return [
          area(fill, { stroke: null, fill: dress.piece, pattern: isHers ? 'diagonal' : 'none' }),
          stroke(lines, {
            ...chalkLine,
            stroke: dress.line,
            ...(isHers ? { dash: 'solid', width: HERS } : {}),
          }),
        ];
      }),
      ...flaws(table, { from, to }, fit, speaker),
      ...names,
      ...cornerWords,
      ...edgeScale(upper, y - over, 'up', { from: SIDE.left, to: width - 2 }),
      ...edgeScale(lower, y + across + under, 'down', { from: SIDE.left, to: width - 2 }),
      ...edgeNames(table, speaker, {
        from,
        to,
        right,
        y,
        across,
        over: over + scaleDepth(upper),
        under: under + scaleDepth(lower),
      }),
    ],
  });
}

/** Distances along: of each corner, and of where a piece begins and ends, at the edge that is nearer. */
function scalesOf(
  pieces: readonly NumberedPiece[],
  { from, to }: Stretch,
  scale: number,
  across: number,
  speaker: Speaker,
): [EdgeValue[], EdgeValue[]] {
  const places = pieces
    .flatMap(({ box, corners }) => {
      const middle = (box.top + box.bottom) / 2;
      const isTold = (x: number): boolean => corners.some((corner) => Math.abs(corner.x - x) < 1);
      const ends = [box.left, box.right].filter((x) => !isTold(x)).map((x) => point(x, middle));
      return [...corners, ...ends];
    })
    .filter(({ x }) => x >= from - 0.5 && x <= to + 0.5)
    .map(({ x, y }) => ({
      isUpper: y < across / 2,
      at: SIDE.left + (x - from) * scale,
      text: speaker.length(mm(Math.max(0, x))),
    }));
  return [places.filter(({ isUpper }) => isUpper), places.filter(({ isUpper }) => !isUpper)];
}

const titleOf = (wearer: string, name: string): string => (wearer === '' ? name : `${wearer} · ${name}`);

/** How much of a piece's length lies on a stretch. */
const shareHere = ({ box }: NumberedPiece, { from, to }: Stretch): number =>
  (Math.min(to, box.right) - Math.max(from, box.left)) / Math.max(1, box.width);

/** Of a piece of which there is less than this on a stretch only the number is told: the rest of it is named. */
const MOSTLY = 0.4;

/** Ways to say whose a piece is and what it is called, the fullest first. */
function namesOf({ number, piece }: NumberedPiece, nameOf: ChalkedLook['nameOf'], share: number): string[][] {
  const [no, name] = [String(number), nameOf(piece)];
  if (share < MOSTLY) return [[no]];
  if (piece.wearer === '') return [[`${no} · ${name}`], [no, name], [no]];
  return [
    [`${no} · ${piece.wearer}`, name],
    [`${no} · ${piece.wearer} · ${name}`],
    [`${no} · ${piece.wearer}`],
    [no],
  ];
}

/** A piece as far as it lies on a stretch: its area, its chalk lines, its corners on paper. */
function shapeOf({ piece, box }: NumberedPiece, from: number, to: number, fit: Fit) {
  const whole = box.left >= from - 1 && box.right <= to + 1;
  const flat = flatten(piece.outline, mm(0.5)).slice(0, -1);
  const corners = (whole ? flat : betweenUprights(flat, from, to)).map((at) => fitPoint(at, fit));
  if (whole) {
    const outline = fitPath(piece.outline, fit);
    return { fill: outline, lines: [outline], corners };
  }
  const [start, end] = [from * fit.scale + fit.dx, to * fit.scale + fit.dx];
  return { fill: polyline(corners, { closed: true }), lines: uncut(corners, start, end), corners };
}

/** Two corners of one piece that lie as far across are told once, unless they lie far apart on paper. */
const FAR = 45;
function cornersHere({ corners }: NumberedPiece, from: number, to: number, scale: number): Point[] {
  return corners
    .filter(({ x }) => x >= from - 1 && x <= to + 1)
    .filter(
      (at, i, all) =>
        !all.slice(0, i).some((each) => Math.abs(each.y - at.y) < 1 && Math.abs(each.x - at.x) * scale < FAR),
    );
}

interface Sheet {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly across: number;
}

const isFold = (edge: TableEdge): boolean => edge === 'fold' || edge === 'two folds';

/** Folds are thick, raw ends and selvages thin; where a stretch goes on, the cloth is open. */
function edges(table: FoundTable, { from, to, left, right, y, across }: Sheet): Mark[] {
  const sides = [
    ...(from <= 0 ? [[table.left, point(left, y), point(left, y + across)] as const] : []),
    ...(to >= table.along - 1 ? [[table.right, point(right, y), point(right, y + across)] as const] : []),
    [table.top, point(left, y), point(right, y)] as const,
    [table.bottom, point(left, y + across), point(right, y + across)] as const,
  ];
  return sides.map(([edge, start, end]) => straight(start, end, { width: mm(isFold(edge) ? 1 : 0.35) }));
}

function edgeNames(
  table: FoundTable,
  speaker: Speaker,
  of: Omit<Sheet, 'left'> & { readonly over: number; readonly under: number },
): Mark[] {
  const { tableEdges } = speaker.words;
  const middle = { x: (SIDE.left + of.right) / 2, y: of.y + of.across / 2 };
  const words = (x: number, y: number, edge: TableEdge, upright: boolean): Mark =>
    label(point(x, y), tableEdges[edge], {
      size: mm(2.8),
      align: 'middle',
      baseline: 'middle',
      bold: isFold(edge),
      ink: isFold(edge) ? inks.ink : inks.grey,
      ...(upright ? { angle: radians(-Math.PI / 2) } : {}),
    });
  return [
    words(middle.x, of.y - of.over - 1.8, table.top, false),
    words(middle.x, of.y + of.across + of.under + 1.8, table.bottom, false),
    ...(of.from <= 0 ? [words(SIDE.left - 2.4, middle.y, table.left, true)] : []),
    ...(of.to >= table.along - 1 ? [words(of.right + 2.6, middle.y, table.right, true)] : []),
    dimension({
      from: point(SIDE.left, of.y + of.across),
      to: point(SIDE.left, of.y),
      text: speaker.length(table.across),
      offset: mm(-5),
      size: mm(2.8),
    }),
  ];
}

function leftOver(
  { leftOver: rest }: FoundTable,
  { from, to }: Pick<Sheet, 'from' | 'to'>,
  fit: Fit,
  speaker: Speaker,
): Mark[] {
  if (!rest) return [];
  const [left, right] = [Math.max(from, rest.x), Math.min(to, rest.x + rest.along)];
  if (right - left < 5) return [];
  const [start, end] = [
    fitPoint(point(left, rest.y), fit),
    fitPoint(point(right, rest.y + rest.across), fit),
  ];
  const [wide, deep] = [end.x - start.x, end.y - start.y];
  const text = speaker.text(speaker.words.workshop.leftOver, {
    along: speaker.length(rest.along),
    across: speaker.length(rest.across),
  });
  return [
    rectangle(start.x, start.y, wide, deep, { ...foldLine, fill: null }),
    ...namedWithin(
      { at: point((start.x + end.x) / 2, (start.y + end.y) / 2), across: wide, down: deep },
      [[text]],
      [],
    ),
  ];
}

function flaws(
  table: FoundTable,
  { from, to }: Pick<Sheet, 'from' | 'to'>,
  fit: Fit,
  speaker: Speaker,
): Mark[] {
  return table.flaws.flatMap((flaw): Mark[] => {
    const corners = betweenUprights(flatten(flaw).slice(0, -1), from, to).map((at) => fitPoint(at, fit));
    if (corners.length < 3) return [];
    const outline = polyline(corners, { closed: true });
    const { left, right, top, bottom } = boundsOf(outline);
    return [
      area(outline, { pattern: 'cross', fill: inks.paper, width: mm(0.25) }),
      label(point((left + right) / 2, (top + bottom) / 2), speaker.words.workshop.flaw, {
        size: mm(SCALE_SIZE),
        align: 'middle',
        baseline: 'middle',
        halo: inks.paper,
      }),
    ];
  });
}
