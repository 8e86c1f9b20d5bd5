import { distance, point, type Point } from '../../../geometry/index.ts';
import type { HandleName, SkirtPlan } from '../../../plan/index.ts';
import { freest } from '../freest.ts';
import type { PlacedHandle } from '../livePicture.ts';
import { openingTurn, overEdge, turnOf } from './places.ts';
import { within, type WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { acrossOf } from './view.ts';
import { waistLook } from './waistLook.ts';

/** Where on the cloth a line of the skirt may be taken hold of, as it is seen. */
interface Line {
  readonly name: HandleName;
  /** A share of the skirt's length, from the top of the waist. */
  readonly down: number;
  /** Places across the picture, best first. */
  readonly across: readonly number[];
  readonly way: 'up' | 'down';
}

/** Seams and folds that go round, from the right, where rows are not taken hold of. */
const ROUND = [-0.55, 0, -0.75, 0.35];
/** What lies at the picture's edge is drawn just within it. */
const EDGE = 0.985;

/** What of the seams, the waist's own piece and the extras is seen, and can be taken hold of. `along` as of rows. */
export function optionHandlesOn(
  plan: SkirtPlan,
  surface: Surface,
  side: WornSide,
  along: (across: number, down: number) => { readonly way: Point; readonly perMm: number },
  placed: readonly PlacedHandle[],
): PlacedHandle[] {
  const found: PlacedHandle[] = [...overlapOn(plan, surface, side)];
  for (const { name, down, across, way } of linesOf(plan, side)) {
    const places = across.map((each) => {
      const { way: below, perMm } = along(each, down);
      const towards = way === 'down' ? below : point(0 - below.x, 0 - below.y);
      return { name, at: surface.at(each, down), towards, perMm };
    });
    const place = freest(places, [...placed, ...found]);
    if (place) found.push(place);
  }
  return found;
}

function linesOf(plan: SkirtPlan, side: WornSide): Line[] {
  const { skirt } = plan;
  const { rounds, waist, extras } = skirt;
  const { pockets, slits, tucks } = extras;
  const length = Math.max(1, skirt.finishedLength.value);
  const { band } = waistLook(plan);
  const seen = (turn: number): number[] => {
    const across = acrossOf(side, turn);
    return Math.abs(across) > 1.001 ? [] : [within(-EDGE, across, EDGE)];
  };
  const inSeam = (name: HandleName, turns: readonly number[], down: number, way: Line['way']): Line => ({
    name,
    down: within(0, down, 1),
    across: turns.flatMap(seen),
    way,
  });
  const lines: Line[] = rounds.slice(0, -1).map(({ fromHem }, i) => ({
    name: `tier ${i + 1}`,
    down: within(0, 1 - fromHem / length, 1),
    across: ROUND,
    way: 'up',
  }));
  // The top of the waist stays where it is worn: its own piece grows downwards.
  if (waist.build !== 'turned') {
    const name = waist.build === 'strip' ? 'casing' : 'band';
    lines.push({ name, down: band, across: ROUND, way: 'down' });
  }
  if (waist.closure)
    lines.push(inSeam('opening', [openingTurn(plan)], waist.closure.depth.value / length, 'down'));
  if (pockets) {
    const turns = pockets.sides.map((each) => turnOf(plan, rounds[0], each));
    lines.push(inSeam('pocket', turns, band + pockets.below.value / length, 'down'));
  }
  if (slits) {
    const turns = slits.sides.map((each) => turnOf(plan, rounds.at(-1) ?? rounds[0], each));
    lines.push(inSeam('slit', turns, 1 - slits.height.value / length, 'up'));
  }
  if (tucks?.how === 'tucks') {
    const down = band + (tucks.below.value + tucks.depth.value) / length;
    if (down < 1) lines.push({ name: 'tuck', down, across: ROUND, way: 'down' });
  }
  return lines;
}

/** How far along the round the edge is looked at for the way that it goes, in turns. */
const LOOK = 0.01;

/** The edge that lies over, at the waist: each end has half of what the overlap grows by. */
function overlapOn(plan: SkirtPlan, surface: Surface, side: WornSide): PlacedHandle[] {
  const over = overEdge(plan);
  if (!over) return [];
  const across = acrossOf(side, over.turn);
  if (Math.abs(across) > EDGE) return [];
  const { foot } = waistLook(plan);
  const at = surface.at(across, foot);
  const next = surface.at(across - 4 * over.own * LOOK, foot);
  const seen = distance(at, next);
  // The end lies half the overlap past the middle of the front.
  const perTurn = over.overlap.width.value / Math.max(1e-6, Math.abs(over.turn - Math.round(over.turn)));
  const towards = seen > 0 ? point((next.x - at.x) / seen, (next.y - at.y) / seen) : point(1, 0);
  return [{ name: 'overlap', at, towards, perMm: (perTurn * LOOK) / Math.max(0.05, seen) }];
}
