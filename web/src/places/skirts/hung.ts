import type { SkirtRecord } from '../../store/index.ts';

/**
 * The order in which skirts hang: versions of one skirt side by side, oldest of them first, and the family that
 * was touched last before the others.
 */
export function hung(skirts: readonly SkirtRecord[]): SkirtRecord[] {
  const families = new Map<string, SkirtRecord[]>();
  for (const skirt of skirts) families.set(skirt.family, [...(families.get(skirt.family) ?? []), skirt]);
  const touched = (family: readonly SkirtRecord[]): number => Math.max(...family.map((each) => each.touched));
  return [...families.values()]
    .toSorted((a, b) => touched(b) - touched(a))
    .flatMap((family) => family.toSorted((a, b) => a.made - b.made));
}

const DAY = 24 * 60 * 60 * 1000;

/** Midnight of the day a moment falls on, where the reader is. */
const dayOf = (moment: number): number => new Date(moment).setHours(0, 0, 0, 0);

/** The day something was last touched: today, yesterday, 3 days ago; past a week its date. */
export function dayTouched(touched: number, now: number, locale: string): string {
  // Rounded: a day on which the clocks change is 23 or 25 hours long.
  const ago = Math.round((dayOf(now) - dayOf(touched)) / DAY);
  return ago >= 0 && ago < 7
    ? new Intl.RelativeTimeFormat(locale, { numeric: 'auto' }).format(-ago, 'day')
    : new Intl.DateTimeFormat(locale, { dateStyle: 'medium' }).format(touched);
}
