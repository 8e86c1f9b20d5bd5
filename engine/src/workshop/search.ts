import { layKinds, piecesIn, searchCloth, type FoundCloth, type LayKind } from '../cloth/index.ts';
import type { ClassRequest } from '../request/index.ts';
import { withFound, type ClassPlan, type PlannedCloth } from './class.ts';
import { jobOf, planClass } from './plan.ts';
import { sharing, type Sought } from './effort.ts';

/** How long closer lays of a class are sought. Time is known to the caller only. */
export interface ClassEffort extends Sought {
  /** Called with each better lay: of which cloth it is, and the plan with it. */
  readonly better?: (plan: ClassPlan, found: FoundCloth, cloth: PlannedCloth) => void;
  /** Called when the search turns to a cloth and a way to lay it. */
  readonly turnsTo?: (cloth: PlannedCloth, way: LayKind) => void;
}

/** Share of its time that a way has before it is compared with the others; what is this much longer then is given up. */
const TRIAL = 0.25;
const BEHIND = 1.05;

/**
 * The plan of a class with the closest lays that were found: each cloth is searched in the way it asks for, in
 * each where it asks for none or nothing lies in it, with a share of the effort that goes with how many pieces are cut from it. Of the time, what a way leaves that is
 * far behind goes to the next. Never worse than `planClass`.
 */
export function searchClass(request: ClassRequest, effort: ClassEffort): ClassPlan {
  let plan = planClass(request);
  const searches = plan.cloths.flatMap((cloth) =>
    kindsOf(cloth, effort).map((kind) => ({ cloth, kind, weight: WEIGHT[kind] * piecesOf(cloth) })),
  );
  const share = sharing(
    effort,
    searches.map(({ weight }) => weight),
  );
  for (const { cloth, kind } of searches) {
    effort.turnsTo?.(cloth, kind);
    const part = share();
    let least = Infinity;
    const isBehind = (): boolean => {
      const best = plan.cloths.find(({ key }) => key === cloth.key)?.chosen;
      return best?.fits === true && least > best.clothBefore.value * BEHIND;
    };
    const { spent } = part;
    const found = searchCloth(jobOf(cloth), kind, {
      ...part,
      ...(spent
        ? {
            spent: () => {
              const so = spent();
              return so > TRIAL && isBehind() ? 1 : so;
            },
          }
        : {}),
      better: (found) => {
        if (found.fits) least = found.clothBefore.value;
        take(found);
      },
    });
    take(found);

    function take(found: FoundCloth): void {
      const before = plan;
      plan = withFound(plan, cloth.key, found);
      if (plan !== before) effort.better?.(plan, found, cloth);
    }
  }
  return plan;
}

/** How the effort is parted between the ways: the most where most is to be gained. */
const WEIGHT: Readonly<Record<LayKind, number>> = {
  open: 6,
  'lengthwise fold': 2,
  'crosswise fold': 2,
  'double fold': 1,
};

/** The way that a cloth asks for if all lies in it, by hand or at first sight; else every way. */
function kindsOf(cloth: PlannedCloth, { seed }: Sought): readonly LayKind[] {
  const { lay } = cloth.options;
  if (lay === 'auto') return layKinds;
  const isThere =
    cloth.ways.some(({ kind, fits }) => kind === lay && fits) ||
    searchCloth(jobOf(cloth), lay, { seed, spent: () => 1 }).fits;
  return isThere ? [lay] : layKinds;
}

const piecesOf = (cloth: PlannedCloth): number => piecesIn(jobOf(cloth).wanted);
