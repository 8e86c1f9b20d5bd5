import type { Fabric, FoundTable } from '../../../cloth/index.ts';
import { point } from '../../../geometry/index.ts';
import { mm, type Mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import {
  area,
  drawing,
  inks,
  label,
  place,
  rectangle,
  stroke,
  type Drawing,
  type Ink,
} from '../../drawing/index.ts';
import { chalkLine, clothStyle } from '../cloth.ts';
import { chalkOn, mixed } from '../chalkOn.ts';
import { fitPoint, type Fit } from '../fit.ts';
import { cornerLabel } from './cornerLabel.ts';
import { edgeNames, edges, holes, leftOver } from './clothMarks.ts';
import { edgeScale, namedWithin, scaleDepth, type EdgeValue, type Taken } from './labels.ts';
import { patternLines } from './patternLines.ts';
import { numbered, type NumberedPiece } from './numbered.ts';
import { cornersHere, namesOf, shapeOf, shareHere, titleOf } from './pieceMarks.ts';
import { stretchesOf, type Stretch } from './stretches.ts';
import { roomWithin } from './within.ts';

/** How a length of cloth is drawn to chalk from. */
export interface ChalkedLook {
  readonly speaker: Speaker;
  /** What a piece is called; whose it is stands before it. */
  readonly nameOf: (piece: FoundTable['pieces'][number]) => string;
  /** Of the cloth: its pattern is drawn. */
  readonly fabric: Pick<Fabric, 'pattern'>;
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

/** Least of the paper's width that a last stretch takes, and how much smaller all is drawn so that it does. */
const LAST = 0.25;
const SMALLER = [1, 0.94, 0.88, 0.82];

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
  const most = table.across * whole >= look.least ? whole : Math.max(whole, look.least / table.across);
  const boxes = pieces.map(({ box }) => box);
  const parted = (scale: number): Stretch[] => stretchesOf(along, room / scale, boxes);
  // A last stretch of a hand's breadth is drawn with the one before it, all a little smaller.
  const endsWell = (scale: number): boolean => {
    const last = parted(scale).at(-1);
    return !last || last.from === 0 || (last.to - last.from) * scale >= LAST * room;
  };
  const scale = SMALLER.map((share) => share * most).find(endsWell) ?? most;
  const [first = { from: 0, to: along }, ...others] = parted(scale);
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
  { speaker, nameOf, fabric, width, cloth, wearer }: ChalkedLook,
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
    ? {
        cloth,
        piece: mixed(cloth, chalkOn(cloth), 0.16),
        line: chalkOn(cloth),
        thin: mixed(cloth, chalkOn(cloth), 0.45),
      }
    : { cloth: inks.wash, piece: inks.paper, line: inks.ink, thin: inks.rule };
  const isHers = ({ piece }: NumberedPiece): boolean => wearer !== undefined && piece.wearer === wearer;
  const sheet = { from, to, left: SIDE.left, right, y, across };
  const taken: Taken = [];
  const shapes = here.map((each) => ({ each, ...shapeOf(each, from, to, fit) }));
  const names = shapes.flatMap(({ each, corners }) => {
    if (corners.length < 3) return [];
    const within = roomWithin(corners);
    const share = shareHere(each, { from, to });
    return namedWithin(within, namesOf(each, nameOf, { share, room: within.across }), taken);
  });
  const cornerWords = shapes.flatMap(({ each, corners }) => {
    if (corners.length < 3) return [];
    const within = { middle: roomWithin(corners).at, outline: corners };
    return cornersHere(each, from, to, scale).flatMap(
      (at) => cornerLabel(fitPoint(at, fit), within, speaker.length(mm(Math.max(0, at.y))), taken) ?? [],
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
      ...edges(table, sheet),
      ...shapes.map(({ each, fill }) =>
        area(fill, {
          stroke: null,
          fill: dress.piece,
          pattern: isHers(each) ? 'diagonal' : 'none',
        }),
      ),
      ...patternLines(table, fabric, sheet, fit, dress.thin),
      ...holes(table, { from, to }, fit, speaker),
      ...leftOver(table, { from, to }, fit, speaker),
      ...shapes.map(({ each, lines }) =>
        stroke(lines, {
          ...chalkLine,
          stroke: dress.line,
          ...(isHers(each) ? { dash: 'solid', width: HERS } : {}),
        }),
      ),
      ...names,
      ...cornerWords,
      ...edgeScale(upper, y - over, 'up', { from: SIDE.left, to: width - 2 }),
      ...edgeScale(lower, y + across + under, 'down', { from: SIDE.left, to: width - 2 }),
      ...edgeNames(table, speaker, {
        ...sheet,
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
