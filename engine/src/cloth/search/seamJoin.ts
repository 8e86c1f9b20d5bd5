import { lengthOf, pointAt, reversed, type Path, type Point } from '../../geometry/index.ts';
import type { Notch, Panel } from '../../skirt/index.ts';
import { mm } from '../../units/index.ts';
import type { PanelSeam } from '../job/found.ts';

/** Where two panels are brought together to be sewn, each on its own sheet. */
export interface Join {
  readonly before: Point;
  readonly after: Point;
  /** Whether both edges run straight down, so that what crosses one may run on over the other. */
  readonly upright: boolean;
  /** Whether the two edges slope alike, so that what meets here meets along the whole seam. */
  readonly whole: boolean;
}

/** The stitching line of a side from the hem up. Edges run clockwise: down the right side, up the left one. */
function stitching({ shape }: Panel, name: 'left' | 'right'): Path {
  const edge = shape.edges.find((each) => each.name === name)?.finished ?? [];
  return name === 'right' ? reversed(edge) : edge;
}

/** Slopes that no eye tells apart: what they part by over the whole seam. */
const ALIKE = 0.5;
const SAMPLES = 40;

/** Places a stitch or two apart along both edges, at the same distances from the hem. */
export function pairsAlong({
  before,
  after,
}: PanelSeam): { readonly before: Point; readonly after: Point }[] {
  const right = stitching(before, 'right');
  const left = stitching(after, 'left');
  const reach = Math.min(lengthOf(right), lengthOf(left));
  return Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const at = mm((reach * i) / SAMPLES);
    return { before: pointAt(right, at), after: pointAt(left, at) };
  });
}

/** Edges that slope alike meet at the hem and all the way up; others at a notch that both have, else at the hem. */
export function joinOf(seam: PanelSeam): Join {
  const pairs = pairsAlong(seam);
  const [hem] = pairs;
  if (!hem) return { before: { x: 0, y: 0 }, after: { x: 0, y: 0 }, upright: true, whole: true };
  const upright = [spread(pairs.map(({ before }) => before.x)), spread(pairs.map(({ after }) => after.x))];
  const isUpright = upright.every((each) => each < ALIKE);
  const leans = spread(pairs.map(({ before, after }) => before.x + after.x));
  const rises = spread(pairs.map(({ before, after }) => before.y - after.y));
  if (leans < ALIKE && rises < ALIKE) return { ...hem, upright: isUpright, whole: true };
  return { ...(atNotch(seam) ?? hem), upright: isUpright, whole: false };
}

const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** The stitching beside a notch of the same use on both edges. */
function atNotch({ before, after }: PanelSeam): Pick<Join, 'before' | 'after'> | null {
  const right = stitching(before, 'right');
  const left = stitching(after, 'left');
  const across = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
  const beside = (edge: Path, { at }: Notch): Point | null => {
    const long = lengthOf(edge);
    const places = Array.from({ length: 401 }, (_, i) => pointAt(edge, mm((long * i) / 400)));
    const [nearest] = places.toSorted((a, b) => across(a, at) - across(b, at));
    return nearest && across(nearest, at) < NEAR ? nearest : null;
  };
  for (const notch of before.shape.notches)
    for (const other of after.shape.notches) {
      if (notch.use !== other.use) continue;
      const [one, next] = [beside(right, notch), beside(left, other)];
      if (one && next) return { before: one, after: next };
    }
  return null;
}

/** A notch farther from the stitching than any seam is wide is one of another edge. */
const NEAR = 30;
