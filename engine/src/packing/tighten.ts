import { isWithin } from './polygon.ts';
import { lengthOf, measureAll, put, restore, snapshot, type Layout, type Snapshot } from './layout.ts';
import { part, type Patience } from './part.ts';
import { placeX, placeY } from './place.ts';
import type { Seeker } from './seek.ts';

/** Shares of the length: taken off while it is easy, and while it is not; then at the end, from and to. */
const EASY = 0.006;
const HARD = 0.001;
const LAST = { from: 0.0005, to: 0.00001 };

/** How often two pieces that change places are near in size; else any two large ones do. */
const NEAR_IN_SIZE = 0.5;
const NEAREST = 4;

const EXPLORE: Patience = { rounds: 100, strikes: 2 };
const COMPRESS: Patience = { rounds: 100, strikes: 5 };

/** What the search asks of the outside: how much is over, in [0, 1]; and to be told of each better answer. */
export interface Progress {
  readonly share: () => number;
  readonly better: (found: Snapshot) => void;
  /** Whether an answer of that end is as good as any. */
  readonly enough: (end: number) => boolean;
}

/** The strip made shorter: what lies right of a random cut moves left by as much. */
function shorten({ layout, random }: Seeker, end: number, from: number): void {
  const { problem, shape, x, y } = layout;
  // Counted as a place, so that a search that can't move anything comes to its end too.
  layout.tried++;
  const by = from - end;
  const cut = random.next() * end;
  layout.end = end;
  for (let piece = 0; piece < problem.movable; piece++) {
    const stood = shape[piece]!;
    const middle = x[piece]! + (problem.left[stood]! + problem.right[stood]!) / 2;
    moveTo(layout, piece, stood, middle > cut ? x[piece]! - by : x[piece]!, y[piece]!);
  }
  measureAll(layout);
}

/** Puts a piece at the place nearest to a wish; where the strip has none, it stays. */
function moveTo(layout: Layout, piece: number, shape: number, x: number, y: number): void {
  const atX = placeX(layout, shape, x);
  const atY = placeY(layout, shape, y);
  if (atX === atX && atY === atY) put(layout, piece, shape, atX, atY);
}

const shorter = (end: number, share: number): number => Math.floor(end - Math.max(1, end * share));

/**
 * Shorter strip after shorter strip, as long as `until` of the time is not over; what could not be parted is kept, and
 * begun with again after two large pieces have changed places.
 */
export function explore(seeker: Seeker, best: Snapshot, until: number, progress: Progress): Snapshot {
  const { layout, random } = seeker;
  const isOver = (): boolean => progress.share() >= until;
  let known = best;
  let step = EASY;
  let pool: Snapshot[] = [];
  shorten(seeker, shorter(known.end, step), known.end);
  while (!isOver() && !progress.enough(known.end)) {
    if (part(seeker, EXPLORE, isOver)) {
      const found = trimmed(layout);
      // A piece that has no place in a shorter strip stays where it was.
      if (found.end >= known.end) return known;
      known = found;
      progress.better(known);
      pool = [];
      shorten(seeker, shorter(known.end, step), known.end);
      continue;
    }
    if (isOver()) break;
    // What is easy is over: from here on in small steps from the best.
    if (step === EASY) {
      step = HARD;
      restore(layout, known);
      shorten(seeker, shorter(known.end, step), known.end);
      continue;
    }
    const failed = snapshot(layout);
    pool.push(failed);
    pool.sort((a, b) => a.total - b.total);
    pool = pool.slice(0, 40);
    restore(layout, pool[nearFirst(seeker, pool.length)] ?? failed);
    swapLarge(seeker, random.next() < NEAR_IN_SIZE);
  }
  return known;
}

/** A place in a sorted list, the nearer to its beginning the likelier: the size of a bell curve's draw. */
function nearFirst({ random }: Seeker, count: number): number {
  const bell = random.next() + random.next() + random.next() + random.next() - 2;
  return Math.min(count - 1, Math.floor(Math.abs(bell) * 0.45 * count));
}

/** From the best, in ever smaller steps, to the end of the time. */
export function compress(seeker: Seeker, best: Snapshot, progress: Progress): Snapshot {
  const { layout } = seeker;
  const began = progress.share();
  const isOver = (): boolean => progress.share() >= 1;
  let known = best;
  while (!isOver() && !progress.enough(known.end)) {
    const over = (progress.share() - began) / (1 - began);
    const share = LAST.from + (LAST.to - LAST.from) * over;
    restore(layout, known);
    shorten(seeker, shorter(known.end, share), known.end);
    if (!part(seeker, COMPRESS, isOver)) continue;
    const found = trimmed(layout);
    if (found.end >= known.end) return known;
    known = found;
    progress.better(known);
  }
  return known;
}

/** A parted layout, its strip ended where its last piece ends. */
export function trimmed(layout: Layout): Snapshot {
  layout.end = lengthOf(layout);
  return snapshot(layout);
}

/** Two large pieces of unlike items change places, and small ones that come to lie within one of them go where it was. */
function swapLarge({ layout, random }: Seeker, near: boolean): void {
  const { problem } = layout;
  const large = largeOf(layout);
  if (large.length < 2) return;
  const one = large[random.below(large.length)]!;
  const rank = large.indexOf(one);
  const apart = (piece: number): number => Math.abs(large.indexOf(piece) - rank);
  const unlike = large.filter((piece) => problem.pieces[piece] !== problem.pieces[one]);
  const others = near ? unlike.toSorted((a, b) => apart(a) - apart(b) || a - b).slice(0, NEAREST) : unlike;
  const other = others[random.below(Math.max(1, others.length))];
  if (other === undefined) return;
  const middle = (piece: number) => {
    const { box } = problem.shapes[layout.shape[piece]!]!;
    return {
      x: layout.x[piece]! + (box.left + box.right) / 2,
      y: layout.y[piece]! + (box.low + box.high) / 2,
    };
  };
  const from = middle(one);
  const to = middle(other);
  const at = { x: to.x - from.x, y: to.y - from.y };
  moveTo(layout, one, layout.shape[one]!, layout.x[one]! + at.x, layout.y[one]! + at.y);
  moveTo(layout, other, layout.shape[other]!, layout.x[other]! - at.x, layout.y[other]! - at.y);
  for (let piece = 0; piece < problem.movable; piece++) {
    if (piece === one || piece === other) continue;
    for (const [big, way] of [
      [one, -1],
      [other, 1],
    ] as const) {
      const { outline } = problem.shapes[layout.shape[big]!]!;
      const here = middle(piece);
      if (!isWithin(outline, { x: here.x - layout.x[big]!, y: here.y - layout.y[big]! })) continue;
      moveTo(
        layout,
        piece,
        layout.shape[piece]!,
        layout.x[piece]! + way * at.x,
        layout.y[piece]! + way * at.y,
      );
      break;
    }
  }
  measureAll(layout);
}

/** Of all area, the share that the large pieces cover. */
const LARGE = 0.75;

function largeOf({ problem }: Layout): number[] {
  const area = (piece: number): number =>
    problem.shapes[problem.stances[problem.pieces[piece]!]![0]!]?.hullArea ?? 0;
  const sorted = Array.from({ length: problem.movable }, (_, i) => i).toSorted((a, b) => area(b) - area(a));
  const all = sorted.reduce((sum, piece) => sum + area(piece), 0);
  let covered = 0;
  return sorted.filter((piece) => {
    const isLarge = covered < all * LARGE;
    covered += area(piece);
    return isLarge;
  });
}
