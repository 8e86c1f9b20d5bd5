import { boundsOf, point } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import {
  dimension,
  drawing,
  group,
  inks,
  label,
  rectangle,
  type Drawing,
  type Mark,
} from '../drawing/index.ts';
import { washOf } from './clothInks.ts';
import { arranged, type Cell } from './pieces/arrange.ts';
import { panelPieces, partPieces, type ChartPiece } from './pieces/chartPiece.ts';
import { halved } from './pieces/halved.ts';
import { outlineMarks, stringMarks, type ChartLook } from './pieces/outlineMarks.ts';
import { fitPoint, scaleInto, type Fit } from './fit.ts';
import { note } from './steps/wording.ts';

export interface ChartRoom {
  readonly width: Mm;
  readonly height: Mm;
}

export interface ChartOf {
  /** Panels alone, other pieces alone, or all of them. */
  readonly of?: 'panels' | 'parts' | 'all';
  readonly size?: Mm;
  /** `bare`: names and counts alone; `measures`: without notes; `halved`: what is cut on a fold is drawn as its half. */
  readonly how?: How;
  /** Cloth that lies beyond a part of a circle, round its corner. */
  readonly ground?: ChartLook['fill'];
  /** Of each piece by what it is: its wash on paper unless told. */
  readonly fill?: (of: ChartPiece['of']) => ChartLook['fill'];
  /** By a piece's fill. */
  readonly line?: (fill: ChartLook['fill']) => ChartLook['line'];
}

type How = 'bare' | 'measures' | 'halved';

/** About a page across: words of the chart's size can be read on it. */
const PAGE: ChartRoom = { width: mm(190), height: mm(150) };

/** Em of the words: 8 pt. */
const SIZE = mm(2.8);

/**
 * Every distinct piece to cut, to scale among themselves, with what is chalked, stitched and folded on it, how many are
 * cut and which edge is which. In rows, as large as the room lets; where even small pieces have no room it is taller.
 */
export function pieceChart(
  plan: SkirtPlan,
  speaker: Speaker,
  room: ChartRoom = PAGE,
  { of = 'all', size = SIZE, fill = (piece) => washOf(plan, piece), line, how, ground }: ChartOf = {},
): Drawing {
  const pieces = [
    ...(of === 'parts' ? [] : panelPieces(plan, speaker)),
    ...(of === 'panels' ? [] : partPieces(plan, speaker)),
  ].map((piece) => (how ? shown[how](piece) : piece));
  const { papers } = speaker.words;
  const shared = sharedNotes(pieces);
  const own = pieces.map((piece) => ({
    ...piece,
    notes: piece.notes.filter((each) => !shared.includes(each)),
  }));
  const each = shared.length === 0 ? '' : speaker.text(papers.pieceEach, { notes: speaker.apart(shared) });
  const foot = (y: number): Mark[] =>
    each === ''
      ? []
      : note(point(0, y), each, { size: mm(size * 0.94), align: 'start', ink: inks.grey, room: room.width });
  const footHeight = foot(0).length * size * 1.1 + (each === '' ? 0 : 1.5);
  const { cells, height } = arranged(own, { width: room.width, height: mm(room.height - footHeight) }, size);
  const lookOf = (piece: ChartPiece): ChartLook => {
    const filled = fill(piece.of);
    return { fill: filled, line: line ? line(filled) : inks.ink, size };
  };
  return drawing({
    width: room.width,
    height: mm(Math.max(1, height + footHeight)),
    title: papers.piecesHeading,
    description: speaker.text(papers.altPieces, { list: speaker.apart(pieces.map(described)) }),
    marks: [
      ...cells.map((cell) => group(cell.piece.title, cellMarks(cell, lookOf(cell.piece), ground))),
      ...foot(height + footHeight / 2),
    ],
  });
}

/** A small picture of every part, to scale among themselves, without words. */
export function partPictures(plan: SkirtPlan, speaker: Speaker, room: ChartRoom): Drawing[] {
  const pieces = partPieces(plan, speaker).map((piece) => ({ ...piece, edgeWords: {} }));
  const boxes = pieces.map(({ shape }) => boundsOf(shape.cut));
  const scale = Math.min(
    ...boxes.map((box) =>
      scaleInto(box.width, box.height, { width: mm(room.width - 1), height: mm(room.height - 1) }),
    ),
  );
  return pieces.map((piece, i) => {
    const box = boxes[i] ?? boundsOf([]);
    const fit = { scale, dx: 0.5 - box.left * scale, dy: 0.5 - box.top * scale };
    return drawing({
      width: mm(box.width * scale + 1),
      height: mm(box.height * scale + 1),
      title: '',
      description: piece.title,
      marks: outlineMarks(piece, fit, { fill: washOf(plan, piece.of), line: inks.ink, size: 2 }),
    });
  });
}

