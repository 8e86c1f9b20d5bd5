import {
  classOfOne,
  planClass,
  type ClassPlan,
  type PlannedCloth,
  type SkirtPlan,
  type SkirtRequest,
} from '@ribbonwright/engine';

const known = new WeakMap<SkirtRequest, ClassPlan>();

/** A skirt by itself, its cloths laid by hand, in the form in which lays are searched and drawn to chalk from. */
export function sharedPlan(request: SkirtRequest): ClassPlan {
  const found = known.get(request) ?? planClass(classOfOne(request));
  known.set(request, found);
  return found;
}

/** The cloths of a plan laid as the skirt is laid now, where that is not the way that takes least. */
export const asLaid = (shared: ClassPlan, plan: SkirtPlan): readonly PlannedCloth[] =>
  shared.cloths.map((cloth) => {
    if (!cloth.shares.some(({ which }) => which === 'own')) return cloth;
    const way = cloth.ways.find(({ kind, fits }) => kind === plan.cloth.chosen.kind && fits);
    return way ? { ...cloth, chosen: way } : cloth;
  });
