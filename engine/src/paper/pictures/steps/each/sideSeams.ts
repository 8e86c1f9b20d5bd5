import { endOf, point, startOf } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { group, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { flatRows, openPanel, rowDots, shapeOf } from '../panel.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { band, ribbon, rowsMeet } from '../ribbons.ts';
import { movement } from '../signs.ts';
import { cloth, patch } from '../surface.ts';
import { pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

/** Right sides together: rows matched and pinned at the sides first, then sewn from hem to top. */
export const sideSeams: Draw = (scene) => {
  const shape = shapeOf(scene);
  const { rows, shape: carrying } = flatRows(scene);
  const { fitted, marks: panel } = openPanel(scene, 'wrong', { left: 6, top: 5, width: 39, height: 52 });
  const one = scene.plan.sewing.steps.some(({ id }) => id === 'firstSeams');
  const names = one ? (['right'] as const) : (['left', 'right'] as const);
  const sides = names.flatMap((name) => shape.edges.filter((edge) => edge.name === name));
  const sewn = sides.flatMap(({ finished, name }): Mark[] => {
    const path = fitted.path(finished);
    const [first] = path;
    if (!first) return [];
    const [a, b] = [startOf(first), endOf(first)];
    const [bottom, top] = a.y > b.y ? [a, b] : [b, a];
    const out = name === 'right' ? 3.4 : -3.4;
    return [
      ...stitches(path),
      ...movement(
        lineTo(
          [bottom.x + out, bottom.y],
          [bottom.x + (top.x - bottom.x) * 0.3 + out, bottom.y + (top.y - bottom.y) * 0.3],
        ),
      ),
    ];
  });
  // Only the ends of rows that this panel carries meet at its sides.
  const pins = (carrying === shape ? rows : []).flatMap(({ lower }) =>
    rowDots(lower)
      .slice(0, 2)
      .map((end) => fitted.at(end))
      .filter(({ x }) => !one || x > fitted.box.left + fitted.box.width / 2)
      .map(({ x, y }) => {
        const isRight = x > fitted.box.left + fitted.box.width / 2;
        return pin({ x: x + (isRight ? 1.4 : -1.4), y, turn: isRight ? 180 : 0, scale: 0.75 });
      }),
  );
  const { left, top, width, height } = fitted.box;
  const corner = point(left + width, top + height * 0.7);
  const marks: Mark[] = [
    group('under', cloth('right', fitted.path(shape.trimmed), { width: mm(0.3) }), {
      placement: { dx: mm(1), dy: mm(1) },
    }),
    ...panel,
    ...sewn,
    ...pins,
    rectangle(corner.x - 4, corner.y - 4, 8, 8, { width: mm(0.3), stroke: inks.grey }),
    stroke(lineTo([corner.x + 4, corner.y], [54, 30]), thinLine),
    ...detail(scene),
  ];
  return { height: 62, marks };
};

/** The side close by: the upper layer lifted, so that the two ends of one row are seen to meet. */
function detail(scene: Scene): Mark[] {
  const seam = spoken(scene, 'seam');
  const inset = within(4, (seam?.value ?? 0) * 0.9, 12);
  const [side, top, bottom] = [79, 6, 53];
  const line = side - inset;
  const meet = rowsMeet(scene);
  const lifted = [
    ...curve([
      point(side, 10),
      point(side - 1, 16),
      point(side - 11, 22),
      point(side - 12, 29),
      point(side - 11, 36),
      point(side - 1, 42),
      point(side, 48),
    ]),
  ];
  const back = [
    ...lifted,
    ...lineTo([side, 48], [side, bottom], [56, bottom], [56, top], [side, top], [side, 10]),
  ];
  const turnedBack = curve(
    [
      point(side - 1, 16),
      point(side - 9, 18.5),
      point(side - 15.4, 24),
      point(side - 16.4, 29),
      point(side - 15.4, 34),
      point(side - 9, 39.5),
      point(side - 1, 42),
      point(side - 11, 36),
      point(side - 12, 29),
      point(side - 11, 22),
    ],
    true,
  );
  return [
    ...patch('right', { left: 56, top, right: side + 2, bottom, torn: ['top', 'left', 'bottom'] }),
    ...(meet ? [band(scene, 0, 60, 25, side + 2, 33)] : []),
    ...cloth('wrong', back, { width: mm(0.3) }),
    ...cloth('right', turnedBack, { width: mm(0.4) }),
    ...(meet
      ? [
          ribbon(
            scene,
            0,
            lineTo(
              [side - 16.2, 25.4],
              [side - 11.7, 25.4],
              [side - 11.7, 32.6],
              [side - 16.2, 32.6],
              [side - 16.2, 25.4],
            ),
          ),
        ]
      : []),
    ...stitches(lineTo([line, bottom], [line, 43])),
    pin({ x: side + 4, y: 47, turn: 180 }, 9, [3, 7]),
    pin({ x: side + 4, y: 12, turn: 180 }, 9, [3, 7]),
    ...(seam ? [measured(point(line, bottom), point(side, bottom), scene.speaker.value(seam), 2.4)] : []),
  ];
}
