import { point, polyline } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, stitches, wavy } from '../lines.ts';
import type { Draw, Scene } from '../picture.ts';
import { band, ribbon } from '../ribbons.ts';
import { bad, good, movement, turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { foot } from '../tools/index.ts';
import { note } from '../wording.ts';

/** Lower edge, then upper, both sewn the same way; the other way round the ribbon twists. */
export const stitchRibbon: Draw = (scene) => {
  const { speaker, step } = scene;
  const { papers, stitches: names } = speaker.words;
  const { stitch } = step;
  const marks: Mark[] = [
    ...patch('right', { left: 3, top: 4, right: 74, bottom: 34, torn: ['left', 'right', 'top', 'bottom'] }),
    band(scene, 0, 3, 12, 74, 26),
    ...stitches(lineTo([3, 24.4], [74, 24.4]), true),
    ...stitches(lineTo([3, 13.6], [44, 13.6]), true),
    foot({ x: 45, y: 13.6 }),
    ...turn(8, 29.8, '1'),
    ...movement(lineTo([13, 29.8], [40, 29.8])),
    ...turn(8, 8.2, '2'),
    ...movement(lineTo([13, 8.2], [40, 8.2])),
    ...good(80, 19),
    ...twisted(scene),
    ...bad(41, 48),
    ...(stitch
      ? note(
          point(65.5, 48),
          speaker.text(papers.stitchLength, { stitch: names[stitch.stitch], length: stitch.length }),
          { room: 36 },
        )
      : []),
  ];
  return { height: 60, marks };
};

function twisted(scene: Scene): Mark[] {
  const upper = wavy(lineTo([3, 43.5], [36, 43.5]), 0.7, 6);
  const lower = wavy(lineTo([36, 52.5], [3, 52.5]), 0.7, 6);
  const corners = [...upper, ...lower].flatMap((each) => (each.kind === 'line' ? [each.from] : []));
  const ripples = Array.from({ length: 6 }, (_, i) => {
    const x = 3 + i * 5.4;
    return curve([point(x, 51), point(x + 2, 48.6), point(x + 4, 47), point(x + 6, 45)]);
  });
  return [
    ...patch('right', { left: 3, top: 38, right: 36, bottom: 58, torn: ['left', 'right', 'top', 'bottom'] }),
    ribbon(scene, 0, polyline(corners, { closed: true })),
    stroke(ripples, { width: mm(0.9), stroke: inks.paper }),
    stroke(ripples, { width: mm(0.35) }),
    ...movement(lineTo([8, 55.6], [22, 55.6])),
    ...movement(lineTo([31, 40.6], [17, 40.6])),
  ];
}
