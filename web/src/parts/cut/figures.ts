import type { Figure, SkirtPlan } from '@ribbonwright/engine';

const there = <T>(each: T | null | undefined): each is T => each !== null && each !== undefined;

/** The numbers to chalk and to try the skirt by. Quarters only where they are marked. */
export function chalkedFigures({ skirt }: SkirtPlan): Figure[] {
  const { marks, hang, waist, extras } = skirt;
  const quarters = skirt.marking === 'at the fold' || skirt.marking === 'straight widths';
  return [
    quarters ? marks.waistQuarter : null,
    quarters && marks.hemQuarter !== marks.waistQuarter ? marks.hemQuarter : null,
    quarters ? marks.cutLength : null,
    quarters && marks.bottom !== marks.cutLength ? marks.bottom : null,
    skirt.panelLength === skirt.finishedLength ? null : skirt.panelLength,
    quarters ? null : skirt.opening,
    quarters ? null : skirt.hemRound,
    skirt.overlap?.width,
    waist.topAllowance,
    waist.elastic?.cut,
    waist.gatherRatio,
    hang.shape === 'straight' && hang.sideAngle.value > 0 ? hang.sideAngle : null,
    extras.pockets?.opening,
    extras.slits?.height,
    extras.lining?.length,
    extras.tucks?.letsDown,
  ].filter(there);
}

/** What the waist is made of. */
export function waistFigures({ skirt: { waist } }: SkirtPlan): Figure[] {
  return [
    waist.topAllowance,
    waist.above.value > 0 ? waist.above : null,
    waist.elastic?.cut,
    waist.cord?.cut,
    waist.cord?.freeEnd,
    waist.closure?.depth,
    waist.takenUp?.difference,
    waist.takenUp?.dartWidth,
    waist.takenUp?.dartLength,
  ].filter(there);
}
