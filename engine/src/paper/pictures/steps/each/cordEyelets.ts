import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, thinLine } from '../../cloth.ts';
import { lineTo } from '../lines.ts';
import { spoken, type Draw } from '../picture.ts';
import { edgeOn, patch } from '../surface.ts';
import { buttonhole } from '../waistParts.ts';
import { measured } from '../wording.ts';

const TOP = 8;
const FOLD = 22;
const HOLE = 34;
const CENTRE = 30;

/** The flat top, right side up, before it is turned: two small holes beside the centre front, below the fold line. */
export const cordEyelets: Draw = (scene) => {
  const { speaker } = scene;
  const aside = spoken(scene, 'aside');
  const down = spoken(scene, 'down');
  const [left, right, bottom] = [5, 57, 54];
  const out = 10;
  const marks: Mark[] = [
    ...patch('right', { left, top: TOP, right, bottom, torn: ['left', 'right', 'bottom'] }),
    stroke(lineTo([left, FOLD], [right, FOLD]), { ...chalkLine, width: mm(0.45) }),
    stroke(lineTo([CENTRE, TOP], [CENTRE, bottom - 0.6]), { ...chalkLine, width: mm(0.35) }),
    ...[-1, 1].flatMap((way): Mark[] => {
      const x = CENTRE + way * out;
      return [
        stroke(
          lineTo(
            [x - 4.4, HOLE - 5.4],
            [x + 4.4, HOLE - 5.4],
            [x + 4.4, HOLE + 5.4],
            [x - 4.4, HOLE + 5.4],
            [x - 4.4, HOLE - 5.4],
          ),
          { dash: 'hidden', width: mm(0.35), stroke: inks.grey },
        ),
        ...buttonhole(point(x, HOLE - 2.6), point(x, HOLE + 2.6)),
      ];
    }),
    ...(aside
      ? [measured(point(CENTRE, HOLE + 8), point(CENTRE + out, HOLE + 8), speaker.value(aside), 2)]
      : []),
    ...(down
      ? [measured(point(CENTRE + 16, FOLD), point(CENTRE + 16, HOLE), speaker.value(down), -2.6)]
      : []),
    ...once(),
  ];
  return { height: 58, marks };
};

/** Cut through once the top is turned: the hole is in the outer layer alone, and the cord comes out by it. */
const once = (): Mark[] => {
  const x = 70;
  return [
    ...edgeOn(lineTo([x, 54], [x, 32])),
    ...edgeOn(lineTo([x, 26], [x, 16], [x + 1.6, 13], [x + 4.4, 13], [x + 6, 16], [x + 6, 40])),
    stroke(lineTo([x - 1.4, 26], [x + 1.4, 26]), { width: mm(0.5) }),
    stroke(lineTo([x - 1.4, 32], [x + 1.4, 32]), { width: mm(0.5) }),
    stroke(lineTo([x + 1.6, 24], [x + 1.6, 34]), { ...thinLine, dash: 'hidden', width: mm(0.35) }),
  ];
};
