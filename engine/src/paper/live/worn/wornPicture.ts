import { point } from '../../../geometry/index.ts';
import { handlesOf, type SkirtPlan } from '../../../plan/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { drawing, eachMark, group, type Mark } from '../../drawing/index.ts';
import type { LivePicture, PlacedHandle } from '../livePicture.ts';
import { bandMarks, closings } from './closings.ts';
import { clothArea, outline, sewnLines } from './cloth.ts';
import { inWords, titleOf } from './description.ts';
import { floorMarks, standing } from './figure.ts';
import { gathers, tierGathers } from './gathers.ts';
import { inksOf, otherCloths } from './inks.ts';
import { measureMarks, MEASURES_ASIDE, roundsReach } from './measures.ts';
import { extrasSeen } from './openings.ts';
import { optionHandlesOn } from './optionHandles.ts';
import { nearArm, profile } from './profile.ts';
import { downAt, rowMarks, rowSeen, seamsSeen } from './rows.ts';
import { shade } from './shade.ts';
import { sitting, sittingFromSide } from './seated.ts';
import { MARGIN, stanceOf, type Stance, type WornSide } from './stance.ts';
import { surfaceOf, type Surface } from './surface.ts';
import { hangingRounds } from './tiers.ts';
import type { Stretch } from './view.ts';
import { waistLook } from './waistLook.ts';

export interface WornOptions {
  /** `measures` writes the body's measurements beside it. */
  readonly marks?: 'measures' | 'none';
  /**
   * `closer` is seen from a hand above the waist down: what is above lies outside the drawing, and the skirt is
   * larger. `alone` is the skirt without anybody in it.
   */
  readonly shown?: 'whole' | 'closer' | 'alone';
}

/**
 * The skirt as it is worn, seen from the front, from behind or from the side, to scale: lengths down its middle,
 * rows, the hem's height above the floor. About 120 × 166 mm. How wide it stands is a drawing's guess (`fallOf`).
 * Layers: `cloth` (its one area alone, to be filled with a picture of the skirt's own cloth), `other cloths`, `row N`, `shade`, `figure`,
 * `measures`.
 */
export function wornPicture(
  plan: SkirtPlan,
  speaker: Speaker,
  side: WornSide,
  { marks: asked = 'none', shown = 'whole' }: WornOptions = {},
): LivePicture {
  const stance = stanceOf(plan);
  const surface = surfaceOf(plan, stance, side);
  const measured = asked === 'measures';
  const skirt = skirtMarks(plan, surface, side, stance.scale);
  const figure = figureOf(stance, surface, side);
  // Nothing of the skirt reaches beyond the cloth's own edge, its first mark.
  const drawn =
    shown === 'whole'
      ? reachOf([...skirt.slice(0, 1), figure.under])
      : reachOf(skirt.slice(0, 1), CLOSE_REACH);
  const reach =
    measured && side === 'side' ? Math.max(drawn, roundsReach(plan, speaker, stance, surface)) : drawn;
  const left = reach + (measured ? MEASURES_ASIDE : MARGIN);
  // A straight hem drops at its seams, which may be anywhere along it.
  const hem = Math.max(...[-1, 0, 1].map((across) => surface.at(across, 1).y));
  const lowest = shown === 'alone' ? hem : Math.max(stance.floor, hem);
  const handles = handlesOn(plan, stance, surface, side);
  // On a body whose levels differ greatly the cloth, and what is taken hold of on it, can rise above the head.
  const risen = Math.min(...handles.map(({ at }) => at.y)) - MARGIN;
  const top = Math.min(
    risen,
    { whole: 0, closer: Math.max(0, stance.waist - ABOVE_WAIST), alone: stance.waist - MARGIN }[shown],
  );
  const marks =
    shown === 'alone'
      ? skirt
      : [
          floorMarks(stance, reach),
          figure.under,
          ...skirt,
          ...figure.over,
          ...(measured ? [measureMarks(plan, speaker, stance, surface, side, reach)] : []),
        ];
  return {
    drawing: drawing({
      width: mm(2 * left),
      height: mm(lowest + MARGIN - top),
      title: titleOf(speaker, side),
      description: inWords(plan, speaker),
      marks: [group('worn', marks, { placement: { dx: mm(left), dy: mm(-top) } })],
    }),
    handles: handles.map((each) => ({ ...each, at: point(each.at.x + left, each.at.y - top) })),
  };
}

