import { point, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { drawing, eachMark, group, type Mark } from '../../drawing/index.ts';
import type { LivePicture, PlacedHandle } from '../livePicture.ts';
import { clothArea, outline, sewnLines } from './cloth.ts';
import { inWords, titleOf } from './description.ts';
import { floorMarks, standing } from './figure.ts';
import { gathers } from './gathers.ts';
import { measureMarks, MEASURES_ASIDE, roundsReach } from './measures.ts';
import { nearArm, profile } from './profile.ts';
import { downAt, rowMarks, rowsSeen, seamsSeen } from './rows.ts';
import { shade } from './shade.ts';
import { MARGIN, stanceOf, type Stance, type WornSide } from './stance.ts';
import { surfaceOf, type Surface } from './surface.ts';

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
 * Layers: `cloth` (its one area alone, to be filled with a picture of the cloth), `row N`, `shade`, `figure`,
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
  const skirt = skirtMarks(plan, surface, side);
  const figure = side === 'side' ? profile(stance) : standing(stance, surface, side);
  // Nothing of the skirt reaches beyond the cloth's own edge, its first mark.
  const drawn =
    shown === 'whole' ? reachOf([...skirt.slice(0, 1), figure]) : reachOf(skirt.slice(0, 1), CLOSE_REACH);
  const reach =
    measured && side === 'side' ? Math.max(drawn, roundsReach(plan, speaker, stance, surface)) : drawn;
  const left = reach + (measured ? MEASURES_ASIDE : MARGIN);
  // A straight hem drops at its seams, which may be anywhere along it.
  const hem = Math.max(...[-1, 0, 1].map((across) => surface.at(across, 1).y));
  const lowest = shown === 'alone' ? hem : Math.max(stance.floor, hem);
  const top = { whole: 0, closer: Math.max(0, stance.waist - ABOVE_WAIST), alone: stance.waist - MARGIN }[
    shown
  ];
  const marks =
    shown === 'alone'
      ? skirt
      : [
          floorMarks(stance, reach),
          figure,
          ...skirt,
          ...(side === 'side' ? [nearArm(stance)] : []),
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
    handles: handlesOn(plan, stance, surface, side, point(left, -top)),
  };
}

function skirtMarks(plan: SkirtPlan, surface: Surface, side: WornSide): Mark[] {
  const { hex } = plan.request.cloth.colour;
  const { skirt } = plan;
  const length = Math.max(1, skirt.finishedLength.value);
  const casing = Math.min(0.5, skirt.waist.depth / length);
  const hem = Math.min(0.5, (skirt.hemAllowance.value - skirt.hemTurnUnder) / length);
  const edge = outline(surface);
  return [
    clothArea(edge, hex),
    ...rowMarks(plan, surface, side),
    shade(surface, hex, casing),
    gathers(surface, hex, casing, skirt.waist.gatherRatio.value),
    sewnLines(surface, edge, hex, casing, hem, seamsSeen(plan, side)),
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

/** The hem grows downwards, a row's height above it upwards. */
function handlesOn(
  plan: SkirtPlan,
  { scale }: Stance,
  surface: Surface,
  side: WornSide,
  origin: Point,
): PlacedHandle[] {
  const perMm = 1 / scale;
  const on = (across: number, down: number) => {
    const { x, y } = surface.at(across, down);
    return point(x + origin.x, y + origin.y);
  };
  const seen = rowsSeen(plan, side);
  const firsts = plan.ribbons.rows.filter((row, i, rows) => rows[i - 1]?.band !== row.band);
  return [
    { name: 'length', at: on(0, 1), towards: point(0, 1), perMm },
    ...(seen
      ? firsts.map((row): PlacedHandle => {
          const across = Math.min(seen[1], Math.max(seen[0], BESIDE));
          const middle = downAt(plan, row.fromHem.value + row.width.value / 2);
          return { name: `row ${row.number}`, at: on(across, middle), towards: point(0, -1), perMm };
        })
      : []),
  ];
}
