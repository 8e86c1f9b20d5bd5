import { arc, line, point, type Path } from '../../../geometry/index.ts';
import { mm, radians } from '../../../units/index.ts';
import type { Mark } from '../../drawing/index.ts';
import type { Scene } from './picture.ts';
import { edgeOn, frayed } from './surface.ts';

/**
 * How cloth lies: folded twice; so folded, the fold at its side slit; each panel's cloth folded once along its
 * centre and lain fold on fold; folded once for one panel after another; or not folded, as straight widths and
 * panels that lie head to tail are.
 */
type Folding = 'twice' | 'slit' | 'fold on fold' | 'once' | 'open';

export function foldingOf({ plan }: Scene): Folding {
  const { cloth, skirt } = plan;
  if (cloth.chosen.kind === 'double fold') return 'twice';
  // Only panels that are chalked from their centre fold are folded each along it.
  if (skirt.marking !== 'at the fold') return cloth.chosen.table.layers === 1 ? 'open' : 'once';
  if (cloth.chosen.headToTail) return 'open';
  if (cloth.chosen.kind === 'lengthwise fold') return 'once';
  return skirt.panels.length > 1 ? 'fold on fold' : 'once';
}

export const layersOf: Readonly<Record<Folding, number>> = {
  twice: 4,
  slit: 4,
  'fold on fold': 4,
  once: 2,
  open: 1,
};

/** What the upright edge on the left is: the folds, or the centre line of a panel that is marked whole. */
export function centreWords(scene: Scene): string {
  const { papers } = scene.speaker.words;
  const layers = layersOf[foldingOf(scene)];
  if (layers === 1) return papers.centreLine;
  return layers > 2 ? papers.twoFolds : papers.oneFold;
}

export const BETWEEN_LAYERS = 2.6;

/** How far each layer's end on the right lies back, so that every end is seen. */
export const ENDS = [0, 1.6, 3.2, 3.2] as const;

const level = (y: number, from: number, to: number): Path => [line(point(from, y), point(to, y))];
const bend = (x: number, from: number, to: number, side: 1 | -1): Path => [
  arc(
    point(x, (from + to) / 2),
    mm(Math.abs(to - from) / 2),
    radians(from < to ? -Math.PI / 2 : Math.PI / 2),
    radians((from < to ? 1 : -1) * side * Math.PI),
  ),
];

/**
 * The folded cloth seen from its edge, its centre on the left, as one thread of cloth from raw end to raw end:
 * what is a fold there and what is an end can be followed with a finger.
 */
export function layersSeen(folding: Folding, left: number, right: number, top: number): Mark[] {
  const y = (layer: number): number => top + layer * BETWEEN_LAYERS;
  const x = (layer: number): number => right + (ENDS[layer] ?? 0);
  const ends = (layers: readonly number[]): Mark[] =>
    layers.map((layer) => frayed(x(layer) + 0.3, y(layer), 1));
  const folded = (upper: number, lower: number): Path => [
    ...level(y(upper), x(upper), left),
    ...bend(left, y(upper), y(lower), -1),
    ...level(y(lower), left, x(lower)),
  ];
  switch (folding) {
    case 'twice':
      return [
        ...edgeOn([
          ...folded(0, 3),
          ...bend(x(3), y(3), y(2), 1),
          ...level(y(2), x(2), left),
          ...bend(left, y(2), y(1), -1),
          ...level(y(1), left, x(1)),
        ]),
        ...ends([0, 1]),
      ];
    case 'slit':
      return [...edgeOn(folded(0, 3)), ...edgeOn(folded(1, 2)), ...ends([0, 1, 2, 3])];
    case 'fold on fold':
      return [...edgeOn(folded(0, 1)), ...edgeOn(folded(2, 3)), ...ends([0, 1, 2, 3])];
    case 'once':
      return [...edgeOn(folded(0, 1)), ...ends([0, 1])];
    case 'open':
      return [
        ...edgeOn(level(y(0), left, right)),
        frayed(right + 0.3, y(0), 1),
        frayed(left - 0.3, y(0), -1),
      ];
  }
}
