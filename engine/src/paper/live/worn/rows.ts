import { polyline } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Row } from '../../../ribbon/index.ts';
import { mm } from '../../../units/index.ts';
import { area, group, stroke, type Mark } from '../../drawing/index.ts';
import { level } from './cloth.ts';
import { edgeOf, lineOn } from './colours.ts';
import type { WornSide } from './stance.ts';
import type { Surface } from './surface.ts';

/** Of the skirt's round, where the middle of the picture and its edges lie: 0 the middle of the front, ½ of the back. */
const seenAt = (side: WornSide, across: number): number =>
  ({ front: 0, side: 0.25, back: 0.5 })[side] + across / 4;

/** How many panels make the round, the first of them worn in the middle of the front. */
const panelsOf = (plan: SkirtPlan): number => plan.skirt.panels.length;

/** Which part of the picture's breadth carries rows: from and to, −1 to 1; null where none is seen. */
export function rowsSeen(plan: SkirtPlan, side: WornSide): readonly [number, number] | null {
  const { where } = plan.ribbons;
  const half = 1 / (2 * panelsOf(plan));
  if (where === 'front and back' || where === 'round' || half >= 0.5) return [-1, 1];
  const middle = where === 'front' ? 0 : 0.5;
  const from = Math.max(-1, 4 * (middle - half - seenAt(side, 0)));
  const to = Math.min(1, 4 * (middle + half - seenAt(side, 0)));
  return to - from > 1e-6 ? [from, to] : null;
}

/** Seams between panels, as places across the picture; those at its very edges are not seen. */
export function seamsSeen(plan: SkirtPlan, side: WornSide): number[] {
  const panels = panelsOf(plan);
  return Array.from({ length: panels }, (_, i) => (i + 0.5) / panels)
    .flatMap((place) => [place, place - 1])
    .map((place) => 4 * (place - seenAt(side, 0)))
    .filter((across) => Math.abs(across) < 0.97);
}

/** From the top fold, 0, to the hem, 1: where a height above the finished hem lies. */
export const downAt = (plan: SkirtPlan, fromHem: number): number =>
  Math.max(0, 1 - fromHem / Math.max(1, plan.skirt.finishedLength.value));

/** A line of stitching lies so far inside a ribbon's edge. Common practice, no source. */
const EDGE_STITCH = 2.5;

export function rowMarks(plan: SkirtPlan, surface: Surface, side: WornSide): Mark[] {
  const seen = rowsSeen(plan, side);
  if (!seen) return [];
  return plan.ribbons.rows.map((row) =>
    group(`row ${String(row.number)}`, rowMark(plan, surface, row, seen)),
  );
}

function rowMark(plan: SkirtPlan, surface: Surface, row: Row, [from, to]: readonly [number, number]): Mark[] {
  const { value: width } = row.width;
  const along = (fromHem: number, finely = 1) => level(surface, downAt(plan, fromHem), from, to, finely);
  const low = row.fromHem.value;
  const inset = Math.min(EDGE_STITCH, width * 0.22);
  const edge = polyline([...along(low + width), ...along(low).toReversed()], { closed: true });
  const { hex } = row.colour;
  return [
    area(edge, { stroke: edgeOf(hex), fill: hex, width: mm(0.14) }),
    stroke([polyline(along(low + width - inset, 0.7)), polyline(along(low + inset, 0.7))], {
      stroke: lineOn(hex),
      width: mm(0.11),
      dash: 'hidden',
      opacity: 0.75,
    }),
  ];
}
