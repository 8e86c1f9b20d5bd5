import { point } from '../../../../geometry/index.ts';
import { straight, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import type { Draw } from '../picture.ts';
import { measured, named } from '../wording.ts';
import { wornSkirt } from '../worn.ts';

const TOP = 6;

/** The skirt as it comes off the board, its rows to scale, with what is written down for the next one. */
export const finish: Draw = (scene) => {
  const { speaker, plan } = scene;
  const { skirt } = plan;
  const scale = 45 / skirt.finishedLength.value;
  const worn = wornSkirt(scene, { scale: Math.min(scale, 0.16), x: 40, top: TOP, widest: 34 });
  const right = 40 + worn.halfHem;
  const side = Math.min(76, right + 5);
  const marks: Mark[] = [
    ...worn.marks,
    straight(point(40 + worn.halfTop + 1, TOP), point(side + 1.4, TOP), thinLine),
    straight(point(right + 1, worn.bottom), point(side + 1.4, worn.bottom), thinLine),
    measured(point(side, TOP), point(side, worn.bottom), speaker.value(skirt.finishedLength), 0),
    ...named(point(40, worn.bottom + 8.4), speaker.name(skirt.hemRound), speaker.value(skirt.hemRound), {
      room: 76,
    }),
  ];
  return { height: Math.max(50, worn.bottom + 13), marks };
};
