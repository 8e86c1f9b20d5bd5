import {
  layAll,
  layContrast,
  layFound,
  layLining,
  notAsWished,
  type ClothPlan,
  type FoundCloth,
  type LayKind,
  type WhichCloth,
} from '../cloth/index.ts';
import type { Notice } from '../figure/index.ts';
import { planOnCloth, planSkirt, type SkirtPlan } from '../plan/index.ts';
import { classOfOne, type SkirtRequest } from '../request/index.ts';
import { isCloser, noticed, withFound, type ClassPlan, type PlannedCloth } from './class.ts';
import { planClass } from './plan.ts';

/** A lay that was found earlier, and which cloth of the class (by its key) it is of. */
export interface ClothLay {
  readonly cloth: string;
  readonly found: FoundCloth;
}

/** The plan of a class with lays that were found earlier, each where it is better than what was known. */
export const withLays = (plan: ClassPlan, lays: readonly ClothLay[]): ClassPlan =>
  lays.reduce((each, { cloth, found }) => withFound(each, cloth, found), plan);

/** What a search came to, to be kept: its lays that are in the plan, and of each cloth what is taken, found or by hand. */
export function keptLays({ cloths }: ClassPlan, lays: readonly ClothLay[]): ClothLay[] {
  const inPlan = lays.filter(({ cloth, found }) =>
    cloths.some(({ key, ways }) => key === cloth && ways.includes(found)),
  );
  const others = cloths.filter(({ chosen }) => chosen.fits && !inPlan.some(({ found }) => found === chosen));
  return [...inPlan, ...others.map(({ key, chosen }) => ({ cloth: key, found: chosen }))];
}

/** Cloths that lie closer than they do in another plan of the same class. */
export const closerThan = ({ cloths }: ClassPlan, before: ClassPlan): PlannedCloth[] =>
  cloths.filter(({ key, chosen }) => {
    const was = before.cloths.find((each) => each.key === key);
    return was !== undefined && isCloser(chosen, was.chosen);
  });

/**
 * The plan of a skirt by itself, laid as a search left it; supplies and sewing follow. A cloth that was searched is laid in
 * the way that takes least, by hand where nothing closer was found; any other stays as it is.
 */
export function planLaid(request: SkirtRequest, lays: readonly ClothLay[]): SkirtPlan {
  const plan = planSkirt(request);
  if (lays.length === 0) return plan;
  const known = new Map<WhichCloth, PlannedCloth>();
  for (const cloth of withLays(planClass(classOfOne(request)), lays).cloths)
    if (cloth.chosen.fits && lays.some(({ cloth: key }) => key === cloth.key))
      for (const { which } of cloth.shares) known.set(which, cloth);
  if (known.size === 0) return plan;
  const laid = (which: WhichCloth, before: ClothPlan): ClothPlan => {
    const cloth = known.get(which);
    if (!cloth) return before;
    const { chosen, ways } = cloth;
    const byHand = before.chosen.kind === chosen.kind ? before : inTheWay(plan, which, chosen.kind);
    const isFound = (way: FoundCloth): boolean => lays.some(({ found }) => found === way);
    return onFound(byHand ?? before, ways.filter(isFound), cloth);
  };
  return planOnCloth(plan, {
    cloth: laid('own', plan.cloth),
    lining: plan.lining && laid('lining', plan.lining),
    contrast: plan.contrast.map((each) => ({ ...each, cloth: laid(each.at, each.cloth) })),
  });
}

/** A cloth of the skirt laid by hand in one way. */
function inTheWay(
  { skirt, request }: SkirtPlan,
  which: WhichCloth,
  lay: LayKind,
): ClothPlan | null | undefined {
  const { cloth, contrast } = request;
  if (which === 'own') return layAll(skirt, { ...cloth, lay }, contrast);
  if (which === 'lining') return layLining(skirt, cloth, lay);
  const asked = contrast.map((each, at) =>
    at === which ? { ...each, cloth: { ...each.cloth, lay } } : each,
  );
  return layContrast(skirt, asked).find(({ at }) => at === which)?.cloth;
}

function onFound(
  cloth: ClothPlan,
  ways: readonly FoundCloth[],
  { chosen, options }: PlannedCloth,
): ClothPlan {
  const lays = ways.map(layFound);
  const found = ways.includes(chosen) ? lays.find(({ kind }) => kind === chosen.kind) : undefined;
  const taken = found ?? cloth.chosen;
  const told = found
    ? [...keptNotices(cloth), ...chosen.notices]
    : cloth.notices.filter(({ code }) => code !== 'cloth.layWished');
  return {
    ...cloth,
    lays: cloth.lays.map((lay) => lays.find(({ kind }) => kind === lay.kind) ?? lay),
    chosen: taken,
    notices: [...told, ...notAsWished(options, taken)],
  };
}

/** What is known of a cloth however it lies. */
function keptNotices({ notices, chosen }: ClothPlan): Notice[] {
  const ofLay = new Set([...OF_ANY_LAY, ...chosen.notices.map(({ code }) => code)]);
  return notices.filter(({ code }) => !ofLay.has(code));
}

/** What is told of the lay that is taken, whichever it is. */
const OF_ANY_LAY = [
  'cloth.noLayFits',
  'cloth.laidByHand',
  'cloth.layWished',
  'cloth.printOnItsSide',
  'cloth.notEnough',
  'cloth.notEnoughFor',
] as const;

/** A skirt by itself as a class of one, each of its cloths laid in the way in which the skirt's plan has it. */
export function asLaid(shared: ClassPlan, plan: SkirtPlan): ClassPlan {
  const cloths = shared.cloths.map((cloth) => {
    const [share] = cloth.shares;
    const kind = share && clothOf(plan, share.which)?.chosen.kind;
    const way = cloth.ways.find((each) => each.kind === kind && each.fits);
    return way ? { ...cloth, chosen: way } : cloth;
  });
  return noticed({ ...shared, cloths });
}

function clothOf({ cloth, lining, contrast }: SkirtPlan, which: WhichCloth): ClothPlan | null | undefined {
  if (which === 'own') return cloth;
  return which === 'lining' ? lining : contrast.find(({ at }) => at === which)?.cloth;
}

/**
 * The cloths of a plan that `planLaid` made of these lays, in the form to chalk from; null where none of the lays was
 * closer than what is laid by hand.
 */
export function laidClass(plan: SkirtPlan, lays: readonly ClothLay[]): ClassPlan | null {
  const shared = withLays(planClass(classOfOne(plan.request)), lays);
  const laid = asLaid(shared, plan);
  return laid.cloths.some(({ chosen }) => lays.some(({ found }) => found === chosen)) ? laid : null;
}
