import type { SkirtPlan, Speaker } from '@ribbonwright/engine';

export type Item = SkirtPlan['supplies']['items'][number];

/**
 * Under which each thing of the list is ticked as bought. What it is, its colour and width, not how much of it:
 * a tick stays when the skirt grows longer. Of things that are alike in these the first, the second, and so on.
 */
export function itemKeys(items: readonly Item[]): string[] {
  const before = new Map<string, number>();
  return items.map(({ what, colour, width }) => {
    const key = [what, colour?.name ?? '', colour?.hex ?? '', width ? width.value.toFixed(1) : ''].join('|');
    const count = (before.get(key) ?? 0) + 1;
    before.set(key, count);
    return count === 1 ? key : `${key}|${String(count)}`;
  });
}

/** `teal, ⅞ in`: which of its kind. */
export const whichOf = ({ name, colour, width }: Item, speaker: Speaker): string =>
  [name, colour && speaker.colour(colour), width && speaker.value(width)].filter(Boolean).join(', ');

/** A price as it stands in a document, with the decimal mark of the reader's language. */
export const shownPrice = (price: string | undefined, speaker: Speaker): string =>
  (price ?? '').replace('.', speaker.number(0.5).charAt(1));
