import { point } from '../../../../geometry/index.ts';
import type { Row } from '../../../../ribbon/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, rectangle, stroke, type Mark } from '../../../drawing/index.ts';
import { curve, lineTo } from '../lines.ts';
import type { Draw, Scene } from '../picture.ts';
import { band } from '../ribbons.ts';
import { turn } from '../signs.ts';
import { bottle, drop, flame } from '../tools/index.ts';
import { measured, note } from '../wording.ts';

const MOST = 6;
const LEFT = 14;
const LONGEST = 62;
const STEP = 4.9;
const TALL = 3.3;
const TOP = 10;

const longestOf = ({ strips }: Row): Row['strips'][number]['length'] | undefined =>
  strips.map(({ length }) => length).sort((a, b) => b.value - a.value)[0];

/** A strip of each row, longest first and to one scale, its row's number on it; and how its ends are kept from fraying. */
export const cutRibbon: Draw = (scene) => {
  const { speaker, plan } = scene;
  const rows = plan.ribbons.rows
    .map((row, i) => ({ row, i, length: longestOf(row) }))
    .sort((a, b) => (b.length?.value ?? 0) - (a.length?.value ?? 0))
    .slice(0, MOST);
  const most = rows[0]?.length;
  const scale = LONGEST / Math.max(1, most?.value ?? 1);
  const strips = rows.flatMap(({ row, i, length }, k): Mark[] => {
    const y = TOP + k * STEP;
    return [
      band(scene, i, LEFT, y, LEFT + Math.max(4, (length?.value ?? 0) * scale), y + TALL),
      ...turn(LEFT - 6, y + TALL / 2, String(row.number), 2.15),
    ];
  });
  const last = rows.at(-1);
  const least = last?.length;
  const bottom = TOP + Math.max(0, rows.length - 1) * STEP + TALL;
  const marks: Mark[] = [
    ...note(point(LEFT - 6, 4.4), speaker.words.papers.row, { ink: inks.grey }),
    ...strips,
    ...(most ? [measured(point(LEFT, TOP), point(LEFT + LONGEST, TOP), speaker.value(most), -2.6)] : []),
    ...(most && least && speaker.value(least) !== speaker.value(most)
      ? [measured(point(LEFT, bottom), point(LEFT + least.value * scale, bottom), speaker.value(least), 2.6)]
      : []),
    ...ends(scene, bottom + 10),
  ];
  return { height: bottom + 22, marks };
};

/** A cut end close by: a drop of sealant, the warmth beside a flame, or nothing but care. */
function ends(scene: Scene, y: number): Mark[] {
  const kept = scene.plan.request.ribbons.ends;
  const cutEnd = band(scene, 0, 6, y, 46, y + 9);
  const sealed = stroke(lineTo([46.2, y], [46.2, y + 9]), { width: mm(1.3) });
  switch (kept) {
    case 'sealant':
      return [
        cutEnd,
        sealed,
        bottle({ x: 50.5, y: y + 3.6, turn: 78 }),
        drop({ x: 48.7, y: y + 4.2, scale: 0.8 }),
      ];
    case 'flame':
      return [
        cutEnd,
        sealed,
        flame({ x: 57, y: y + 6 }),
        rectangle(55.4, y + 6, 3.2, 5, { fill: inks.paper, width: mm(0.35) }),
      ];
    case 'none':
      return [
        cutEnd,
        stroke(
          [0.8, 2.4, 4, 5.6, 7.2, 8.4].map((dy, i) =>
            curve([
              point(46, y + dy),
              point(48, y + dy + (i % 2 ? 0.5 : -0.5)),
              point(50 + (i % 3), y + dy + 0.2),
            ]),
          ),
          { width: mm(0.25) },
        ),
      ];
  }
}
