import type { Notice } from '../figure/index.ts';
import type { ClassNotice, ClassPlan, PlannedCloth } from './class.ts';
import type { FromShelf, HowMany } from './howMany.ts';

/**
 * Of each cloth that not everybody's skirt fits on, the skirts that what is at hand is enough for, laid there: in the order
 * of the class, and as many as can be where those are others. Empty where nobody's is.
 */
export const laidFromShelf = (
  { cloths }: Pick<ClassPlan, 'cloths'>,
  shelf: readonly HowMany[],
): PlannedCloth[] =>
  cloths
    .filter(({ chosen }) => !chosen.fits)
    .flatMap((cloth) =>
      shelf
        .filter((each) => each.cloth === cloth.key)
        .flatMap(({ inOrder, most }) => [...new Set([inOrder, most])])
        .flatMap((some) => laidThere(cloth, some)),
    );

function laidThere(cloth: PlannedCloth, { skirts, lay }: FromShelf): PlannedCloth[] {
  if (!lay) return [];
  const shares = cloth.shares.filter(({ skirt: { label } }) => skirts.includes(label));
  return [{ ...cloth, shares, ways: [lay], chosen: lay }];
}

/** Whose skirt finds too little cloth, where a notice says so of somebody in a class. */
export const shortOf = ({ code, params: { wearer } }: Notice): string | null =>
  code === 'cloth.notEnoughFor' && typeof wearer === 'string' && wearer !== NOBODY ? wearer : null;

const NOBODY = 'nobody';

/** What is told of a class beside its shelf: not that there is too little cloth for somebody who is laid there. */
export function toldBeside(plan: ClassPlan, shelf: readonly HowMany[]): ClassNotice[] {
  const laid = laidFromShelf(plan, shelf);
  return plan.notices.filter(({ label, cloth: name, notice }) => {
    const short = label === null ? shortOf(notice) : null;
    return !laid.some(
      (cloth) => cloth.name === name && cloth.shares.some(({ skirt }) => skirt.label === short),
    );
  });
}

/** Of what is told of a class, what belongs beside its lays: all of its cloths; of a skirt its problems, and what is not cut as was asked. */
export const besideLays = (notices: readonly ClassNotice[]): ClassNotice[] =>
  notices.filter(
    ({ label, notice }) => label === null || notice.level === 'problem' || NOT_CUT.includes(notice.code),
  );

const NOT_CUT = ['cloth.contrastNothing', 'cloth.contrastAll'];
