import { arc, line, point, type Path } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { stroke, type Mark } from '../drawing/index.ts';

/** How the folded cloth looks from its lower edge: which layers are joined on the left and on the right. */
interface Joins {
  readonly layers: number;
  readonly left: readonly (readonly [number, number])[];
  readonly right: readonly (readonly [number, number])[];
}

/**
 * Folded in half and in half again, the second fold makes one crease inside the other at the centre; at the
 * side the first crease joins two layers and the raw ends of the cloth are the other two.
 */
const foldedTwice: Joins = {
  layers: 4,
  left: [
    [0, 3],
    [1, 2],
  ],
  right: [[2, 3]],
};
const foldedOnce: Joins = { layers: 2, left: [[0, 1]], right: [] };
/** Panels cut as blocks, each folded along its centre, one on the other. */
const stacked: Joins = {
  layers: 4,
  left: [
    [0, 1],
    [2, 3],
  ],
  right: [],
};

/** Panels that lie head to tail are marked whole, on one layer: only their right half is drawn. */
const whole: Joins = { layers: 1, left: [], right: [] };

function joinsOf({ cloth, skirt }: SkirtPlan): Joins {
  if (cloth.chosen.headToTail) return whole;
  switch (cloth.chosen.kind) {
    case 'double fold':
      return foldedTwice;
    case 'lengthwise fold':
      return foldedOnce;
    default:
      return skirt.panels.length >= 2 ? stacked : foldedOnce;
  }
}

/** Words for the two upright edges of the folded cloth. */
export function edgeNames(
  plan: SkirtPlan,
  speaker: Speaker,
): { readonly centre: string; readonly side: string } {
  const { papers } = speaker.words;
  const joins = joinsOf(plan);
  return {
    centre: joins === whole ? papers.centreLine : joins.left.length > 1 ? papers.twoFolds : papers.oneFold,
    side: joins === foldedTwice ? papers.foldAndEnds : papers.sideEdge,
  };
}

const APART = 1.7;

export function edgeView(plan: SkirtPlan, left: number, right: number, top: number): Mark[] {
  const joins = joinsOf(plan);
  if (joins === whole) return [];
  const levelOf = (layer: number): number => top + layer * APART;
  const layers: Path[] = Array.from({ length: joins.layers }, (_, i) => [
    line(point(left, levelOf(i)), point(right, levelOf(i))),
  ]);
  const bends = (pairs: Joins['left'], x: number, side: 1 | -1): Path[] =>
    pairs.map(([a, b]) => [
      arc(
        point(x, (levelOf(a) + levelOf(b)) / 2),
        mm(((b - a) * APART) / 2),
        radians(-Math.PI / 2),
        radians(side * Math.PI),
      ),
    ]);
  return [
    stroke([...layers, ...bends(joins.left, left, -1), ...bends(joins.right, right, 1)], { width: mm(0.45) }),
  ];
}
