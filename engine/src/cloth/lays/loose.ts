import { mm, type Mm } from '../../units/index.ts';
import { single, stancesOf, type Cutting } from '../blocks.ts';
import type { Fabric } from '../fabric.ts';
import type { Rect } from '../free.ts';
import { place, type Choice, type Laying } from '../place.ts';
import type { Table } from './table.ts';

/**
 * Cloth that is laid besides: the strip that is left beside the panels once they are cut, the bolt beyond them, both
 * of them opened out, or another length of the same cloth.
 */
export interface MoreTable extends Table {
  readonly where: 'beside' | 'beyond' | 'opened' | 'another';
}

/** Strips that stay free beside what is laid, each in one piece along the bolt with a selvage of its own. */
export interface Strips {
  readonly count: number;
  readonly along: number;
  readonly across: number;
}

export const NO_STRIPS: Strips = { count: 0, along: 0, across: 0 };

interface Loose {
  readonly more: readonly MoreTable[];
  /** Length that they take beyond the panels. */
  readonly length: number;
  /** Width that they take of the strips beside the panels. */
  readonly used: number;
  readonly unfit: readonly Cutting[];
}

/** A strip that is narrower than this is a rag. */
const RAG = 20;

/** Lays single pieces: on the strips that are left first, then on further cloth from the bolt. */
export function layLoose(
  loose: readonly Cutting[],
  strips: Strips,
  fabric: Fabric,
  choices: (cutting: Cutting) => Choice = choiceOf,
): Loose {
  const more: MoreTable[] = [];
  let waiting = longestFirst(loose);
  let used = 0;
  for (let i = 0; i < strips.count && strips.across > RAG && waiting.length > 0; i++) {
    const laying = place(waiting.map(choices), { x: 0, y: 0, along: strips.along, across: strips.across });
    if (laying.pieces.length === 0) break;
    more.push(besideTable(laying, strips, fabric));
    used = Math.max(used, ...laying.boxes.map(({ y, across }) => y + across));
    waiting = laying.left.flatMap((at) => waiting[at] ?? []);
  }
  if (waiting.length === 0) return { more, length: 0, used, unfit: [] };
  const laying = place(waiting.map(choices), roomOf(fabric));
  const unfit = laying.left.flatMap((at) => waiting[at] ?? []);
  if (laying.pieces.length > 0) more.push(beyondTable(laying, fabric));
  return { more, length: laying.end, used, unfit };
}

/** The cloth between its selvages, without end. */
export const roomOf = ({ selvage, usable }: Fabric): Rect => ({
  x: 0,
  y: selvage.value,
  along: Infinity,
  across: usable.value,
});

/** Every way in which a piece may lie by itself. */
export function choiceOf(cutting: Cutting): Choice {
  const [first = 'along', ...others] = stancesOf(cutting.cut);
  return [single(cutting, first), ...others.map((stance) => single(cutting, stance))];
}

const longest = ({ cut: { piece } }: Cutting): number => Math.max(piece.width.value, piece.depth.value);
export const longestFirst = (cuttings: readonly Cutting[]): Cutting[] =>
  cuttings.toSorted((a, b) => longest(b) - longest(a));

const besideTable = (laying: Laying, { along, across }: Strips, { selvage }: Fabric): MoreTable => ({
  where: 'beside',
  along: mm(along),
  across: mm(across + selvage.value),
  layers: 1,
  top: 'cut edge',
  bottom: 'selvage',
  left: 'raw end',
  right: 'raw end',
  pieces: laying.pieces,
});

const beyondTable = (laying: Laying, { usable, selvage }: Fabric): MoreTable => ({
  where: 'beyond',
  along: mm(laying.end),
  across: acrossOf(usable.value, selvage.value),
  layers: 1,
  top: 'selvage',
  bottom: 'selvage',
  left: 'raw end',
  right: 'raw end',
  pieces: laying.pieces,
});

const acrossOf = (usable: Mm, selvage: Mm): Mm => mm(usable + 2 * selvage);
