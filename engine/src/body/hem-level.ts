import type { Figure, Notice } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { caution, length, problem, type BodyNoticeCode } from './codes.ts';
import { SLACK } from './slack.ts';
import type { BodySettings } from './settings.ts';

interface Uncertainty {
  readonly plusMinus?: Mm;
}

export const atFloor = (uncertainty: Uncertainty = {}): Figure<Mm> =>
  length(mm(0), 'body.atFloor', {}, uncertainty);

/** Hem above the floor: waist to floor less finished length, at least 0; as uncertain as the waist to floor is. */
export function hemHeightOf(waistToFloor: Figure<Mm>, waistToHem: Figure<Mm>): Figure<Mm> {
  const above = waistToFloor.value - waistToHem.value;
  const { plusMinus } = waistToFloor;
  const uncertainty = plusMinus === undefined ? {} : { plusMinus };
  return above > 0
    ? length(mm(above), 'body.hemHeight', { waistToFloor, waistToHem }, uncertainty)
    : atFloor(uncertainty);
}

interface HemOn {
  readonly waistToHem: Figure<Mm>;
  readonly waistToFloor: Figure<Mm> | null;
  readonly height: Figure<Mm> | null;
  readonly hemHeight: Figure<Mm> | null;
  readonly walks: boolean;
}

/**
 * A hem below the floor is a problem (against an estimate: below all of its ±); one close to it asks for care: on stairs, or of
 * somebody seated, near wheels and footrests.
 */
export function hemNotices(
  { waistToHem, waistToFloor, height, hemHeight, walks }: HemOn,
  settings: BodySettings,
): readonly Notice<BodyNoticeCode>[] {
  if (!waistToFloor || !hemHeight)
    return height && waistToHem.value >= height.value
      ? [problem('body.longerThanHeight', { measure: 'waistToHem', length: waistToHem, height })]
      : [];
  if (waistToHem.value > waistToFloor.value + (waistToFloor.plusMinus ?? 0) + SLACK)
    return [problem('body.hemBelowFloor', { waistToHem, waistToFloor })];
  if (hemHeight.value >= settings.nearFloor - SLACK) return [];
  return [caution(walks ? 'body.longHem' : 'body.seatedHem', { hemHeight })];
}
