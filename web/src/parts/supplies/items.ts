import type { SkirtPlan, Speaker } from '@ribbonwright/engine';

export type Item = SkirtPlan['supplies']['items'][number];

/**
 * Under which a thing of the list is ticked as bought. What it is, its colour and width, not how much of it:
 * a tick stays when the skirt grows longer.
 */
export const itemKey = ({ what, colour, width }: Item): string =>
  [what, colour?.name ?? '', colour?.hex ?? '', width ? width.value.toFixed(1) : ''].join('|');

/** `teal, ⅞ in`: which of its kind. */
export const whichOf = ({ name, colour, width }: Item, speaker: Speaker): string =>
  [name, colour && speaker.colour(colour), width && speaker.value(width)].filter(Boolean).join(', ');

/** A price as it stands in a document, with the decimal mark of the reader's language. */
export const shownPrice = (price: string | undefined, speaker: Speaker): string =>
  (price ?? '').replace('.', speaker.number(0.5).charAt(1));
