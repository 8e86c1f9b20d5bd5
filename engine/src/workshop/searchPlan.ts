import type { SkirtPlan } from '../plan/index.ts';
import { classOfOne, type SkirtRequest } from '../request/index.ts';
import type { Sought } from './effort.ts';
import { planLaid } from './laid.ts';
import { searchClass } from './search.ts';

/**
 * The plan of a skirt with the closest lay that was found of each of its cloths, where one takes less than what is laid
 * by hand; supplies and sewing follow. A skirt is searched as a class of one.
 */
export function searchPlan(request: SkirtRequest, effort: Sought): SkirtPlan {
  const { cloths } = searchClass(classOfOne(request), effort);
  const lays = cloths.flatMap(({ key, ways }) => ways.map((found) => ({ cloth: key, found })));
  return planLaid(request, lays);
}
