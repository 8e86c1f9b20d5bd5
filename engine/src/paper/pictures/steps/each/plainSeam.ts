import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { group } from '../../../drawing/index.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw } from '../picture.ts';
import { edgeOn } from '../surface.ts';
import { throughAll } from '../section.ts';
import { patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const TOP = 8;
const BOTTOM = 46;
const EDGE = 58;

/** Any seam: two layers right sides together, pinned, stitched beside their edges; on the right cut through. */
export const plainSeam: Draw = (scene) => {
  const seam = spoken(scene, 'seam');
  const inset = within(4, (seam?.value ?? 10) * 0.7, 14);
  const line = EDGE - inset;
  const sheet = { left: 6, top: TOP, right: EDGE, bottom: BOTTOM, torn: ['left', 'top', 'bottom'] } as const;
  return {
    height: 56,
    marks: [
      group('under', patch('right', sheet), { placement: { dx: mm(1.4), dy: mm(1.4) } }),
      ...patch('wrong', sheet),
      ...stitches(lineTo([line, TOP + 1], [line, BOTTOM - 1])),
      ...[TOP + 9, TOP + 28].flatMap((y) => [pin({ x: EDGE + 3, y, turn: 180 }, 10, [3, 7])]),
      ...(seam
        ? [measured(point(line, BOTTOM + 1), point(EDGE, BOTTOM + 1), scene.speaker.value(seam), 2.6)]
        : []),
      ...edgeOn(lineTo([74, TOP], [74, BOTTOM])),
      ...edgeOn(lineTo([77, TOP], [77, BOTTOM])),
      ...throughAll(74, 77, TOP + 9),
    ],
  };
};
