import { put, remeasure, restore, snapshot, totalDepth } from './layout.ts';
import type { Random } from './random.ts';
import { bestPlace, type Seeker } from './seek.ts';

/** How dear an overlap becomes in a round that did not undo it, by its share of the worst; others grow cheaper. */
const DEARER = { least: 1.2, most: 2 };
const CHEAPER = 0.95;
/** Weights are brought down before their sums lose the small ones. */
const DEAREST = 1e8;
/** A round is a gain if it takes that much off the overlap. */
const GAIN = 0.98;

export interface Patience {
  readonly rounds: number;
  readonly strikes: number;
}

/**
 * Parts pieces that overlap: each in turn is put where it overlaps least, and what will not part grows dearer from
 * round to round until something else gives way (guided local search; Egeblad, Nielsen and Odgaard 2007, and Gardeyn
 * and others 2025 for the rounds and strikes). Whether all are apart; if not, the layout is the best that was met.
 */
export function part(seeker: Seeker, { rounds, strikes }: Patience, isOver: () => boolean): boolean {
  const { layout } = seeker;
  let best = snapshot(layout);
  if (best.total === 0) return true;
  layout.weight.set(layout.start);
  for (let strike = 0; strike < strikes;) {
    const before = best.total;
    let without = 0;
    while (without < rounds) {
      round(seeker);
      const total = totalDepth(layout);
      if (total === 0) return true;
      if (total < best.total) {
        if (total < best.total * GAIN) without = 0;
        best = snapshot(layout);
      } else without++;
      if (isOver()) {
        restore(layout, best);
        return false;
      }
    }
    restore(layout, best);
    strike = best.total < before * GAIN ? 0 : strike + 1;
  }
  return false;
}

/** One round: all that overlap are moved once, in random order, and weights follow. */
function round(seeker: Seeker): void {
  const { layout, random } = seeker;
  const { sum, problem } = layout;
  const waiting: number[] = [];
  for (let piece = 0; piece < problem.movable; piece++) if (sum[piece]! > 0) waiting.push(piece);
  shuffle(waiting, random);
  for (const piece of waiting) {
    if (sum[piece] === 0) continue;
    const place = bestPlace(seeker, piece);
    if (place.x === layout.x[piece] && place.y === layout.y[piece] && place.shape === layout.shape[piece])
      continue;
    put(layout, piece, place.shape, place.x, place.y);
    remeasure(layout, piece);
  }
  reweigh(seeker);
}

export function shuffle(all: number[], random: Random): void {
  for (let i = all.length - 1; i > 0; i--) {
    const j = random.below(i + 1);
    const at = all[i]!;
    all[i] = all[j]!;
    all[j] = at;
  }
}

function reweigh({ layout }: Seeker): void {
  const { weight, start, depth, shape } = layout;
  const size = shape.length * shape.length;
  let worst = 0;
  for (let at = 0; at < size; at++) if (depth[at]! > worst) worst = depth[at]!;
  if (worst === 0) return;
  let dearest = 0;
  for (let at = 0; at < size; at++) {
    const deep = depth[at]!;
    const was = weight[at]!;
    if (deep > 0) {
      const now = was * (DEARER.least + ((DEARER.most - DEARER.least) * deep) / worst);
      weight[at] = now;
      if (now > dearest) dearest = now;
    } else if (was > start[at]!) weight[at] = Math.max(start[at]!, was * CHEAPER);
  }
  if (dearest > DEAREST)
    for (let at = 0; at < size; at++) weight[at] = Math.max(start[at]!, weight[at]! * 1e-6);
}
