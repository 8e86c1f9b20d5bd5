import type { SkirtPlan } from '../../../plan/index.ts';

/** Whether the pieces are marked one by one, or are unlike, so that a chart of them says more than the folded cloth. */
export const isCharted = ({ skirt }: Pick<SkirtPlan, 'skirt'>): boolean =>
  skirt.marking === 'by piece' || skirt.marking === 'swung' || skirt.rounds.length > 1;
