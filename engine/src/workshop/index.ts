export {
  classHasProblems,
  isByEye,
  toldOf,
  withFound,
  type ClassNotice,
  type ClassPlan,
  type PlannedCloth,
} from './class.ts';
export type { ClothShare, PlannedSkirt } from './shares.ts';
export { asLaid, closerThan, keptLays, laidClass, planLaid, withLays, type ClothLay } from './laid.ts';
export { jobOf, planClass } from './plan.ts';
export { searchPlan } from './searchPlan.ts';
export { searchClass, type ClassEffort } from './search.ts';
export { besideLays, laidFromShelf, shortOf, toldBeside } from './laidFromShelf.ts';
export { howMany, type HowMany, type FromShelf } from './howMany.ts';
