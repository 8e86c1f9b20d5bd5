import { arc, chordWithin, line, point, type Path } from '../geometry/index.ts';
import { mm, radians, type Mm } from '../units/index.ts';
import type { PanelShape } from './panel.ts';

/** Half the length of a ruler that is longer than any panel is wide. */
const PAST_ANY_SIDE = 1e5;

/**
 * The line that follows the hem at `fromHem` above it, inside an outline of the panel: its raw edges unless another is
 * given. Empty where the panel has none.
 */
export function alongHem(shape: PanelShape, fromHem: Mm, outline: Path = shape.trimmed): Path {
  return chordWithin(outline, shape.apex ? ring(shape, fromHem) : level(shape, fromHem))[0] ?? [];
}

const level = (shape: PanelShape, fromHem: Mm): Path => {
  const y = shape.length - fromHem;
  return [line(point(-PAST_ANY_SIDE, y), point(PAST_ANY_SIDE, y))];
};

/** A circle about the apex, parted at its top, where no panel reaches. */
function ring({ apex }: PanelShape, fromHem: Mm): Path {
  if (!apex) return [];
  const radius = mm(apex.hemRadius - fromHem);
  return radius <= 0
    ? []
    : [arc(point(0, -apex.waistRadius), radius, radians(1.5 * Math.PI), radians(-2 * Math.PI))];
}
