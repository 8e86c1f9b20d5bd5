export { fromCloth, type FromCloth, type FromClothFigureCode } from './fromCloth.ts';
export {
  hasProblems,
  planOnCloth,
  planSkirt,
  type SkirtPlan,
  type Stage,
  type StagedNotice,
} from './plan.ts';
export { handlesOf, moved, type Handle, type HandleName } from './handles.ts';
