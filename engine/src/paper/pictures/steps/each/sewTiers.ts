import { point } from '../../../../geometry/index.ts';
import type { Panel } from '../../../../skirt/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, group, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { edgeOn, patch } from '../surface.ts';
import { tiersMeeting, toned } from '../tone.ts';
import { foot, pin } from '../tools/index.ts';
import { measured } from '../wording.ts';

const LEFT = 4;
const RIGHT = 58;
const EDGE = 12;

/** The gathered tier lies uppermost, wrong side up, pinned quarter to quarter on the one above; its seam is pressed up. */
export const sewTiers: Draw = (scene) => {
  const seam = spoken(scene, 'seam');
  const inset = within(4, (seam?.value ?? 10) * 0.55, 10);
  const line = EDGE + inset;
  const { above, below } = tiersMeeting(scene.plan);
  const gathered = scene.plan.sewing.steps.some(({ id }) => id === 'gather');
  return {
    height: 60,
    marks: [
      group(
        'tier above',
        toned(
          scene,
          above,
          patch('right', {
            left: LEFT,
            top: EDGE,
            right: RIGHT,
            bottom: 52,
            torn: ['left', 'right', 'bottom'],
          }),
        ),
        { placement: { dx: mm(-1.4), dy: mm(-1.6) } },
      ),
      ...patch('wrong', {
        left: LEFT,
        top: EDGE,
        right: RIGHT,
        bottom: 52,
        torn: ['left', 'right', 'bottom'],
      }),
      ...(gathered ? gathers(line) : []),
      ...stitches(lineTo([LEFT, line], [36, line])),
      foot({ x: 37, y: line, scale: 0.75 }),
      ...[12, 50].flatMap((x) => [
        stroke(lineTo([x, EDGE], [x, EDGE + 2.4]), { width: mm(0.7) }),
        pin({ x, y: EDGE - 4, turn: 90 }, 13, [4, 10]),
      ]),
      ...(seam ? [measured(point(61.4, EDGE), point(61.4, line), scene.speaker.value(seam), 0)] : []),
      ...pressedUp(scene, above, below),
    ],
  };
};

/** Long and short folds by turns on both sides of the seam line, two rows of gathering stitches beside it. */
function gathers(line: number): Mark[] {
  const folds = Array.from({ length: 18 }, (_, i) => {
    const x = LEFT + 2.4 + i * 2.95;
    const long = [17, 8, 12][i % 3] ?? 9;
    return curve([point(x, EDGE + 0.8), point(x + 0.5, line), point(x - 0.3, line + long)]);
  });
  return [
    stroke(folds, { width: mm(0.22) }),
    // Inside the seam allowance, so that none of it shows.
    ...[-3, -1.5].flatMap((off) => stitches(lineTo([LEFT, line + off], [RIGHT, line + off]))),
  ];
}

/** Cut through: the tier above comes down, the one below goes on, and both edges lie up behind. */
function pressedUp(scene: Scene, above: Panel, below: Panel): Mark[] {
  const [x, seam] = [68, 32];
  return [
    ...toned(scene, above, edgeOn(lineTo([x, 6], [x, seam], [x + 2.4, seam], [x + 2.4, seam - 12]))),
    ...toned(
      scene,
      below,
      edgeOn(
        curve([
          point(x + 4.6, seam - 12),
          point(x + 4.8, seam - 1),
          point(x + 4.4, seam + 2.4),
          point(x + 1.6, seam + 3),
          point(x + 0.4, seam + 8),
          point(x + 1.6, seam + 14),
          point(x - 0.6, seam + 19),
          point(x + 1, seam + 25),
        ]),
      ),
    ),
    stroke(lineTo([x - 0.6, seam - 2.4], [x + 6.4, seam - 2.4]), { width: mm(0.6) }),
    dot(point(x + 6.4, seam - 2.4), mm(0.7)),
  ];
}
