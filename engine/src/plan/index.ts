export { hasProblems, planSkirt, type SkirtPlan, type Stage, type StagedNotice } from './plan.ts';
