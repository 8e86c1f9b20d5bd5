import { boundsOf, halfTurn, mirrorX, point, rotate, translate, type Path } from '../geometry/index.ts';
import { radians } from '../units/index.ts';
import { besideOf, silhouetteOf, type Silhouette } from './beside.ts';
import { labelsOf, type Copy, type CutPiece } from './cutPieces.ts';
import { rightHalf } from './lays/half.ts';
import type { LaidPiece } from './lays/table.ts';

/** Pieces that are laid as one, in the rectangle round them; the corner of the rectangle is at the origin. */
export interface Block {
  readonly along: number;
  readonly across: number;
  readonly pieces: readonly LaidPiece[];
  /** Whether it lies against the fold, at the lower edge of the cloth. */
  readonly onFold: boolean;
}

/** One outline on the cloth, and the copies that it cuts: two through two layers. */
export interface Cutting {
  readonly cut: CutPiece;
  readonly copies: readonly Copy[];
}

/** How a piece lies: its length along the bolt, across it, or (parts of a circle) with one side along it. */
export type Stance = 'along' | 'across' | 'cornered';

const QUARTER_TURN = radians(-Math.PI / 2);

/** A piece as it lies, the corner of its box at the origin. */
interface Standing {
  readonly outline: Path;
  readonly along: number;
  readonly across: number;
}

/** Each way of standing is worked out once, however many of the piece there are and however often they are laid. */
const known = new WeakMap<CutPiece, Map<string, Standing>>();

function standing(cut: CutPiece, stance: Stance, mirrored: boolean, turned: boolean): Standing {
  const ways = known.get(cut) ?? new Map<string, Standing>();
  known.set(cut, ways);
  const key = `${stance} ${String(mirrored)} ${String(turned)}`;
  const found = ways.get(key) ?? stood(cut, stance, mirrored, turned);
  ways.set(key, found);
  return found;
}

function stood({ piece, swing }: CutPiece, stance: Stance, mirrored: boolean, turned: boolean): Standing {
  const drawn = mirrored ? mirrorX(piece.outline) : piece.outline;
  const angle = { across: 0, along: QUARTER_TURN, cornered: swing - Math.PI / 2 }[stance];
  const laid = angle === 0 ? drawn : rotate(drawn, radians(angle));
  const { left, top, width, height } = boundsOf(laid);
  const outline = turned ? halfTurn(laid, point(left + width / 2, top + height / 2)) : laid;
  return { outline: translate(outline, -left, -top), along: width, across: height };
}

/** One piece by itself. */
export function single({ cut, copies }: Cutting, stance: Stance): Block {
  const { outline, along, across } = standing(cut, stance, copies[0]?.mirrored ?? false, false);
  return {
    along,
    across,
    pieces: [{ outline, ...labelsOf(copies), onFold: false, turned: false }],
    onFold: false,
  };
}

/** The half of a piece that lies against the fold along the bolt. */
export function onFold({ cut, copies }: Cutting): Block {
  const half = rotate(rightHalf(cut.piece.outline), QUARTER_TURN);
  const { width, left, top } = boundsOf(half);
  // The middle of the sheet is the fold, whatever of the piece touches it.
  return {
    along: width,
    across: -top,
    pieces: [{ outline: translate(half, -left, -top), ...labelsOf(copies), onFold: true, turned: false }],
    onFold: true,
  };
}

/** The ways in which a piece may lie by itself, as its grain allows. */
export function stancesOf({ grain, swing }: CutPiece): readonly Stance[] {
  if (swing > 0) return ['along', 'across', 'cornered'];
  return grain === 'down' ? ['along'] : grain === 'across' ? ['across'] : ['along', 'across'];
}

/** Arcs are flattened to this for neighbours; chords lie that far within the curve, of each of two pieces. */
const FLAT = 0.3;

/** One that stands in a row, and how its neighbours see it. */
interface Seen {
  readonly standing: Standing;
  readonly silhouette: Silhouette;
  readonly isRound: boolean;
}

