import { point } from '../../../geometry/index.ts';
import { stroke, type Mark } from '../../drawing/index.ts';
import { thinLine } from '../cloth.ts';
import { lineTo } from './lines.ts';
import { person } from './person.ts';
import { spoken, type Scene } from './picture.ts';
import { measured } from './wording.ts';
import { wornSkirt } from './worn.ts';

/** Worn, on the right of a drawing: the finished length is measured from the waist down. */
export function triedOn(scene: Scene): Mark[] {
  const x = 68;
  const body = person(scene, x, 61.5, 57);
  // A skirt longer than its wearer is drawn to the floor.
  const longest = (61.5 - body.waist) / scene.plan.skirt.finishedLength.value;
  const skirt = wornSkirt(scene, { scale: Math.min(body.scale, longest), x, top: body.waist, widest: 13.6 });
  const length = spoken(scene, 'length');
  const hem = Math.min(62.5, skirt.bottom);
  return [
    ...body.marks,
    ...skirt.marks,
    ...(length
      ? [
          stroke([lineTo([x + skirt.halfTop + 1, body.waist], [85, body.waist])], thinLine),
          measured(point(84, body.waist), point(84, hem), scene.speaker.value(length), 0),
        ]
      : []),
  ];
}
