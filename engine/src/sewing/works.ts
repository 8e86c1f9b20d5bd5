import type { Work, WorkName } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { goRound, type Bench } from './bench.ts';

/** How the panels are joined: a front and a back or widths at the sides, other panels side by side, strips of tiers end to end. */
export type Joined = 'sides' | 'panels' | 'strips';

export function joinedAs({ skirt }: Pick<Bench, 'skirt'>): Joined {
  if (skirt.rounds.length > 1) return 'strips';
  return skirt.marking === 'at the fold' || skirt.marking === 'straight widths' ? 'sides' : 'panels';
}

/** Works of the panels themselves; those of waist and extras bear the same names at times. */
export function panelWorks({ skirt }: Pick<Bench, 'skirt'>): readonly Work[] {
  const { waist, extras } = skirt;
  const others = [waist, extras.pockets, extras.slits, extras.lining, extras.tucks];
  const theirs = new Set(others.flatMap((each) => each?.works ?? []));
  return skirt.works.filter((work) => !theirs.has(work));
}

export const named = (works: readonly Work[], ...names: readonly WorkName[]): readonly Work[] =>
  works.filter(({ name }) => names.includes(name));

/** Seams between the panels. In one round of panels a join of strips is one of a tie. */
export const panelSeams = (bench: Pick<Bench, 'skirt'>): readonly Work[] =>
  named(
    panelWorks(bench),
    ...(joinedAs(bench) === 'strips' ? (['strip join'] as const) : (['side seam', 'gore seam'] as const)),
  );

export const countOf = (works: readonly Work[]): number => works.reduce((sum, { count }) => sum + count, 0);

export const lengthOf = (works: readonly Work[]): Mm =>
  mm(works.reduce((sum, { count, each }) => sum + count * each.value, 0));

/** The works of these that are sewn first, all but `left` of each, and those that are left. */
function apart(works: readonly Work[], left: (at: number) => number): { first: Work[]; last: Work[] } {
  const some = (count: (work: Work, at: number) => number): Work[] =>
    works.map((work, at) => ({ ...work, count: count(work, at) })).filter(({ count }) => count > 0);
  const last = (work: Work, at: number): number => Math.min(work.count, left(at));
  return { first: some((work, at) => work.count - last(work, at)), last: some(last) };
}

/**
 * Seams that are sewn before rows that go round, and those that are left: one for each round of panels, in which the ribbons' ends
 * are caught. What does not close into a round has no such seam. Other rows go on before any seam.
 */
export function seamsInTurn(bench: Pick<Bench, 'skirt' | 'ribbons'>): {
  readonly first: readonly Work[];
  readonly last: readonly Work[];
} {
  const works = panelSeams(bench);
  if (!goRound(bench)) return { first: [], last: works };
  if (bench.skirt.overlap) return { first: works, last: [] };
  const closed = works.length - bench.skirt.rounds.length;
  return apart(works, (at) => (at >= closed ? 1 : 0));
}

/** Pocket bags closed with the first seams and with the last: a seam without a pocket is left for the last where there is one. */
export function bagsInTurn(bench: Pick<Bench, 'skirt' | 'ribbons'>): ReturnType<typeof seamsInTurn> {
  const bags = named(bench.skirt.extras.pockets?.works ?? [], 'pocket bag');
  const { first } = seamsInTurn(bench);
  // Pockets lie in the first round.
  const before = Math.min(countOf(bags), first[0]?.count ?? 0);
  return apart(bags, () => countOf(bags) - before);
}

/** Length along which the raw edges of these works are kept from fraying. */
export function edgesOf({ lines, skirt }: Pick<Bench, 'lines' | 'skirt'>, works: readonly Work[]): Mm {
  const of = ({ name, count, each }: Work): number => {
    const whole = skirt.works.find((work) => work.name === name && work.each === each);
    const line = lines.find((all) => all.name === 'edge finish' && all.length.inputs['each'] === each);
    return whole && line ? (line.length.value * count) / whole.count : 0;
  };
  return mm(works.reduce((sum, each) => sum + of(each), 0));
}
