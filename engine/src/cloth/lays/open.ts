import type { Figure, Notice } from '../../figure/index.ts';
import { rotate, translate, type Path } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { figure, problem } from '../codes.ts';
import { nestDistance, placed, type Piece } from '../piece.ts';
import { finishLay, fitsIn, type LaidPiece, type Lay, type LayInput } from './lay.ts';

/** One arrangement of all panels on a single layer. */
interface Arrangement {
  readonly length: Figure<Mm>;
  readonly used: Mm;
  readonly sideways: boolean;
  readonly headToTail: boolean;
  readonly pieceAt: (i: number) => Path;
  readonly turnedAt: (i: number) => boolean;
}

/** The piece with its length along the bolt, its waist towards the start; (x, y) is its upper left corner. */
export function upright(piece: Piece, x: number, y: number, turned = false): Path {
  const laid = rotate(placed(piece, 0, 0, turned), radians(-Math.PI / 2));
  return translate(laid, x, y + piece.width.value);
}

/**
 * Opened out in a single layer: of the plain arrangements (side by side or head to tail, along the bolt or
 * across it) the one that takes the least cloth. Constructed, not searched.
 */
export function open(input: LayInput): Lay {
  const { panels, fabric, piece } = input;
  const { usable, oneWay } = fabric;
  const candidates = [
    ...arrangements(input, false, !oneWay),
    // Across the bolt a one-way print lies on its side: only where nothing else fits.
    ...arrangements(input, true, !oneWay),
  ];
  const preferred = oneWay ? candidates.filter(({ sideways }) => !sideways) : candidates;
  const best = shortest(preferred) ?? shortest(candidates);
  const chosen = best ?? unfitting(input);
  const notices: Notice[] = best ? [] : [problem('cloth.panelTooWide', { width: piece.width, usable })];
  const pieces: LaidPiece[] = panels.map((panel, i) => ({
    outline: chosen.pieceAt(i),
    panels: [panel],
    onFold: false,
    turned: chosen.turnedAt(i),
  }));
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
        pieces,
      },
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
  const ways = mayTurn && input.panels.length > 1 ? [false, true] : [false];
  return ways.flatMap((headToTail) => (sideways ? acrossBolt : alongBolt)(input, headToTail));
}

/** Panels' length along the bolt: as many abreast as the width holds, then the next row. */
function alongBolt({ panels, piece, fabric }: LayInput, headToTail: boolean): Arrangement[] {
  const step = headToTail ? nestDistance(piece) : piece.width.value;
  if (!fitsIn(piece.width.value, fabric.usable.value)) return [];
  const room = fabric.usable.value - piece.width.value;
  const perRow = Math.min(panels.length, 1 + Math.floor(room / step + 1e-9));
  const rows = Math.ceil(panels.length / perRow);
  const length = figure.length(mm(rows * piece.depth.value), 'cloth.rowsStacked', {
    rows: figure.count(rows, 'cloth.rows'),
    depth: piece.depth,
  });
  const turnedAt = (i: number): boolean => headToTail && (i % perRow) % 2 === 1;
  return [
    {
      length,
      used: mm(piece.width.value + (perRow - 1) * step),
      sideways: false,
      headToTail: headToTail && perRow > 1,
      turnedAt,
      pieceAt: (i) =>
        upright(
          piece,
          Math.floor(i / perRow) * piece.depth.value,
          fabric.selvage.value + (i % perRow) * step,
          turnedAt(i),
        ),
    },
  ];
}

/** Panels' length across the bolt: side by side along it, in as many rows as the width holds. */
function acrossBolt({ panels, piece, fabric }: LayInput, headToTail: boolean): Arrangement[] {
  const step = headToTail ? nestDistance(piece) : piece.width.value;
  const rows = Math.min(panels.length, Math.floor(fabric.usable.value / piece.depth.value + 1e-9));
  if (rows < 1) return [];
  const perRow = Math.ceil(panels.length / rows);
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
  return [
    {
      length,
      used: mm(rows * piece.depth.value),
      sideways: true,
      headToTail: headToTail && perRow > 1,
      turnedAt,
      pieceAt: (i) =>
        placed(
          piece,
          (i % perRow) * step,
          fabric.selvage.value + Math.floor(i / perRow) * piece.depth.value,
          turnedAt(i),
        ),
    },
  ];
}

/** Drawn all the same where the cloth is too narrow either way, so that the maker sees by how much. */
function unfitting({ panels, piece, fabric }: LayInput): Arrangement {
  return {
    length: figure.length(mm(panels.length * piece.depth.value), 'cloth.rowsStacked', {
      rows: figure.count(panels.length, 'cloth.rows'),
      depth: piece.depth,
    }),
    used: fabric.usable.value,
    sideways: false,
    headToTail: false,
    turnedAt: () => false,
    pieceAt: (i) => upright(piece, i * piece.depth.value, fabric.selvage.value),
  };
}
