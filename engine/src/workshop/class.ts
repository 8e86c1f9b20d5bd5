import { flawsBeyond, isPrintOnItsSide, notAsWished, type FoundCloth, type LayKind } from '../cloth/index.ts';
import type { Notice } from '../figure/index.ts';
import type { StagedNotice } from '../plan/index.ts';
import type { ClassRequest } from '../request/index.ts';
import type { PlannedSkirt, SharedCloth } from './shares.ts';

/** All that is cut from one cloth, laid in every way there is. */
export interface PlannedCloth extends SharedCloth {
  /** The best lay known of each way. */
  readonly ways: readonly [FoundCloth, ...FoundCloth[]];
  /** The way that is taken. */
  readonly chosen: FoundCloth;
}

/** A notice, and whose skirt it is about. */
export interface ClassNotice extends StagedNotice {
  /** Null where it is about a cloth. */
  readonly label: string | null;
  readonly cloth: string;
}

/** Everything that is known of a class before the scissors close. */
export interface ClassPlan {
  readonly request: ClassRequest;
  readonly skirts: readonly PlannedSkirt[];
  /** Those that something is cut from, in the order of the document. */
  readonly cloths: readonly PlannedCloth[];
  /** Problems first, then cautions. */
  readonly notices: readonly ClassNotice[];
}

const HAIR = 1e-6;

/**
 * The way that is taken: the one the cloth's options ask for where it fits; else the closest; of two that are as close the
 * one with less to know beforehand. Where none fits what is told is of the one that lacks least.
 */
export function chosenOf(ways: PlannedCloth['ways'], wished: LayKind | 'auto'): FoundCloth {
  const asked = ways.find(({ kind, fits }) => fits && kind === wished);
  if (asked) return asked;
  return ways.reduce<FoundCloth>((best, way) => {
    if (isCloser(way, best)) return way;
    if (!way.fits && !best.fits && way.tables.length > 0 && best.tables.length > 0)
      return way.clothBefore.value < best.clothBefore.value - HAIR ? way : best;
    return !isCloser(best, way) && way.notices.length < best.notices.length ? way : best;
  }, ways[0]);
}

/**
 * Whether a lay is to be taken rather than another: one that fits, or comes closer to it; one that keeps a one-way print
 * upright; one that keeps what else the cloth asks for; the one that is bought less of; of two that are bought alike the
 * one that uses less.
 */
export function isCloser(one: FoundCloth, other: FoundCloth): boolean {
  if (!one.fits || !other.fits) return reach(one) > reach(other);
  const [isLying, isOtherLying] = [isPrintOnItsSide(one.notices), isPrintOnItsSide(other.notices)];
  if (isLying !== isOtherLying) return isOtherLying;
  if (isByEye(one) !== isByEye(other)) return isByEye(other);
  const bought = other.toBuy.value - one.toBuy.value;
  return Math.abs(bought) > HAIR ? bought > 0 : other.clothBefore.value - one.clothBefore.value > HAIR;
}

/** How far a lay came: all lies; there is too little cloth for it; it can't be laid so at all. */
const reach = ({ fits, tables }: FoundCloth): number => (fits ? 2 : tables.length > 0 ? 1 : 0);

/** Laid by hand on cloth that asks for more than hands keep: a pattern that meets, room between the pieces. */
export const isByEye = ({ notices }: Pick<FoundCloth, 'notices'>): boolean =>
  notices.some(({ code }) => code === 'cloth.byEye');

/** The plan with a lay of one cloth (by its key) and way in the place of what was known of that way, where it is closer. */
export function withFound(plan: ClassPlan, cloth: string, found: FoundCloth): ClassPlan {
  const isTaken = (way: FoundCloth): boolean => way.kind === found.kind && isCloser(found, way);
  if (!plan.cloths.some(({ key, ways }) => key === cloth && ways.some(isTaken))) return plan;
  return noticed({
    ...plan,
    cloths: plan.cloths.map((each) => {
      if (each.key !== cloth) return each;
      const [first, ...others] = each.ways.map((way) => (isTaken(way) ? found : way));
      const ways = [first ?? found, ...others] as const;
      return { ...each, ways, chosen: chosenOf(ways, each.options.lay) };
    }),
  });
}

/** The plan with all that is to be known of its skirts and of the lays that are taken. */
export function noticed(plan: Omit<ClassPlan, 'notices'>): ClassPlan {
  const ofSkirts = plan.skirts.flatMap(({ label, cloth, plan: { notices } }) =>
    notices
      // How a shared cloth is laid is told of the cloth.
      .filter(({ notice: { code } }) => code !== 'cloth.layWished')
      .map((each): ClassNotice => ({ ...each, label, cloth })),
  );
  const ofCloths = plan.cloths.flatMap(({ name, options, chosen }) =>
    [...flawsBeyond(options), ...toldOf(chosen), ...(chosen.fits ? notAsWished(options, chosen) : [])].map(
      (notice: Notice): ClassNotice => ({
        stage: 'cloth',
        notice,
        of: null,
        label: null,
        cloth: name,
      }),
    ),
  );
  const all = [...ofSkirts, ...ofCloths];
  const at = (level: Notice['level']): ClassNotice[] => all.filter(({ notice }) => notice.level === level);
  return { ...plan, notices: [...at('problem'), ...at('caution')] };
}

/** What there is to know of a lay; of one that does not fit, only why: how it would be cut is nothing to mind. */
export const toldOf = ({ fits, notices }: FoundCloth): readonly Notice[] =>
  fits ? notices : notices.filter(({ level }) => level === 'problem');

/** Whether the class carries a wish that can't be met. */
export const classHasProblems = ({ notices }: ClassPlan): boolean =>
  notices.some(({ notice }) => notice.level === 'problem');
