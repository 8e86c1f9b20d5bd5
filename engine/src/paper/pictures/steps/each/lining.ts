import { arc, line, point, polyline, type Path, type Point } from '../../../../geometry/index.ts';
import { mm, radians } from '../../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine } from '../../cloth.ts';
import { lineTo, stitches } from '../lines.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { throughAll } from '../section.ts';
import { edgeOn, frayed } from '../surface.ts';
import { says } from '../waistParts.ts';
import { measured } from '../wording.ts';

const TOP = 7;
const BOTTOM = 60;

/** On the left both cut through, wrong sides together; on the right the two seen from the front, one in the other. */
export const lining: Draw = (scene) => ({
  height: 64,
  marks: [...cutThrough(scene), ...oneInTheOther(scene)],
});

const byPoints = (scene: Scene): boolean => says(scene, 'lining.hang') || says(scene, 'lining.hangSeam');

/** The skirt's raw top, its lining beside its wrong side: level with it, or below the line it is folded on. */
function cutThrough(scene: Scene): Mark[] {
  const starts = spoken(scene, 'starts');
  const hem = spoken(scene, 'hem');
  const x = 12;
  const fold = TOP + 8;
  const turnedIn = byPoints(scene);
  const top = starts ? fold + 7 : turnedIn ? TOP + 3 : TOP;
  const end = BOTTOM - 8;
  const depth = 8;
  const into = x + 6.4;
  return [
    ...edgeOn(lineTo([x, BOTTOM], [x, TOP])),
    frayed(x, TOP, -1),
    ...(starts ? [stroke(lineTo([x - 4, fold], [x + 2, fold]), { ...chalkLine, width: mm(0.4) })] : []),
    ...edgeOn([...turnedTop(into, turnedIn, top), ...turnedHem(into, end, depth, top)]),
    ...throughAll(x, into, top + 3),
    ...(starts ? [measured(point(x - 4, fold), point(x - 4, top), scene.speaker.value(starts), 3)] : []),
    ...(hem
      ? [measured(point(into + 0.6, end - depth), point(into + 0.6, end + 1.4), scene.speaker.value(hem), -3)]
      : []),
  ];
}

/** Down to its hem, which is turned to its wrong side: towards the skirt. */
const turnedHem = (x: number, end: number, depth: number, top: number): Path => [
  line(point(x, top), point(x, end)),
  arc(point(x - 1.9, end), mm(1.9), radians(0), radians(Math.PI)),
  line(point(x - 3.8, end), point(x - 3.8, end - depth)),
  arc(point(x - 2.85, end - depth), mm(0.95), radians(Math.PI), radians(Math.PI)),
  line(point(x - 1.9, end - depth), point(x - 1.9, end - depth + 3)),
];

/** Where it hangs by single points, its top edge is turned in, towards the skirt. */
const turnedTop = (x: number, isTurned: boolean, top: number): Path =>
  isTurned
    ? [
        line(point(x - 1.9, top + 6), point(x - 1.9, top)),
        arc(point(x - 0.95, top), mm(0.95), radians(Math.PI), radians(Math.PI)),
      ]
    : [];

/** The skirt's right side outside; in its mouth the lining's right side, and below a piece taken out to show it whole. */
function oneInTheOther(scene: Scene): Mark[] {
  const [x, half, top, out] = [60, 15, 13, 21];
  const rim = (level: number, wide: number, way: 1 | -1, rise: number): Point[] =>
    Array.from({ length: 25 }, (_, i) => {
      const t = -1 + i / 12;
      return point(x + t * wide, level + way * rise * Math.sqrt(Math.max(0, 1 - t * t)));
    });
  const between = (upper: Point[], lower: Point[]): Path =>
    polyline([...upper, ...lower.toReversed()], { closed: true });
  const mouth = between(rim(top, half, -1, 4), rim(top, half, 1, 4));
  const inner = between(rim(top + 0.8, half - 1.2, -1, 3.6), rim(top + 0.8, half - 1.2, 1, 3.6));
  const front = between(rim(top, half, 1, 4), rim(BOTTOM - 5, out, 1, 4));
  const hung = rim(BOTTOM - 12, out - 4, 1, 3.4);
  const ends = rim(BOTTOM - 5, out, 1, 4);
  const points = byPoints(scene);
  return [
    area(front, { fill: inks.wash, width: mm(0.45) }),
    area(mouth, { fill: inks.paper, width: mm(0.45) }),
    area(inner, { fill: inks.paper, pattern: 'dots', width: mm(0.35) }),
    ...(points
      ? [0, 6, 12, 18, 24].flatMap((i) => {
          const at = rim(top + 0.6, half - 0.6, 1, 3.8)[i] ?? point(x, top);
          return [
            stroke(lineTo([at.x - 0.9, at.y - 0.9], [at.x + 0.9, at.y + 0.9]), { width: mm(0.6) }),
            stroke(lineTo([at.x - 0.9, at.y + 0.9], [at.x + 0.9, at.y - 0.9]), { width: mm(0.6) }),
          ];
        })
      : stitches(polyline(rim(top + 2.6, half, 1, 4)))),
    stroke(polyline(hung), { dash: 'hidden', width: mm(0.45) }),
    stroke(
      [
        lineTo([x - half + 1.2, top + 3], [hung[0]?.x ?? x, hung[0]?.y ?? top]),
        lineTo([x + half - 1.2, top + 3], [hung.at(-1)?.x ?? x, hung.at(-1)?.y ?? top]),
      ],
      { dash: 'hidden', width: mm(0.45) },
    ),
    stroke(polyline(ends), { width: mm(0.5) }),
  ];
}
