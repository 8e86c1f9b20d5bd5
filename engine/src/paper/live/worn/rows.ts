import { polyline } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Row } from '../../../ribbon/index.ts';
import { mm } from '../../../units/index.ts';
import { area, group, stroke, type Mark } from '../../drawing/index.ts';
import { level } from './cloth.ts';
import { edgeOf, lineOn } from './colours.ts';
import type { WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { isSeen, joined, seamTurns, acrossOf, stretchesSeen, type Stretch } from './view.ts';

/** Which parts of the picture's breadth carry a row. */
export const rowSeen = ({ lines }: Row, side: WornSide): Stretch[] =>
  joined(lines.flatMap(({ panel }) => stretchesSeen(side, panel.around)));

/** From the top of the waist, 0, to the hem, 1: where a height above the finished hem lies. */
export const downAt = (plan: SkirtPlan, fromHem: number): number =>
  Math.max(0, 1 - fromHem / Math.max(1, plan.skirt.finishedLength.value));

/** Seams between panels that are seen, each down its own round; strips of tiers are joined within gathers, unseen. */
export function seamsSeen(plan: SkirtPlan, side: WornSide, foot: number) {
  const { skirt } = plan;
  if (skirt.rounds.length > 1) return [];
  return seamTurns(skirt, skirt.rounds[0])
    .map((turn) => ({ across: acrossOf(side, turn), from: foot, to: 1 }))
    .filter(({ across }) => isSeen(across));
}

/** A line of stitching lies so far inside a ribbon's edge. Common practice, no source. */
const EDGE_STITCH = 2.5;

export const rowMarks = (plan: SkirtPlan, surface: Surface, side: WornSide): Mark[] =>
  plan.ribbons.rows.flatMap((row) => {
    const seen = rowSeen(row, side);
    if (seen.length === 0) return [];
    return [group(`row ${String(row.number)}`, rowMark(plan, surface, row, seen))];
  });

function rowMark(plan: SkirtPlan, surface: Surface, row: Row, seen: readonly Stretch[]): Mark[] {
  const { value: width } = row.width;
  const low = row.fromHem.value;
  const inset = Math.min(EDGE_STITCH, width * 0.22);
  const { hex } = row.colour;
  const edges = seen.map(([from, to]) => {
    const along = (fromHem: number) => level(surface, downAt(plan, fromHem), from, to);
    return polyline([...along(low + width), ...along(low).toReversed()], { closed: true });
  });
  const stitches = seen.flatMap(([from, to]) =>
    [low + width - inset, low + inset].map((fromHem) =>
      polyline(level(surface, downAt(plan, fromHem), from, to, 0.7)),
    ),
  );
  return [
    area(edges, { stroke: edgeOf(hex), fill: hex, width: mm(0.14) }),
    stroke(stitches, { stroke: lineOn(hex), width: mm(0.11), dash: 'hidden', opacity: 0.75 }),
  ];
}
