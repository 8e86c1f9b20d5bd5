import {
  classOfOne,
  planClass,
  type Change,
  type ClassPlan,
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

/** Where one of a skirt's cloths stands in its document. */
export const pathOf = (which: SkirtPlan['cloths'][number]['which']): Change['path'] =>
  which === 'own' ? ['cloth'] : ['contrast', which, 'cloth'];
