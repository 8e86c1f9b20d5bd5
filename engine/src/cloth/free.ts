/** An upright rectangle of cloth: `x` along the bolt, `y` across it. The end of the bolt may be without end. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly along: number;
  readonly across: number;
}

/** What binary fractions lose is no overlap, and a sliver of cloth is no cloth. */
const HAIR = 1e-6;
const SLIVER = 1;

/**
 * The largest rectangles that stay free once one is taken: each may overlap the others, none lies within
 * another. (The book-keeping of the "maximal rectangles" method of rectangle packing, Jylänki 2010.)
 */
export function freeAfter(free: readonly Rect[], taken: Rect): readonly Rect[] {
  const cut: Rect[] = [];
  const kept: Rect[] = [];
  for (const rect of free) {
    if (isApart(rect, taken)) kept.push(rect);
    else cut.push(...around(rect, taken));
  }
  if (cut.length === 0) return kept;
  const all = [...kept, ...cut.filter(({ along, across }) => along > SLIVER && across > SLIVER)];
  return all.filter(
    (rect, i) => !all.some((other, j) => i !== j && lies(rect, other) && !(lies(other, rect) && i < j)),
  );
}

const isApart = (a: Rect, b: Rect): boolean =>
  b.x >= a.x + a.along - HAIR ||
  a.x >= b.x + b.along - HAIR ||
  b.y >= a.y + a.across - HAIR ||
  a.y >= b.y + b.across - HAIR;

const lies = (inner: Rect, outer: Rect): boolean =>
  inner.x >= outer.x - HAIR &&
  inner.y >= outer.y - HAIR &&
  inner.x + inner.along <= outer.x + outer.along + HAIR &&
  inner.y + inner.across <= outer.y + outer.across + HAIR;

/** What is left of a rectangle before, beyond, above and below what was taken of it. */
function around(rect: Rect, taken: Rect): Rect[] {
  const { x, y, along, across } = rect;
  const beyond = taken.x + taken.along;
  const below = taken.y + taken.across;
  return [
    { ...rect, along: taken.x - x },
    { ...rect, x: beyond, along: along === Infinity ? Infinity : x + along - beyond },
    { ...rect, across: taken.y - y },
    { ...rect, y: below, across: y + across - below },
  ];
}
