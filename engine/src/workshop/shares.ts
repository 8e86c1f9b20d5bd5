import { liningOptions, type ClothOptions, type Lay, type WhichCloth } from '../cloth/index.ts';
import type { SkirtPlan } from '../plan/index.ts';
import type { ClassRequest } from '../request/index.ts';

/** One skirt of a class, planned as if it stood alone. */
export interface PlannedSkirt {
  /** What stands on its pieces. */
  readonly label: string;
  /** Which of the class's cloths it is cut from, and which its other cloths are; null for one of its own. */
  readonly cloth: string;
  readonly contrast: readonly (string | null)[];
  /** Its other cloths as they are described where they are no class's, with the lengths of them at hand. */
  readonly described: readonly ClothOptions[];
  readonly plan: SkirtPlan;
}

/** What one skirt takes of one cloth. */
export interface ClothShare {
  readonly skirt: PlannedSkirt;
  readonly which: WhichCloth;
  /** Every way to lay it by itself. */
  readonly lays: readonly Lay[];
}

/** One cloth, and all that is cut from it. */
export interface SharedCloth {
  /** Told apart from every other cloth of the class. */
  readonly key: string;
  /** What it is called; may be empty. */
  readonly name: string;
  readonly options: ClothOptions;
  readonly shares: readonly ClothShare[];
}

/**
 * The cloths of a class that something is cut from: those that it names, in their order; then linings and other cloths
 * that single skirts describe, those that are alike as one.
 */
export function sharedCloths(request: ClassRequest, skirts: readonly PlannedSkirt[]): SharedCloth[] {
  const found = new Map<string, SharedCloth>(
    request.cloths.map(({ name, options }) => [name, { key: name, name, options, shares: [] }]),
  );
  for (const skirt of skirts)
    for (const { key, name, options, share } of cutFrom(skirt)) {
      const before = found.get(key) ?? { key, name, options, shares: [] };
      found.set(key, { ...before, shares: [...before.shares, share] });
    }
  return [...found.values()].filter(({ shares }) => shares.length > 0);
}

function cutFrom(
  skirt: PlannedSkirt,
): (Pick<SharedCloth, 'key' | 'name' | 'options'> & { readonly share: ClothShare })[] {
  const { plan, cloth, contrast, described } = skirt;
  const share = (which: WhichCloth, lays: readonly Lay[]): ClothShare => ({ skirt, which, lays });
  const own = { key: cloth, name: cloth, options: plan.request.cloth, share: share('own', plan.cloth.lays) };
  const others = plan.contrast.map(({ at, options: planned, cloth: { lays } }) => {
    const name = contrast[at] ?? null;
    const options = described[at] ?? planned;
    return { key: name ?? keyOf(options), name: name ?? options.name, options, share: share(at, lays) };
  });
  const lining = liningOptions(plan.skirt, plan.request.cloth);
  const linings =
    lining && plan.lining
      ? [
          {
            key: keyOf(lining),
            name: lining.name,
            options: lining,
            share: share('lining', plan.lining.lays),
          },
        ]
      : [];
  return [own, ...others, ...linings];
}

/** No name of a document begins like this: names are no objects. */
const keyOf = (options: ClothOptions): string => JSON.stringify(options);
