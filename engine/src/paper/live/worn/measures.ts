import { point, polyline } from '../../../geometry/index.ts';
import type { Figure } from '../../../figure/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { mm, radians } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { arrow, group, inks, label, straight, stroke, style, type Mark } from '../../drawing/index.ts';
import { lightness, quiet } from './colours.ts';
import { inksOf } from './inks.ts';
import type { Stance, WornSide } from './stance.ts';
import type { Surface } from './surface.ts';
import { waistLook } from './waistLook.ts';

/** Room that the measures take beside the figure, on each side. */
export const MEASURES_ASIDE = 10;

const SIZE = mm(3.1);
const thin = style({ stroke: inks.grey, width: mm(0.22), dash: 'chalk' });
const solid = style({ stroke: inks.grey, width: mm(0.22) });
/** From the broadest of the figure to a measure's line, and from the line to its words. */
const LINE = 3;
const WORDS = 2.8;

/** The body as it was measured: rounds across it, lengths beside it, to the right the skirt's and to the left the floor's. */
export function measureMarks(
  plan: SkirtPlan,
  speaker: Speaker,
  stance: Stance,
  surface: Surface,
  side: WornSide,
  reach: number,
): Mark {
  const { body } = plan;
  if (stance.seat) return group('measures', seatedMeasures(plan, speaker, stance, surface, side));
  const said = (figure: Figure): string => `${speaker.name(figure)} ${speaker.value(figure)}`;
  const upright = (way: 1 | -1, figure: Figure, y: number, from: number): Mark[] => {
    const x = way * (reach + LINE);
    const witness = (start: number, level: number) =>
      straight(point(way * start, level), point(x + way, level), thin);
    const edge = surface.edges(0)[way === 1 ? 1 : 0];
    return [
      witness(edge + 1, stance.waist),
      witness(from, y),
      arrow(point(x, stance.waist), point(x, y), {
        tail: 'arrow',
        head: 'arrow',
        size: mm(1.7),
        style: solid,
      }),
      label(point(x + way * WORDS, (stance.waist + y) / 2), said(figure), {
        size: SIZE,
        align: 'middle',
        baseline: 'middle',
        angle: radians(-Math.PI / 2),
      }),
    ];
  };
  const hem = surface.at(0, 1).y;
  const cloth = inksOf(plan, side, waistLook(plan)).at((stance.hip - surface.top) / surface.length);
  const onCloth = lightness(cloth) < 0.5 ? inks.paper : inks.ink;
  return group('measures', [
    ...upright(1, body.waistToHem, hem, surface.edges(surface.length)[1] + 1),
    ...(body.waistToFloor ? upright(-1, body.waistToFloor, stance.floor, reach) : []),
    ...round(surface, stance.waist, inks.ink),
    ...round(surface, stance.hip, onCloth),
    ...(side === 'side'
      ? // In profile the arm is before the body: the words stand behind it.
        [
          label(point(surface.edges(0)[1] + 2, stance.waist - 1.4), said(body.waist), { size: SIZE }),
          label(point(surface.edges(stance.hip - stance.waist)[1] + 2, stance.hip), said(body.hip), {
            size: SIZE,
            baseline: 'middle',
          }),
        ]
      : // The waist's words stand on the top, the hip's on the cloth: each in a rim of what it stands on.
        [
          label(point(0, Math.min(stance.waist, surface.at(0, 0).y) - 1.8), said(body.waist), {
            size: SIZE,
            align: 'middle',
            halo: quiet.top,
          }),
          label(point(0, stance.hip - 1.4), said(body.hip), {
            size: SIZE,
            align: 'middle',
            ink: onCloth,
            halo: cloth,
          }),
        ]),
  ]);
}

/** Over a lap lengths run along the cloth: they are told from the side, where the whole way is seen. */
function seatedMeasures(
  { body }: SkirtPlan,
  speaker: Speaker,
  stance: Stance,
  surface: Surface,
  side: WornSide,
): Mark[] {
  const said = (figure: Figure): string => `${speaker.name(figure)} ${speaker.value(figure)}`;
  if (side !== 'side')
    return [
      label(point(0, surface.at(0, 0).y - 1.8), said(body.waist), {
        size: SIZE,
        align: 'middle',
        halo: quiet.top,
      }),
    ];
  const way = Array.from({ length: 25 }, (_, i) => surface.at(-1, i / 24)).map(({ x, y }) =>
    point(x, y - 0.6),
  );
  const lengths = [body.waistToHem, ...(body.waistToFloor ? [body.waistToFloor] : [])];
  const left = Math.min(...way.map(({ x }) => x));
  const back = surface.at(1, 0);
  return [
    stroke(polyline(way), solid),
    ...lengths.map((figure, i) =>
      label(point(left, stance.waist + (i - lengths.length) * 1.4 * SIZE), said(figure), { size: SIZE }),
    ),
    label(point(back.x + 1.5, back.y - 1.4), said(body.waist), { size: SIZE }),
  ];
}

/** About the width of a letter, of the em. */
const LETTER = 0.55;

/** How far from the middle the words of the rounds end in profile, where they stand behind the body. */
export function roundsReach({ body }: SkirtPlan, speaker: Speaker, stance: Stance, surface: Surface): number {
  const ends = [body.waist, body.hip].map((figure, i) => {
    const letters = speaker.name(figure).length + 1 + speaker.value(figure).length;
    const behind = stance.seat ? surface.at(1, 0).x : surface.edges(i * (stance.hip - stance.waist))[1];
    return behind + 2 + letters * LETTER * SIZE;
  });
  return Math.max(...ends);
}

/** The tape across the body at a level. */
function round(surface: Surface, y: number, ink: string): Mark[] {
  const [left, right] = surface.edges(y - surface.top);
  return [straight(point(-left, y), point(right, y), { ...thin, stroke: ink })];
}
