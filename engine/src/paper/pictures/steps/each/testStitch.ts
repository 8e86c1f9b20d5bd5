import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, stitches, wavy } from '../lines.ts';
import type { Draw, Scene } from '../picture.ts';
import { band, ribbon } from '../ribbons.ts';
import { bad, good } from '../signs.ts';
import { patch } from '../surface.ts';
import { bobbin, needle } from '../tools/index.ts';
import { note } from '../wording.ts';

/** A scrap with a row that lies flat and a row that puckers. */
export const testStitch: Draw = (scene) => {
  const { speaker, step, plan } = scene;
  const { papers, stitches: names } = speaker.words;
  const { stitch } = step;
  const hasRows = plan.ribbons.rows.length > 0;
  const marks: Mark[] = [
    ...patch('right', { left: 4, top: 5, right: 54, bottom: 51, torn: ['left', 'right'] }),
    ...(hasRows
      ? [
          band(scene, 0, 4, 11, 54, 21),
          ...stitches(lineTo([4, 12.2], [54, 12.2]), true),
          ...stitches(lineTo([4, 19.8], [54, 19.8]), true),
        ]
      : stitches(lineTo([4, 16], [54, 16]))),
    ...puckered(scene, hasRows),
    ...good(61, 16),
    ...bad(61, 39),
    needle({ x: 72, y: 26 }),
    bobbin({ x: 74, y: 39 }),
    ...(stitch
      ? note(
          point(72, 49),
          speaker.text(papers.stitchLength, { stitch: names[stitch.stitch], length: stitch.length }),
          { room: 25 },
        )
      : []),
  ];
  return { height: 56, marks };
};

/** Both edges drawn up: they wave, and wrinkles run out from the stitches. */
function puckered(scene: Scene, hasRows: boolean): Mark[] {
  const upper = wavy(lineTo([4, 34], [54, 34]), 0.7, 5);
  const lower = wavy(lineTo([54, 44], [4, 44]), 0.7, 5);
  const wrinkles = Array.from({ length: 10 }, (_, i) => {
    const x = 6.2 + i * 5;
    return [-1, 1].map((side) => {
      const y = 39 + side * 4;
      return curve([point(x, y - side * 2.2), point(x + 0.7, y), point(x - 0.3, y + side * 3.4)]);
    });
  }).flat();
  const corners = [...upper, ...lower].flatMap((each) => (each.kind === 'line' ? [each.from] : []));
  return [
    ...(hasRows ? [ribbon(scene, 0, polyline(corners, { closed: true }))] : []),
    ...stitches(wavy(lineTo([4, 35.2], [54, 35.2]), 0.7, 5), hasRows),
    ...(hasRows ? stitches(wavy(lineTo([4, 42.8], [54, 42.8]), 0.7, 5), true) : []),
    stroke(wrinkles, { width: mm(0.7), stroke: inks.paper }),
    stroke(wrinkles, { width: mm(0.3) }),
  ];
}
