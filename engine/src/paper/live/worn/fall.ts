import type { SkirtPlan } from '../../../plan/index.ts';
import { within } from './stance.ts';

/** How the hem falls: lengths in millimetres of cloth. */
export interface Fall {
  /** Round of the oval that the hem hangs about; what the hem has more lies in its folds. */
  readonly round: number;
  /** Whole folds seen from one side. */
  readonly folds: number;
  /** How deep they are: 0 flat, 1 as deep as they are ever drawn. */
  readonly depth: number;
}

/** Of the cloth that a flare adds, and that gathers add, the part that widens the hem; folds take the rest. */
const SPREAD = { flare: 0.85, gathers: 0.5 };
/** Widening falls off: no hem is drawn this many times the widest girth wider, however full. */
const MOST_WIDENING = 2;
const FOLDS = { least: 4, most: 12 };

/**
 * The rule for a hanging hem. Cloth beyond the widest girth spreads a cone where it was cut as flare, and mostly
 * falls in folds where it was gathered; the more of it there is, the more goes into folds. More hem on
 * the same top is never narrower and never has fewer folds. Common practice, no source.
 */
export function fallOf({ skirt, body }: SkirtPlan): Fall {
  const hem = Math.max(1, skirt.hemRound.value);
  const top = skirt.opening.value;
  const widest = body.widest.value;
  const atSeams = gatheredAtSeams(skirt.rounds);
  const round = hungRound({ top, hem, widest, atSeams });
  return {
    round,
    folds: within(FOLDS.least, Math.round(2.6 + 2.4 * (hem / widest)), FOLDS.most),
    depth: within(0, (hem / round - 0.98) / 0.75, 1),
  };
}

/** Round that the lower edge of each round of panels hangs about, from the top down; the last is the hem's. */
export function hungRounds({ skirt, body }: SkirtPlan): number[] {
  const { rounds } = skirt;
  const widest = body.widest.value;
  return rounds.map(({ bottom }, i) => {
    const hem = Math.max(1, i === rounds.length - 1 ? skirt.hemRound.value : bottom.value);
    const atSeams = gatheredAtSeams(rounds.slice(0, i + 1));
    return hungRound({ top: skirt.opening.value, hem, widest, atSeams });
  });
}

type Rounds = SkirtPlan['skirt']['rounds'][number][];

/** Cloth that rounds have more than those they hang from. */
const gatheredAtSeams = (rounds: Readonly<Rounds>): number =>
  rounds.reduce(
    (sum, { top }, i) => sum + Math.max(0, top.value - (rounds[i - 1]?.bottom.value ?? top.value)),
    0,
  );

interface Hung {
  readonly top: number;
  readonly hem: number;
  readonly widest: number;
  readonly atSeams: number;
}

function hungRound({ top, hem, widest, atSeams }: Hung): number {
  const most = Math.max(0, hem - Math.max(top, widest));
  const seamed = Math.min(atSeams, most);
  const gathered = Math.max(0, Math.min(top, hem) - widest) + seamed;
  const extra = SPREAD.gathers * gathered + SPREAD.flare * (most - seamed);
  return Math.min(hem, widest) + extra / (1 + extra / (MOST_WIDENING * widest));
}
