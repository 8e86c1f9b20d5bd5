import {
  asksForSearch,
  clothJobOf,
  layFound,
  layKinds,
  liningOptions,
  searchCloth,
  wantedOf,
  type ClothEffort,
  type ClothOptions,
  type ClothPlan,
  type FoundCloth,
  type LayKind,
  type WhichCloth,
} from '../cloth/index.ts';
import type { SkirtRequest } from '../request/index.ts';
import { planOnCloth, planSkirt, type SkirtPlan } from './plan.ts';

/** How the effort is parted between the ways: the most where most is to be gained. */
const WEIGHT: Readonly<Record<LayKind, number>> = {
  open: 6,
  'lengthwise fold': 2,
  'crosswise fold': 2,
  'double fold': 0.1,
};

/**
 * The plan of a skirt with a closer lay of each of its cloths, where one takes less than the lay that the plan goes on
 * with; supplies and sewing follow. The same request, seed and evaluations give the same plan.
 */
export function searchPlan(request: SkirtRequest, effort: ClothEffort): SkirtPlan {
  const plan = planSkirt(request);
  const { cloth, lining, contrast } = plan;
  const ofLining = liningOptions(plan.skirt, request.cloth);
  const tasks: Task[] = [
    { which: 'own', options: request.cloth, plan: cloth },
    ...(lining && ofLining ? [{ which: 'lining' as const, options: ofLining, plan: lining }] : []),
    ...contrast.map((each): Task => ({ which: each.at, options: each.options, plan: each.cloth })),
  ];
  const weights = tasks.map(({ options }) => waysOf(options).reduce((sum, way) => sum + WEIGHT[way], 0));
  const all = weights.reduce((sum, each) => sum + each, 0);
  let from = 0;
  const found = tasks.map((task, i) => {
    const share = (weights[i] ?? 0) / all;
    const closer = closerPlan(plan, task, part(effort, from, from + share));
    from += share;
    return { which: task.which, plan: closer };
  });
  const of = (which: WhichCloth): ClothPlan | undefined => found.find((each) => each.which === which)?.plan;
  return planOnCloth(plan, {
    cloth: of('own') ?? cloth,
    lining: of('lining') ?? lining,
    contrast: contrast.map((each) => ({ ...each, cloth: of(each.at) ?? each.cloth })),
  });
}

interface Task {
  readonly which: WhichCloth;
  readonly options: ClothOptions;
  readonly plan: ClothPlan;
}

const waysOf = ({ lay }: ClothOptions): readonly LayKind[] => (lay === 'auto' ? layKinds : [lay]);

/** A part of an effort: evaluations and time in the same share. */
function part(effort: ClothEffort, from: number, to: number): ClothEffort {
  const { evaluations, spent } = effort;
  return {
    ...effort,
    ...(evaluations === undefined ? {} : { evaluations: Math.max(1, Math.floor(evaluations * (to - from))) }),
    ...(spent ? { spent: () => (spent() - from) / (to - from) } : {}),
  };
}

/** Every way is searched; a way's lay is replaced where its closer one takes less, and the least of all is gone on with. */
function closerPlan(
  { skirt, request }: SkirtPlan,
  { which, options, plan }: Task,
  effort: ClothEffort,
): ClothPlan {
  const wanted = wantedOf(skirt, request.contrast, which, request.wearer);
  if (!wanted) return plan;
  const job = clothJobOf(options, [wanted]);
  const ways = waysOf(options);
  const all = ways.reduce((sum, way) => sum + WEIGHT[way], 0);
  let from = 0;
  const found = ways.map((way): FoundCloth => {
    const share = WEIGHT[way] / all;
    const closer = searchCloth(job, way, part(effort, from, from + share));
    from += share;
    return closer;
  });
  const least = found
    .filter(({ fits }) => fits)
    .reduce<FoundCloth | null>((best, each) => (best && !takesLess(each, best) ? best : each), null);
  const { chosen } = plan;
  // What is laid by hand neither matches nor keeps room nor knows of other lengths: then only a found lay will do.
  const mustSearch = asksForSearch(options);
  if (!least && mustSearch) return { ...plan, notices: [...plan.notices, ...refusalsOf(found)] };
  if (!least || (chosen.fits && !mustSearch && !takesLess(least, chosen))) return plan;
  const lay = layFound(least);
  return {
    ...plan,
    lays: plan.lays.map((each) => (each.kind === lay.kind ? lay : each)),
    chosen: lay,
    notices: [...job.fabric.notices, ...least.notices],
  };
}

/** What stands in the way of each lay: said once, of the first that names it. */
function refusalsOf(found: readonly FoundCloth[]): ClothPlan['notices'] {
  const all = found.flatMap(({ notices }) => notices.filter(({ level }) => level === 'problem'));
  return all.filter(({ code }, i) => all.findIndex((each) => each.code === code) === i).slice(0, 1);
}

interface Takes {
  readonly toBuy: FoundCloth['toBuy'];
  readonly clothBefore: FoundCloth['clothBefore'];
}

/** Less to buy; of as much, less that is used. */
const takesLess = (one: Takes, other: Takes): boolean =>
  Math.abs(one.toBuy.value - other.toBuy.value) > HAIR
    ? one.toBuy.value < other.toBuy.value
    : one.clothBefore.value < other.clothBefore.value - HAIR;

const HAIR = 1e-6;
