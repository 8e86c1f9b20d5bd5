import {
  classOfOne,
  planClass,
  type Change,
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

/** Each cloth of a plan laid as the skirt is laid now, where that is not the way that takes least. */
export const asLaid = (shared: ClassPlan, plan: SkirtPlan): readonly PlannedCloth[] =>
  shared.cloths.map((cloth) => {
    const [share] = cloth.shares;
    const laid =
      share?.which === 'own' ? plan.cloth : plan.contrast.find(({ at }) => at === share?.which)?.cloth;
    const way = laid && cloth.ways.find(({ kind, fits }) => kind === laid.chosen.kind && fits);
    return way ? { ...cloth, chosen: way } : cloth;
  });

/** Where one of a skirt's cloths stands in its document. */
export const pathOf = (which: SkirtPlan['cloths'][number]['which']): Change['path'] =>
  which === 'own' ? ['cloth'] : ['contrast', which, 'cloth'];
