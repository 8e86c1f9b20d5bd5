export {
  fromAll,
  fromCloth,
  fromLengths,
  type FromCloth,
  type FromClothFigureCode,
  type FromClothNoticeCode,
} from './fromCloth/index.ts';
export {
  hasProblems,
  planOnCloth,
  planSkirt,
  type SkirtPlan,
  type Stage,
  type StagedNotice,
} from './plan.ts';
export { handlesOf, moved, type Handle, type HandleName } from './handles.ts';
