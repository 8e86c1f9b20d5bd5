import { searchCloth, wantedOf, type ClothJob, type FoundCloth } from '../cloth/index.ts';
import { areaOf } from '../geometry/index.ts';
import type { ClassRequest } from '../request/index.ts';
import { isByEye, type ClassPlan } from './class.ts';
import type { ClothShare, SharedCloth } from './shares.ts';
import { jobOf, planClass, waysByHand } from './plan.ts';
import { sharing, type Sought } from './effort.ts';

/** The skirts that can be cut from what is at hand of one cloth, and how they lie. */
export interface FromShelf {
  /** Labels, in the order of the class. */
  readonly skirts: readonly string[];
  /** Null where not one can be cut. */
  readonly lay: FoundCloth | null;
}

/** How many skirts of a class can be cut from what is on the shelf, nothing bought. */
export interface HowMany {
  /** Its key in the plan of the class. */
  readonly cloth: string;
  /** In the order of the class: each skirt that still finds room gets it. */
  readonly inOrder: FromShelf;
  /** As many as can be: the smallest first. */
  readonly most: FromShelf;
}

/**
 * The reverse question: how many skirts of this class from what is on the shelf. A cloth of which nothing is at hand
 * has no answer. A skirt is taken where a lay is known that holds it: by hand, or found with its share of the effort; without
 * an effort by hand only, at once. Where everybody's lies in the lay that the plan takes and nothing is bought for it, that is
 * the answer.
 */
export function howMany(
  request: ClassRequest,
  effort: Sought | null,
  plan: Pick<ClassPlan, 'cloths'> = planClass(request),
): HowMany[] {
  const shelves = plan.cloths.flatMap((cloth) => {
    const job = jobOf(cloth);
    const lengths = job.lengths.filter(({ length }) => length !== null && length > 0);
    const [first, ...others] = lengths;
    return first ? [{ cloth, job: { ...job, lengths: [first, ...others] as const } }] : [];
  });
  // Both answers of every cloth try each skirt once.
  const turns = shelves.flatMap(({ cloth: { shares } }) => [...shares, ...shares].map(() => 1));
  const share = effort ? sharing(effort, turns) : () => null;
  return shelves.map(({ cloth, job }) => {
    const { chosen } = cloth;
    if (chosen.fits && chosen.toBuy.value === 0 && (!effort || !isByEye(chosen))) {
      const all = { skirts: cloth.shares.map(({ skirt: { label } }) => label), lay: chosen };
      return { cloth: cloth.key, inOrder: all, most: all };
    }
    const tries = (shares: readonly ClothShare[]): FromShelf => taken(cloth, shares, job, share);
    const inOrder = tries(cloth.shares);
    const small = cloth.shares.toSorted((one, other) => coverOf(one) - coverOf(other));
    const smallest = tries(small);
    return {
      cloth: cloth.key,
      inOrder,
      most: smallest.skirts.length > inOrder.skirts.length ? smallest : inOrder,
    };
  });
}

/** Takes one skirt after the other as long as they can all be laid. */
function taken(
  cloth: SharedCloth,
  order: readonly ClothShare[],
  job: ClothJob,
  share: () => Sought | null,
): FromShelf {
  let shares: readonly ClothShare[] = [];
  let lay: FoundCloth | null = null;
  for (const next of order) {
    const effort = share();
    const wished = [...shares, next];
    const found = layOf({ ...cloth, shares: wished }, job, effort);
    if (found) [shares, lay] = [wished, found];
  }
  const inOrder = cloth.shares.filter((each) => shares.includes(each));
  return { skirts: inOrder.map(({ skirt: { label } }) => label), lay };
}

/** A lay of these skirts on what is at hand: by hand where that is enough, else sought. */
function layOf(cloth: SharedCloth, { lengths, fabric }: ClothJob, effort: Sought | null): FoundCloth | null {
  const job: ClothJob = { fabric, lengths, wanted: jobOf(cloth).wanted };
  const room = lengths.reduce((sum, { length, width }) => sum + (length ?? 0) * width, 0);
  if (cloth.shares.reduce((sum, each) => sum + coverOf(each), 0) > room) return null;
  // What hands do not keep has to be sought, where there is time for it.
  const byHand = waysByHand(cloth.shares, job).filter((each) => each.fits && (!effort || !isByEye(each)));
  const { lay: wished } = cloth.options;
  const isWished = ({ kind }: FoundCloth): boolean => wished === 'auto' || kind === wished;
  const known = byHand.find(isWished);
  if (known || !effort) return known ?? byHand[0] ?? null;
  const found = searchCloth(job, wished === 'auto' ? 'open' : wished, effort);
  return found.fits ? found : (byHand[0] ?? null);
}

/** Cloth that lies under the outlines of what one skirt takes, after the wash: area, mm². */
function coverOf({ which, skirt: { plan } }: ClothShare): number {
  const wanted = wantedOf(plan.skirt, plan.request.contrast, which);
  return [...(wanted?.mains ?? []), ...(wanted?.parts ?? [])].reduce(
    (sum, { piece, copies }) => sum + copies.length * areaOf(piece.outline),
    0,
  );
}
