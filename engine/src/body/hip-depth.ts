import type { Figure, Notice } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';
import { caution, length, type BodyNoticeCode } from './codes.ts';
import { hipDepthOf } from './estimate.ts';
import type { BodySettings } from './settings.ts';

/**
 * Waist to hip line, along the side: as measured, else in proportion to the height, else the usual one. The proportion is that of
 * grown women; of a child it says no ±.
 */
export function hipDepthFor(
  measured: Figure<Mm> | null,
  height: Figure<Mm> | null,
  adult: boolean,
  { hipDepthLevel, usualHipDepth }: BodySettings,
): Figure<Mm> {
  if (measured) return measured;
  if (height) {
    const { plusMinus, ...depth } = hipDepthOf(height, hipDepthLevel);
    return adult && plusMinus !== undefined ? { ...depth, plusMinus } : depth;
  }
  return adult
    ? length(usualHipDepth.adult, 'body.usualHipDepth', {}, { plusMinus: usualHipDepth.adultPlusMinus })
    : length(usualHipDepth.child, 'body.usualHipDepth');
}

/** Asks an adult whose hip line lies unusually high or low whether it was misread. */
export function hipDepthNotices(
  measured: Figure<Mm> | null,
  adult: boolean,
  { likelyHipDepth: { least, most } }: BodySettings,
): readonly Notice<BodyNoticeCode>[] {
  if (!measured || !adult || (measured.value >= least && measured.value <= most)) return [];
  return [caution('body.hipDepthUnusual', { hipDepth: measured })];
}
