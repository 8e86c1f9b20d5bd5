import { within, type ClothEffort } from '../cloth/index.ts';

/** An effort that several searches share. */
export type Sought = Pick<ClothEffort, 'seed' | 'evaluations' | 'spent'>;

/**
 * Parts an effort between searches by their weights. Each call gives the next search its part: of the evaluations a fixed
 * one; of the time its share of what is left when it begins, so that what one search leaves goes to the next.
 */
export function sharing(effort: Sought, weights: readonly number[]): () => Sought {
  let at = 0;
  const { seed, evaluations, spent } = effort;
  const sum = (from: number): number => weights.slice(from).reduce((all, each) => all + each, 0);
  const whole = sum(0);
  return () => {
    const weight = weights[at] ?? 0;
    const left = sum(at);
    at += 1;
    const shared: { evaluations?: number; spent?: () => number } = {};
    if (evaluations !== undefined)
      shared.evaluations = Math.max(1, Math.floor((evaluations * weight) / Math.max(whole, weight, 1)));
    if (spent) {
      const from = Math.min(1, spent());
      const room = left > 0 ? ((1 - from) * weight) / left : 0;
      const part = within(spent, from, from + room);
      shared.spent = () => (room > 0 ? Math.max(0, part()) : 1);
    }
    return { seed, ...shared };
  };
}
