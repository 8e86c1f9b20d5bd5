import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine } from '../../cloth.ts';
import { curve } from '../lines.ts';
import { openPanel, shapeOf } from '../panel.ts';
import { spoken, type Draw } from '../picture.ts';
import { clip, clock, hanger, shears } from '../tools/index.ts';
import { measured, named } from '../wording.ts';

/** The panel hangs by its waist; where the slanting sides have dropped, the hem is trimmed level. */
export const hang: Draw = (scene) => {
  const { speaker } = scene;
  const shape = shapeOf(scene);
  const { fitted, marks: panel } = openPanel(scene, 'right', { left: 4, top: 14, width: 48, height: 40 });
  const { left, top, width, height } = fitted.box;
  const bottom = top + height;
  const middle = left + width / 2;
  const half = Math.min(14, width / 3);
  const hours = spoken(scene, 'hours');
  const trueLine = stroke(
    fitted.path(shape.edges.find(({ name }) => name === 'hem')?.finished ?? []),
    chalkLine,
  );
  const sides = [-1, 1].map((side) => {
    const at = (share: number, drop: number) => {
      const x = middle + side * (width / 2) * share;
      return point(x, bottom - sagAt(scene, share) * fitted.scale + drop);
    };
    return area(
      [
        ...curve([at(0.35, 0), at(0.6, 1.8), at(0.82, 3), at(0.97, 1)]),
        ...curve([at(0.97, 0), at(0.7, 0), at(0.35, 0)]),
      ],
      { fill: inks.wash, pattern: 'diagonal', width: mm(0.3) },
    );
  });
  const marks: Mark[] = [
    ...sides,
    ...panel,
    trueLine,
    hanger({ x: middle, y: top - 0.6 }, half + 3),
    clip({ x: middle - half, y: top + 2, turn: 90, scale: 0.8 }),
    clip({ x: middle + half, y: top + 2, turn: 90, scale: 0.8 }),
    measured(
      fitted.at(point(0, 0)),
      fitted.at(point(0, shape.length)),
      speaker.value(scene.plan.skirt.finishedLength),
      0,
    ),
    shears({ x: left + width + 3, y: bottom - 2, turn: 195, scale: 0.9 }),
    clock({ x: 71, y: 15 }),
    ...(hours ? [...named(point(71, 32), speaker.name(hours), speaker.value(hours), { room: 27 })] : []),
  ];
  return { height: Math.max(60, bottom + 8), marks };
};

/** How far a curved raw edge lies above its middle, at a share of its half width. */
function sagAt({ plan }: Parameters<Draw>[0], share: number): number {
  const { apex, hemAllowance } = plan.skirt.panels[0].shape;
  if (!apex) return 0;
  const radius = apex.hemRadius + hemAllowance;
  return radius * (1 - Math.cos(Math.min(1.5, apex.halfSweep * share)));
}