const shown: Readonly<Record<How, (piece: ChartPiece) => ChartPiece>> = {
  bare: (piece) => bare(piece),
  measures: (piece) => ({ ...piece, notes: [] }),
  halved,
};

const bare = (piece: ChartPiece): ChartPiece => ({
  ...piece,
  notes: [],
  above: [],
  below: [],
  down: '',
  swung: null,
});

/** What is said of every piece is said once, below them all. */
function sharedNotes(pieces: readonly ChartPiece[]): string[] {
  const [first, ...others] = pieces;
  if (!first || others.length === 0) return [];
  return first.notes.filter((each) => others.every(({ notes }) => notes.includes(each)));
}

/** A distinct piece in words: what it is and how many are cut, and what is chalked of it. */
export interface PieceText {
  readonly title: string;
  readonly measures: readonly string[];
}

/** Every distinct panel in words. */
export const panelTexts = (plan: SkirtPlan, speaker: Speaker): PieceText[] =>
  panelPieces(plan, speaker).map(textOf);

/** Every other piece in words. */
export const partTexts = (plan: SkirtPlan, speaker: Speaker): PieceText[] =>
  partPieces(plan, speaker).map(textOf);

const textOf = (piece: ChartPiece): PieceText => ({ title: piece.title, measures: measuresOf(piece) });

const measuresOf = ({ above, below, down, swung, notes }: ChartPiece): string[] => [
  ...above.map(({ text }) => text),
  ...below.map(({ text }) => text),
  ...(down === '' ? [] : [down]),
  ...(swung ? [swung.waist.text, swung.hem.text] : []),
  ...notes,
];

/** A piece in words. */
const described = (piece: ChartPiece): string => [piece.title, ...measuresOf(piece)].join(', ');

function cellMarks(cell: Cell, look: ChartLook, ground?: ChartLook['fill']): Mark[] {
  const { piece, fit, x, width, titleY, notesY } = cell;
  const { shape } = piece;
  const bounds = boundsOf(shape.cut);
  const size = mm(look.size);
  const level = (y: number) => (mark: { from: number; to: number; text: string }) =>
    dimension({
      from: point(mark.from * fit.scale + fit.dx, y),
      to: point(mark.to * fit.scale + fit.dx, y),
      text: mark.text,
      offset: mm(0),
      size,
      ink: inks.ink,
    });
  const top = bounds.top * fit.scale + fit.dy;
  const bottom = bounds.bottom * fit.scale + fit.dy;
  const left = bounds.left * fit.scale + fit.dx;
  return [
    ...note(point(x, titleY), piece.title, {
      size: mm(size * 1.05),
      bold: true,
      align: 'start',
      room: width,
    }),
    ...(ground && piece.swung ? [groundMark(piece, fit, ground)] : []),
    ...outlineMarks(piece, fit, look),
    ...stringMarks(piece, fit, look),
    ...piece.above.map((mark) => above(mark, top - 1.2, fit, size)),
    ...piece.below.map(level(bottom + 1.2)),
    ...(piece.down === ''
      ? []
      : [
          label(point(left - size * 0.75, (top + bottom) / 2), piece.down, {
            size,
            align: 'middle',
            baseline: 'middle',
            angle: radians(-Math.PI / 2),
          }),
        ]),
    ...piece.notes.flatMap((text, i) => {
      const y = notesY[i] ?? bottom;
      return note(point(x, y), text, { size: mm(size * 0.94), align: 'start', ink: inks.grey, room: width });
    }),
  ];
}

/** Cloth under a part of a circle, its corner with it. */
function groundMark({ shape, swung }: ChartPiece, fit: Fit, fill: ChartLook['fill']): Mark {
  const { left, right, top, bottom } = boundsOf(shape.cut);
  const from = fitPoint(point(left, Math.min(top, swung?.corner.y ?? top)), fit);
  const to = fitPoint(point(right, bottom), fit);
  const out = 1.2;
  return rectangle(from.x - out / 4, from.y - out, to.x - from.x + out / 2, to.y - from.y + 2 * out, {
    fill,
    stroke: null,
  });
}

/** Words stand above the line: walked from right to left they do. */
const above = (
  { from, to, text }: { from: number; to: number; text: string },
  y: number,
  fit: { scale: number; dx: number },
  size: Mm,
): Mark =>
  dimension({
    from: point(from * fit.scale + fit.dx, y),
    to: point(to * fit.scale + fit.dx, y),
    text,
    offset: mm(-0.001),
    size,
    ink: inks.ink,
  });
