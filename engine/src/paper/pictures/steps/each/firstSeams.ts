import {
  boundsOf,
  endOf,
  line,
  point,
  rotate,
  startOf,
  translate,
  type Path,
} from '../../../../geometry/index.ts';
import { mm, radians } from '../../../../units/index.ts';
import { area, stroke, type Mark } from '../../../drawing/index.ts';
import { ribbonArea } from '../../cloth.ts';
import { fitInto } from '../fitted.ts';
import { lineTo, stitches } from '../lines.ts';
import { flatRows } from '../panel.ts';
import { spoken, type Draw, type Scene } from '../picture.ts';
import { turn } from '../signs.ts';
import { cloth, edgeOn, frayed } from '../surface.ts';
import { measured } from '../wording.ts';

const MOST = 5;
const ALLOWANCE = 9;

/** Every seam but one is sewn and pressed open (1), so that a row lies flat all along (2) before the last (3). */
export const firstSeams: Draw = (scene) => {
  const panels = joined(scene);
  // A row reaches the raw sides, beyond the finished ones.
  const all = panels.flatMap(({ outline, row }) => [...outline, ...row]);
  const fitted = fitInto(all, { left: 8, top: 9, width: 70, height: 30 }, 'top');
  const { left, top, width, height } = fitted.box;
  const bottom = top + height;
  const seams = panels.slice(0, -1).map(({ right }) => fitted.path(right));
  const rows = panels.map(({ row }) => fitted.path(row)).filter((row) => row.length > 0);
  const [firstRow] = rows;
  const rowLevel = firstRow ? boundsOf(firstRow).top : bottom;
  const marks: Mark[] = [
    ...panels.flatMap(({ outline }) => cloth('right', fitted.path(outline), { width: mm(0.3) })),
    ...rows.map((row) => area(row, { dash: 'hidden', width: mm(0.35) })),
    ...seams.flatMap((seam) => [stroke(seam, { width: mm(0.5) }), ...stitches(seam, true)]),
    ...seams.flatMap((seam) => {
      const { left: x, width: wide, top: y } = boundsOf(seam);
      return turn(x + wide / 2, Math.max(3, y - 3.4), '1');
    }),
    ...(firstRow ? turn(left + width / 2 + 8, rowLevel - 3.6, '2') : []),
    ...turn(left - 3.6, top + height / 2, '3'),
    ...turn(left + width + 3.6, top + height / 2, '3'),
    ...pressedOpen(scene, bottom + 12),
  ];
  return { height: bottom + 25, marks };
};

/** A seam pressed open, seen from its end: each allowance lies back beneath its own cloth. */
function pressedOpen(scene: Scene, y: number): Mark[] {
  const seam = spoken(scene, 'seam');
  const side = (way: 1 | -1): Path =>
    lineTo(
      [43 - way * 30, y],
      [43 - way * 0.8, y],
      [43 - way * 0.8, y + 2.6],
      [43 - way * (ALLOWANCE + 0.8), y + 2.6],
    );
  return [
    ...edgeOn(side(1)),
    ...edgeOn(side(-1)),
    frayed(42 - ALLOWANCE, y + 2.6, -1),
    frayed(44 + ALLOWANCE, y + 2.6, 1),
    stroke(lineTo([43, y - 3], [43, y + 2]), { width: mm(0.6) }),
    ...(seam
      ? [measured(point(43, y + 3.4), point(43 + ALLOWANCE, y + 3.4), scene.speaker.value(seam), 3)]
      : []),
  ];
}

interface Joined {
  readonly outline: Path;
  readonly right: Path;
  readonly row: Path;
}

/** Finished panels side by side, each turned about the point where its sides meet, so that they join at their seams. */
function joined(scene: Scene): Joined[] {
  const { rows, shape, count: all } = flatRows(scene);
  const count = Math.min(MOST, all);
  const outline = shape.edges.flatMap(({ finished }) => finished);
  const right = shape.edges.find(({ name }) => name === 'right')?.finished ?? [
    line(point(0, 0), point(0, 1)),
  ];
  const [first] = right;
  const top = first ? startOf(first) : point(0, 0);
  const bottom = first ? endOf(first) : point(0, 1);
  const run = bottom.x - top.x;
  const [lowest] = rows;
  const row = lowest ? ribbonArea(lowest) : [];
  return Array.from({ length: count }, (_, i) => {
    const turns = i - (count - 1) / 2;
    const move = (path: Path): Path => {
      if (Math.abs(run) < 1e-6) return translate(path, turns * 2 * top.x, 0);
      const apex = point(0, top.y - (top.x * (bottom.y - top.y)) / run);
      return rotate(path, radians(-turns * 2 * Math.atan2(run, bottom.y - top.y)), apex);
    };
    return { outline: move(outline), right: move(right), row: move(row) };
  });
}
