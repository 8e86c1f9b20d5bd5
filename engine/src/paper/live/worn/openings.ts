import { polyline, type Path } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Skirt } from '../../../skirt/index.ts';
import { area, group, type Mark } from '../../drawing/index.ts';
import { downwards, level } from './cloth.ts';
import { mixed } from './colours.ts';
import type { WornInks } from './inks.ts';
import { turnOf } from './places.ts';
import { within, type WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { beside, edgeLine, shadow, stitching } from './trims.ts';
import { acrossOf, isSeen } from './view.ts';
import type { WaistLook } from './waistLook.ts';

/** Extras that are seen from outside: pockets' openings, slits, tucks. */
export function extrasSeen(
  plan: SkirtPlan,
  surface: Surface,
  side: WornSide,
  look: WaistLook,
  inks: Pick<WornInks, 'at'>,
): Mark[] {
  const seen = { plan, surface, side, look, inks };
  const marks = [...tucks(seen), ...pockets(seen), ...slits(seen)];
  return marks.length > 0 ? [group('extras', marks)] : [];
}

interface Seen {
  readonly plan: SkirtPlan;
  readonly surface: Surface;
  readonly side: WornSide;
  readonly look: WaistLook;
  readonly inks: Pick<WornInks, 'at'>;
}

const share = ({ finishedLength }: Skirt, along: number): number => along / Math.max(1, finishedLength.value);

/** A place at the picture's edge is drawn just within it. */
const WITHIN = 0.985;
const onEdge = (across: number): boolean => Math.abs(across) <= 1.001;

/** An opening in a side seam is a line with a bar at either end: seen edge on, it gapes a little. */
function pockets({ plan, surface, side, look, inks }: Seen): Mark[] {
  const { skirt } = plan;
  const found = skirt.extras.pockets;
  if (!found) return [];
  const from = look.band + share(skirt, found.below.value);
  const to = Math.min(0.97, from + share(skirt, found.opening.value));
  const ink = inks.at(from);
  return found.sides.flatMap((each) => {
    const across = acrossOf(side, turnOf(plan, skirt.rounds[0], each));
    if (!onEdge(across)) return [];
    const place = within(-WITHIN, across, WITHIN);
    const wide = 0.36;
    const line = (aside: number) => downwards(surface, beside(surface, from, place, aside), from, to, 6);
    const gape = polyline([...line(-wide), ...line(wide).toReversed()], { closed: true });
    const bar = (down: number): Path =>
      polyline([-1.6, 1.6].map((way) => surface.at(beside(surface, from, place, way * wide), down)));
    return [
      shadow(gape, 0.4),
      edgeLine([polyline(line(0)), bar(from), bar(to)], ink),
      ...(isSeen(across) ? [stitching(polyline(line(-3 * wide)), ink)] : []),
    ];
  });
}

/** How far a slit's edges fall apart at the hem, of its height, in drawing terms; and what is seen within it. */
const GAPE = 0.1;

function slits({ plan, surface, side, inks }: Seen): Mark[] {
  const ink = inks.at(1);
  const { skirt } = plan;
  const found = skirt.extras.slits;
  if (!found) return [];
  const from = Math.max(0.05, 1 - share(skirt, found.height.value));
  const lowest = skirt.rounds.at(-1) ?? skirt.rounds[0];
  return found.sides.flatMap((each) => {
    const across = acrossOf(side, turnOf(plan, lowest, each));
    if (!onEdge(across)) return [];
    const high = (1 - from) * surface.length;
    const wide = within(0.4, (GAPE * high) / 2, 3.5);
    // A slit falls open to either side of its seam; at the edge of the picture half of it is seen.
    const edge = (way: number, more = 0) =>
      Array.from({ length: 9 }, (_, i) => {
        const t = i / 8;
        const down = from + (1 - from) * t;
        return surface.at(beside(surface, down, within(-1, across, 1), way * (wide * t ** 1.3 + more)), down);
      });
    const facing = Math.min(2.2, share(skirt, found.facing.value) * surface.length);
    const inside = polyline([...edge(-1), ...edge(1).toReversed()], { closed: true });
    return [
      area(inside, { stroke: null, fill: mixed(ink, '#000000', 0.45) }),
      edgeLine([polyline(edge(-1)), polyline(edge(1))], ink),
      ...(isSeen(across) ? [stitching([polyline(edge(-1, facing)), polyline(edge(1, facing))], ink)] : []),
    ];
  });
}

/** As many tucks as are drawn as finely as all else. */
const FINE_TUCKS = 6;

/** A tuck's stitching, and its fold that lies over what is below. */
function tucks({ plan, surface, look, inks }: Seen): Mark[] {
  const { skirt } = plan;
  const found = skirt.extras.tucks;
  if (!found || found.count.value === 0) return [];
  const deep = share(skirt, found.depth.value);
  const first = look.band + share(skirt, found.below.value);
  const step = share(skirt, found.space.value);
  const lines = Array.from({ length: found.count.value }, (_, i) => first + i * step).filter(
    (down) => down + deep < 0.98,
  );
  if (lines.length === 0) return [];
  const folds = lines.map((down) => down + deep);
  const ink = inks.at(first + deep);
  // Many tucks lie close together: a coarser line each, so that the drawing stays light enough to drag.
  const finely = Math.max(0.4, Math.min(1, FINE_TUCKS / lines.length));
  const along = (down: number) => level(surface, down, -1, 1, finely);
  const shaded = folds.map((down) =>
    polyline([...along(down), ...along(down + 0.008).toReversed()], { closed: true }),
  );
  return [
    area(shaded, { stroke: null, fill: '#000000', opacity: 0.22 }),
    edgeLine(
      folds.map((down) => polyline(along(down))),
      ink,
    ),
    stitching(
      lines.map((down) => polyline(along(down))),
      ink,
    ),
  ];
}
