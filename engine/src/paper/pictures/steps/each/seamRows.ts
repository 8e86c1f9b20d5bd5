import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { dot, inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, foldLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import { spoken, within, type Draw, type Scene } from '../picture.ts';
import { band, ribbonLook } from '../ribbons.ts';
import { edgeOn, patch } from '../surface.ts';
import { tiersMeeting, toned } from '../tone.ts';
import { measured } from '../wording.ts';

const SEAM = 24;

/** The ribbon lies over the seam of two tiers, its lower edge on the line below it; on the right cut through. */
export const seamRows: Draw = (scene) => {
  const { rows } = scene.plan.ribbons;
  const tiers = tiersMeeting(scene.plan);
  const at = rows.findIndex(({ onSeam }) => onSeam !== null);
  const row = rows[Math.max(0, at)];
  const below = spoken(scene, 'below') ?? row?.onSeam ?? null;
  const wide = within(9, (row?.width.value ?? 20) * 0.45, 16);
  const share = row && below ? below.value / Math.max(1, row.width.value) : 0.5;
  const lower = SEAM + within(2.5, share * wide, wide - 2.5);
  const upper = lower - wide;
  const [left, right, end] = [5, 58, 38];
  return {
    height: 58,
    marks: [
      ...toned(
        scene,
        tiers.above,
        patch('right', { left, top: 5, right, bottom: 53, torn: ['left', 'right', 'top', 'bottom'] }),
      ),
      ...toned(
        scene,
        tiers.below,
        patch('right', { left, top: SEAM, right, bottom: 53, torn: ['left', 'right', 'bottom'] }),
      ),
      ...gathers(left, right),
      stroke(lineTo([left, SEAM], [right, SEAM]), { width: mm(0.5) }),
      stroke(lineTo([left, lower], [right, lower]), { ...chalkLine, width: mm(0.5) }),
      band(scene, Math.max(0, at), left, upper, end, lower),
      // Its end is turned under, over its beginning.
      stroke(lineTo([end - 3.4, upper], [end - 3.4, lower]), { ...foldLine, stroke: inks.ink }),
      ...stitches(lineTo([left, lower - 1.4], [end - 1, lower - 1.4]), true),
      ...stitches(lineTo([left, upper + 1.4], [end - 1, upper + 1.4]), true),
      ...(below ? [measured(point(61, SEAM), point(61, lower), scene.speaker.value(below), 0)] : []),
      ...section(scene, Math.max(0, at), upper, lower, tiers),
    ],
  };
};

/** Only the tier below is gathered; its folds run out downwards. */
function gathers(left: number, right: number): Mark[] {
  const folds = Array.from({ length: 17 }, (_, i) => {
    const x = left + 2 + (i * (right - left - 3)) / 17;
    const long = [20, 11, 15][i % 3] ?? 12;
    return curve([point(x, SEAM), point(x + 0.5, SEAM + long / 2), point(x - 0.3, SEAM + long)]);
  });
  return [stroke(folds, { width: mm(0.22) })];
}

/** Cut through: right side on the left with the ribbon on it, the seam's edges up behind. */
function section(
  scene: Scene,
  row: number,
  upper: number,
  lower: number,
  { above, below }: ReturnType<typeof tiersMeeting>,
): Mark[] {
  const x = 73;
  return [
    ...toned(scene, above, edgeOn(lineTo([x, 6], [x, SEAM], [x + 2.2, SEAM], [x + 2.2, SEAM - 9]))),
    ...toned(
      scene,
      below,
      edgeOn(lineTo([x + 4.4, SEAM - 9], [x + 4.4, SEAM + 2.2], [x, SEAM + 2.2], [x, 53])),
    ),
    rectangle(x - 3, upper, 1.5, lower - upper, ribbonLook(scene, row)),
    ...[upper + 1.4, lower - 1.4].flatMap((y) => [
      stroke(lineTo([x - 4.4, y], [x + (y < SEAM + 2.2 ? 6 : 1.8), y]), { width: mm(0.5) }),
      dot(point(x - 4.4, y), mm(0.6)),
    ]),
  ];
}
