import { point, polyline } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { area, group, stroke, type Ink, type Mark } from '../../drawing/index.ts';
import { mm } from '../../../units/index.ts';
import { downwards, level } from './cloth.ts';
import { lineOn } from './colours.ts';
import type { WornInks } from './inks.ts';
import { openingTurn, overEdge } from './places.ts';
import { within, type WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { acrossFor, bow, button, edgeLine, shadow, stitching } from './trims.ts';
import { acrossOf, isSeen } from './view.ts';
import type { WaistLook } from './waistLook.ts';

interface Drawn {
  readonly plan: SkirtPlan;
  readonly surface: Surface;
  readonly side: WornSide;
  readonly look: WaistLook;
  readonly inks: WornInks;
  readonly scale: number;
}

/** What the waist is closed and shaped by: zip or placket with its button, cord, darts; and a wrap's edge. */
export function closings(drawn: Drawn): Mark[] {
  const marks = [...darts(drawn), ...overlapEdge(drawn), ...opening(drawn), ...cord(drawn)];
  return marks.length > 0 ? [group('closings', marks)] : [];
}

/** The panels that the waist is sewn to. */
const belowWaist = ({ rounds, band }: WornInks): Ink => rounds[0] ?? band;

/** A button of 18 mm. */
const BUTTON = 9;

function darts({ surface, side, look, inks }: Drawn): Mark[] {
  const seen = look.darts.map((turn) => acrossOf(side, turn)).filter(isSeen);
  if (seen.length === 0) return [];
  const lines = seen.map((across) =>
    polyline(
      [0, 0.5, 1].map((t) =>
        // A dart leans a little towards the middle, as the seams beside it do.
        surface.at(across * (0.94 + 0.06 * t), look.band + look.dartLength * t),
      ),
    ),
  );
  return [stroke(lines, { stroke: lineOn(belowWaist(inks)), width: mm(0.25), opacity: 0.85 })];
}

function opening({ plan, surface, side, look, inks, scale }: Drawn): Mark[] {
  const ink = belowWaist(inks);
  const { closure } = plan.skirt.waist;
  if (!closure) return [];
  const across = acrossOf(side, openingTurn(plan));
  if (Math.abs(across) > 1.001) return [];
  const foot = within(look.band, (closure.depth.value * scale) / surface.length, 0.95);
  const place = within(-0.985, across, 0.985);
  const aside = acrossFor(surface, look.band, 3.5 * scale);
  const inside = (u: number): number => within(-0.99, u, 0.99);
  const lap = acrossFor(surface, look.band / 2, closure.overlap.value * scale);
  // At the very edge of the picture an opening is a line along it, and its button is on the far side.
  const faces = isSeen(across) && isSeen(across + lap);
  const beside = closure.kind === 'zip' ? [-1, 1] : [1];
  const stitches = beside.map((way) =>
    polyline([
      ...downwards(surface, inside(place + way * aside), look.band, foot, 6),
      surface.at(place, foot),
    ]),
  );
  return [
    edgeLine(polyline(downwards(surface, place, look.band, foot, 6)), ink),
    ...(faces
      ? [
          stitching(stitches, ink),
          edgeLine(polyline(downwards(surface, inside(place + lap), 0, look.band, 2)), inks.band),
          ...(closure.buttons > 0
            ? button(
                surface.at(inside(place + lap / 2), look.band / 2),
                Math.min(BUTTON * scale, 0.42 * look.band * surface.length),
                inks.band,
              )
            : []),
        ]
      : []),
  ];
}

/** Cloth that a bow's loops and knot take of each end, and how large a loop is. */
const BOW = { takes: 170, loop: 55 };

function cord({ plan, surface, side, look, inks, scale }: Drawn): Mark[] {
  const { cord: run } = plan.skirt.waist;
  if (!run || side === 'back') return [];
  const middle = (look.stitched ?? look.band) / 2;
  const { x, y } = surface.at(side === 'side' ? -1 : 0, middle);
  // Drawn up to the waist, what is left at either end makes the bow and hangs.
  const left = Math.max(0, (run.cut.value - plan.body.waist.value) / 2);
  const loop = Math.min(BOW.loop, 0.2 * left) * scale;
  const end = Math.max(0, left - Math.min(BOW.takes, 0.62 * left)) * scale;
  const width = run.width.value * scale;
  return bow(point(x, y), { loop, end, width, broad: side === 'side' ? 0.35 : 1 }, inks.band);
}

/** A strip beside the edge in its own shade, and how far down the ties hang, of what a tie has. */
const SHADE = 9;
const TIE = { loop: 75, end: 260, width: 30 };

function overlapEdge({ plan, surface, side, look, inks, scale }: Drawn): Mark[] {
  const ink = inks.at(0.5);
  const over = overEdge(plan);
  if (!over) return [];
  const { overlap } = over;
  const across = acrossOf(side, over.turn);
  if (Math.abs(across) > 1.001) return [];
  const place = within(-0.985, across, 0.985);
  const at = (down: number, aside: number): number =>
    within(-0.99, place + over.own * acrossFor(surface, down, aside * scale), 0.99);
  const beside = (aside: number) =>
    Array.from({ length: 15 }, (_, i) => surface.at(at(i / 14, aside), i / 14));
  const edge = beside(0);
  const waist = look.foot / 2;
  const marks: Mark[] = [
    shadow(polyline([...edge, ...beside(-SHADE).toReversed()], { closed: true }), 0.16),
    edgeLine(polyline(edge), ink),
  ];
  if (isSeen(across)) marks.push(stitching(polyline(beside(overlap.facing.value)), ink));
  const high = Math.max(0.3, look.foot * surface.length);
  if (overlap.closes === 'ties') {
    const width = Math.min(TIE.width * scale, 0.9 * high);
    const size = {
      loop: TIE.loop * scale,
      end: Math.min(TIE.end * scale, (plan.body.wears === 'seated' ? 0.14 : 0.6) * surface.length),
      width,
    };
    return [
      ...marks,
      ...bow(surface.at(place, waist), { ...size, broad: side === 'side' ? 0.8 : 1 }, inks.tie),
    ];
  }
  const radius = Math.min(BUTTON * scale, 0.42 * high);
  return [
    ...marks,
    ...[18, 18 + BUTTON * 4].flatMap((aside) =>
      button(surface.at(at(waist, aside), waist), radius, inks.band),
    ),
  ];
}

/** A band that stands above the panels: of knit it is another cloth. */
export function bandMarks(surface: Surface, { band, knit }: WaistLook, ink: Ink): Mark[] {
  if (band === 0 || !knit) return [];
  const path = polyline([...level(surface, 0), ...level(surface, band).toReversed()], { closed: true });
  return [group('band', [area(path, { stroke: null, fill: lineOn(ink), opacity: 0.45 })])];
}
