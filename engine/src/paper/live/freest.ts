import { distance, type Point } from '../../geometry/index.ts';

/** How far apart handles are kept where there is room: 44 px where the drawing, 120 mm wide, fills a small phone. */
const APART = 15;

/** The first place that is clear of all that is taken already; else the one that is furthest from it. */
export function freest<Place extends { readonly at: Point }>(
  places: readonly Place[],
  taken: readonly { readonly at: Point }[],
): Place | null {
  let best: Place | null = null;
  let most = -1;
  for (const place of places) {
    let nearest = Infinity;
    for (const { at } of taken) nearest = Math.min(nearest, distance(at, place.at));
    if (nearest >= APART) return place;
    if (nearest > most) [best, most] = [place, nearest];
  }
  return best;
}
