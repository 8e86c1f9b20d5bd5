import { check } from './check.ts';
import { layFirst, slideBack } from './first.ts';
import { layGiven } from './given.ts';
import {
  emptyLayout,
  lengthOf,
  measureAll,
  put,
  snapshot,
  totalDepth,
  type Layout,
  type Snapshot,
} from './layout.ts';
import { lowerBound } from './bound.ts';
import { noMeetings, overlapsOf, type Overlaps } from './overlaps.ts';
import { placementOf, problemOf, type Problem } from './problem.ts';
import { randomFrom } from './random.ts';
import { seekerOf } from './seek.ts';
import { compress, explore, trimmed } from './tighten.ts';
import type { Effort, Packing, PackingJob, PackingResult, Placement } from './job.ts';

/** Share of the time in which new layouts are sought; in the rest the best is only pressed together. */
const EXPLORING = 0.8;

/**
 * Packs a strip: a first answer at once, then better ones until the effort is spent or nothing more can be saved. Never
 * throws: what can't be packed at all is refused with the reason. The same job, seed and evaluations give the same
 * answer on every machine. Packings of outlines that are alike, one after the other, are sooner under way with the same
 * `meetings`.
 */
export function pack(job: PackingJob, effort: Effort, meetings = noMeetings()): PackingResult {
  const refusals = check(job);
  if (refusals.length > 0) return { ok: false, refusals };
  const problem = problemOf(job);
  const bound = lowerBound(problem);
  const overlaps = overlapsOf(problem.shapes, meetings);
  const random = randomFrom(effort.seed);
  const given = job.start ? givenLayout(problem, overlaps, job.start) : null;
  const layout = given ?? bareLayout(problem, overlaps);
  if (!given && !layFirst(layout, random)) return { ok: false, refusals: [{ code: 'keepOut' }] };
  measureAll(layout);
  layout.end = lengthOf(layout);
  let known = snapshot(layout);
  const enough = (end: number): boolean =>
    end <= bound || sold(job, end / problem.scale) <= sold(job, bound / problem.scale);
  const answer = (found: Snapshot): Packing => ({
    placements: placementsOf(problem, found),
    length: found.end / problem.scale,
    // Pieces may lie on one another by a hair.
    lowerBound: Math.min(bound, found.end) / problem.scale,
    evaluations: layout.tried,
    proven: enough(found.end),
  });
  effort.better?.(answer(known));
  const most = effort.evaluations ?? Infinity;
  const share = (): number => Math.max(layout.tried < most ? layout.tried / most : 1, effort.spent?.() ?? 0);
  const progress = {
    share,
    enough,
    better: (found: Snapshot) => effort.better?.(answer(found)),
  };
  if (problem.movable > 0 && (effort.evaluations !== undefined || effort.spent)) {
    const seeker = seekerOf(layout, random);
    if (given) {
      slideBack(layout, () => share() >= 1);
      known = trimmed(layout);
    }
    known = explore(seeker, known, EXPLORING, progress);
    known = compress(seeker, known, progress);
  }
  return { ok: true, packing: answer(known) };
}

/** A layout of what is fixed, with room for all else. */
function bareLayout(problem: Problem, overlaps: Overlaps): Layout {
  const layout = emptyLayout(problem, overlaps, farthestOf(problem));
  for (const [i, { shape, x, y }] of problem.fixed.entries()) put(layout, problem.movable + i, shape, x, y);
  return layout;
}

/** The layout to begin with; null where it is none of all pieces, or some lie on others. */
function givenLayout(problem: Problem, overlaps: Overlaps, start: readonly Placement[]): Layout | null {
  const layout = bareLayout(problem, overlaps);
  if (!layGiven(layout, start)) return null;
  measureAll(layout);
  return totalDepth(layout) === 0 ? layout : null;
}

/** No first answer is longer: every piece behind the one before it and every keep-out, with room to find its lattice. */
function farthestOf({ movable, pieces, stances, shapes, fixed, fixedEnd, job, scale }: Problem): number {
  const longest = pieces.slice(0, movable).reduce((sum, item) => {
    const widths = (stances[item] ?? []).map((at) => {
      const body = shapes[at]?.body;
      return body ? body.right - body.left : 0;
    });
    const step = job.items[item]?.lattice?.x?.step ?? 0;
    return sum + 1.5 * Math.max(0, ...widths) + 2 * step * scale;
  }, 0);
  const blocked = Math.max(fixedEnd, ...fixed.map(({ shape, x }) => x + (shapes[shape]?.body.right ?? 0)));
  return Math.ceil(longest + blocked) + 2;
}

/** What a length costs, as lengths are sold. */
function sold({ sold: shop }: PackingJob, length: number): number {
  if (!shop || shop.step <= 0) return length;
  return Math.max(shop.least, Math.ceil(length / shop.step - 1e-9) * shop.step);
}

function placementsOf(problem: Problem, { shape, x, y }: Snapshot): Packing['placements'] {
  return Array.from({ length: problem.pieces.length })
    .map((_, piece) => placementOf(problem, shape[piece]!, x[piece]!, y[piece]!))
    .filter(({ item }) => item >= 0);
}