interface Member {
  readonly seen: Seen;
  readonly at: number;
  readonly turned: boolean;
  readonly copies: readonly Copy[];
}

interface Row {
  readonly members: Member[];
  end: number;
}

/**
 * Pieces side by side, every other one head to tail, as close as their sides allow: rows across the bolt of at
 * most `room`, or, lying across it, as many rows along the bolt as the room holds. Each row is a block.
 */
export function rows(cuttings: readonly Cutting[], stance: 'along' | 'across', room: number): Block[] {
  const sights = sightsOf(stance);
  const all: Row[] = [];
  const lanes = stance === 'across' ? lanesIn(cuttings, room) : Infinity;
  for (const cutting of cuttings) {
    const tried = all.map((row) => ({ row, next: nextIn(row, cutting, sights) }));
    const fitting =
      stance === 'along'
        ? tried.find(({ next }) => next.at + next.seen.standing.across <= room + 1e-6)
        : all.length < lanes
          ? undefined
          : tried.toSorted((a, b) => a.next.at - b.next.at)[0];
    const row = fitting?.row ?? { members: [], end: 0 };
    if (!fitting) all.push(row);
    const member = fitting?.next ?? nextIn(row, cutting, sights);
    row.members.push(member);
    const { along, across } = member.seen.standing;
    row.end = Math.max(row.end, member.at + (stance === 'along' ? across : along));
  }
  return all.map((row) => blockOf(row, stance));
}

const lanesIn = (cuttings: readonly Cutting[], room: number): number =>
  Math.max(1, Math.floor(room / Math.max(...cuttings.map(({ cut }) => cut.piece.depth.value)) + 1e-9));

interface Sights {
  readonly of: (cut: CutPiece, mirrored: boolean, turned: boolean) => Seen;
  readonly between: (one: Seen, next: Seen) => number;
}

/** Each way of standing, and each pair of neighbours, is looked at once. */
function sightsOf(stance: 'along' | 'across'): Sights {
  const found = new Map<Standing, Seen>();
  const pairs = new Map<Seen, Map<Seen, number>>();
  const look = (standing: Standing): Seen => ({
    standing,
    silhouette: silhouetteOf(standing.outline, stance === 'along' ? 'x' : 'y', FLAT),
    isRound: standing.outline.some(({ kind }) => kind === 'arc'),
  });
  return {
    of(cut, mirrored, turned) {
      const stands = standing(cut, stance, mirrored, turned);
      const seen = found.get(stands) ?? look(stands);
      found.set(stands, seen);
      return seen;
    },
    between(one, next) {
      const beside = pairs.get(one) ?? new Map<Seen, number>();
      pairs.set(one, beside);
      const gap =
        beside.get(next) ??
        besideOf(one.silhouette, next.silhouette) + (one.isRound || next.isRound ? 2 * FLAT : 0);
      beside.set(next, gap);
      return gap;
    },
  };
}

function nextIn({ members }: Row, { cut, copies }: Cutting, sights: Sights): Member {
  const turned = members.length % 2 === 1;
  const seen = sights.of(cut, copies[0]?.mirrored ?? false, turned);
  let at = 0;
  for (const each of members) at = Math.max(at, each.at + sights.between(each.seen, seen));
  return { seen, at, turned, copies };
}

function blockOf({ members, end }: Row, stance: 'along' | 'across'): Block {
  const deep = (of: 'along' | 'across'): number => Math.max(...members.map(({ seen }) => seen.standing[of]));
  const pieces = members.map(({ seen, at, turned, copies }) => ({
    outline: translate(seen.standing.outline, stance === 'along' ? 0 : at, stance === 'along' ? at : 0),
    ...labelsOf(copies),
    onFold: false,
    turned,
  }));
  return {
    along: stance === 'along' ? deep('along') : end,
    across: stance === 'along' ? end : deep('across'),
    pieces,
    onFold: false,
  };
}
