import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw } from '../picture.ts';
import { band } from '../ribbons.ts';
import { bowed, movement } from '../signs.ts';
import { edgeOn, patch } from '../surface.ts';
import { measured } from '../wording.ts';

const FOLD = 52;

/** Inside: the free edge folded in, then folded again and stitched from the top down; below cut through. */
export const faceEdges: Draw = (scene) => {
  const facing = spoken(scene, 'facing');
  const size = within(9, (facing?.value ?? 25) * 0.5, 18);
  const inner = FOLD - size;
  const crossed = scene.plan.ribbons.rows.length > 0 && scene.plan.ribbons.where === 'round';
  return {
    height: 62,
    marks: [
      ...patch('wrong', { left: 5, top: 4, right: FOLD, bottom: 42, torn: ['left', 'bottom', 'top'] }),
      ...patch('right', { left: inner, top: 4, right: FOLD, bottom: 42, torn: ['bottom', 'top'] }),
      // A row that runs to the edge turns in with it.
      ...(crossed ? [band(scene, 0, inner, 27, FOLD, 33)] : []),
      ...stitches(lineTo([inner + 1.6, 4.6], [inner + 1.6, 41])),
      ...movement(lineTo([inner - 3.4, 8], [inner - 3.4, 22])),
      ...section(size, facing ? scene.speaker.value(facing) : ''),
      ...order(),
    ],
  };
};

/** From above: the raw end lies inside both folds. */
function section(size: number, value: string): Mark[] {
  const y = 48;
  const inner = FOLD - size;
  return [
    ...edgeOn(lineTo([8, y], [FOLD, y], [FOLD, y + 4], [inner, y + 4], [inner, y + 2], [FOLD - 2, y + 2])),
    stroke(lineTo([inner + 1.6, y - 1.4], [inner + 1.6, y + 5.6]), { width: mm(0.6) }),
    dot(point(inner + 1.6, y - 1.4), mm(0.6)),
    dot(point(inner + 1.6, y + 5.6), mm(0.6)),
    ...(value ? [measured(point(inner, y + 5), point(FOLD, y + 5), value, 4.4)] : []),
  ];
}

/** The two turns one after the other. */
function order(): Mark[] {
  const [left, right] = [62, 82];
  return [
    ...edgeOn(lineTo([left, 10], [right, 10])),
    ...bowed(point(right, 8), point(right - 9, 8), -3.4),
    ...movement(lineTo([72, 14], [72, 19])),
    ...edgeOn(lineTo([left, 27], [right - 4, 27], [right - 4, 29.2], [right - 13, 29.2])),
    ...bowed(point(right - 4, 25), point(right - 15, 25), -3.4),
    ...movement(lineTo([72, 33], [72, 38])),
    ...edgeOn(
      lineTo(
        [left, 44],
        [right - 5, 44],
        [right - 5, 48],
        [right - 16, 48],
        [right - 16, 46],
        [right - 7, 46],
      ),
    ),
    stroke(lineTo([right - 14.6, 42.4], [right - 14.6, 49.6]), { width: mm(0.6), stroke: inks.ink }),
  ];
}
