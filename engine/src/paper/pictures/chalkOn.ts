import type { Ink } from '../drawing/index.ts';

/** The two chalks on the table: one for dark cloth, one for light. */
export const chalks = { light: '#f8f4e9', dark: '#33425c' } as const;

const channels = (ink: Ink): readonly number[] => [1, 3, 5].map((at) => parseInt(ink.slice(at, at + 2), 16));

/** Relative luminance, 0 to 1, as WCAG 2 defines it. */
function luminance(ink: Ink): number {
  const [r = 0, g = 0, b = 0] = channels(ink).map((each) => {
    const share = each / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast of two colours, 1 to 21, as WCAG 2 defines it. */
export function contrast(one: Ink, other: Ink): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** The chalk that is seen on this cloth: light on dark cloth, blue-grey on light cloth. */
export const chalkOn = (cloth: Ink): Ink =>
  contrast(cloth, chalks.light) >= contrast(cloth, chalks.dark) ? chalks.light : chalks.dark;

/** Between two colours: `share` 0 is the first, 1 the second. */
export function mixed(one: Ink, other: Ink, share: number): Ink {
  const to = channels(other);
  const parts = channels(one).map((from, i) => Math.round(from + ((to[i] ?? from) - from) * share));
  return `#${parts.map((each) => each.toString(16).padStart(2, '0')).join('')}`;
}