/** The wearer: what the skirt hides, and what hides the skirt. */
function figureOf(stance: Stance, surface: Surface, side: WornSide) {
  const { seat } = stance;
  if (seat) {
    const { under, over } = side === 'side' ? sittingFromSide(stance, seat) : sitting(stance, seat, side);
    return { under, over: [over] };
  }
  return side === 'side'
    ? { under: profile(stance), over: [nearArm(stance)] }
    : { under: standing(stance, surface, side), over: [] };
}

function skirtMarks(plan: SkirtPlan, surface: Surface, side: WornSide, scale: number): Mark[] {
  const { hex } = plan.request.cloth.colour;
  const { skirt } = plan;
  const length = Math.max(1, skirt.finishedLength.value);
  const look = waistLook(plan);
  const tiers = hangingRounds(plan);
  const rounds = tiers.map(({ from }) => from);
  const hem = Math.min(0.5, (skirt.hemAllowance.value - skirt.hemTurnUnder) / length);
  const edge = outline(surface, look, side, rounds);
  const inks = inksOf(plan, side, look);
  const sewn = { look, hem, seams: seamsSeen(plan, side, look.foot), rounds };
  return [
    clothArea(edge, hex),
    ...otherCloths(plan, surface, side, look),
    ...bandMarks(surface, look, hex),
    ...rowMarks(plan, surface, side),
    shade(surface, inks.mean, look.foot, rounds),
    gathers(surface, inks.rounds[0] ?? hex, look, side),
    ...tiers.map((tier, i) => tierGathers(surface, inks.rounds[i + 1] ?? hex, [tier])),
    sewnLines(surface, edge, inks, sewn),
    ...extrasSeen(plan, surface, side, look, inks),
    ...closings({ plan, surface, side, look, inks, scale }),
  ];
}

const LEAST_REACH = 46;
/** The same of a skirt that is seen closer, and how much is seen above its waist. */
const CLOSE_REACH = 30;
const ABOVE_WAIST = 14;

/** How far from the middle anything is drawn. */
function reachOf(marks: readonly Mark[], least = LEAST_REACH): number {
  let reach = least;
  eachMark(marks, (mark) => {
    if (mark.kind === 'path')
      for (const path of mark.paths)
        for (const segment of path)
          if (segment.kind === 'line') reach = Math.max(reach, Math.abs(segment.from.x));
  });
  return reach;
}

/** Rows are taken hold of beside the middle: what the eye goes to stays in sight. */
const BESIDE = 0.8;

/** The hem grows downwards, a row's height above it upwards: along the cloth, which lies over a lap where somebody sits. */
function handlesOn(
  plan: SkirtPlan,
  { scale, seat }: Stance,
  surface: Surface,
  side: WornSide,
): PlacedHandle[] {
  const along = (across: number, down: number) =>
    seat ? cloth(surface, across, down, scale) : { way: point(0, 1), perMm: 1 / scale };
  const firsts = plan.ribbons.rows.filter((row, i, rows) => rows[i - 1]?.band !== row.band);
  const hem = along(0, 1);
  const lines: PlacedHandle[] = [
    { name: 'length', at: surface.at(0, 1), towards: hem.way, perMm: hem.perMm },
    ...firsts.flatMap((row): PlacedHandle[] => {
      const across = beside(rowSeen(row, side));
      if (across === null) return [];
      const middle = downAt(plan, row.fromHem.value + row.width.value / 2);
      const { way, perMm } = along(across, middle);
      const at = surface.at(across, middle);
      return [{ name: `row ${row.number}`, at, towards: point(-way.x, -way.y), perMm }];
    }),
  ];
  const known = new Set(handlesOf(plan).map(({ name }) => name));
  const options = optionHandlesOn(plan, surface, side, along, lines).filter(({ name }) => known.has(name));
  return [...lines, ...options];
}

/** Less than this of the picture for each unit of cloth, and a handle would run away from the hand. */
const LEAST_SEEN = 0.2;

/** Which way down the cloth is seen to go at a place, and how much cloth a millimetre of the drawing is. */
function cloth(surface: Surface, across: number, down: number, scale: number) {
  const step = 0.04;
  const to = Math.max(step, down);
  const [above, below] = [surface.at(across, to - step), surface.at(across, to)];
  const [x, y] = [below.x - above.x, below.y - above.y];
  const seen = Math.hypot(x, y);
  const drawn = step * surface.length;
  const way = seen > 0 ? point(x / seen, y / seen) : point(0, 1);
  return { way, perMm: 1 / (scale * Math.max(LEAST_SEEN, seen / drawn)) };
}

/** As far to the right as rows go, and not at their very end. */
function beside(seen: readonly Stretch[]): number | null {
  const last = seen.at(-1);
  return last ? Math.min(last[1], Math.max(last[0], BESIDE)) : null;
}
