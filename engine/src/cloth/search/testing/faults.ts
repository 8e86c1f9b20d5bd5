import {
  areaPaths,
  EndType,
  FillRule,
  inflatePaths,
  intersect,
  JoinType,
  type Path64,
  type Paths64,
} from 'clipper2-ts';
import { boundsOf, flatten, signedAreaOf, type Path } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import type { ClothJob, FoundCloth, FoundTable } from '../../job/found.ts';
import { UNITS, whole } from './whole.ts';

/** Arcs are flattened to two micrometres. */
const FLAT = mm(0.002);
/** Two pieces may lie on one another by this, in mm. */
const TOUCH = 0.01;

const cornersOf = (outline: Path): Path64 => {
  const corners = whole(flatten(outline, FLAT));
  return signedAreaOf(outline) < 0 ? corners.toReversed() : corners;
};

/** Moved out by a distance, or in where it is negative. */
const grown = (path: Path64, by: number): Paths64 =>
  inflatePaths([path], by * UNITS, JoinType.Round, EndType.Polygon, 2, 1);

const overlap = (a: Paths64, b: Paths64): number =>
  Math.abs(areaPaths(intersect(a, b, FillRule.NonZero))) / (UNITS * UNITS);

/** Everything that is wrong with a found lay, in words for whoever reads a failing test; empty where nothing is. */
export function faultsOf(found: FoundCloth, job: ClothJob): string[] {
  return [...found.tables.flatMap((table, i) => tableFaults(table, found, i)), ...demandFaults(found, job)];
}

function tableFaults(table: FoundTable, { fabric }: FoundCloth, at: number): string[] {
  const faults: string[] = [];
  const say = (text: string): void => void faults.push(`table ${String(at)}: ${text}`);
  const { selvage, between } = fabric;
  const top = table.top === 'cut edge' || table.layers === 4 ? 0 : selvage.value;
  const bottom = table.across - (table.bottom === 'fold' ? 0 : selvage.value);
  const room = between.value / 2 - TOUCH / 2;
  const paths = table.pieces.map(({ outline }) => cornersOf(outline));
  const reach = paths.map((path) => grown(path, room));
  const boxes = table.pieces.map(({ outline }) => boundsOf(outline));
  for (const [i, box] of boxes.entries()) {
    if (box.left < -TOUCH || box.right > table.along + TOUCH) say(`piece ${String(i)} hangs over an end`);
    if (box.top < top - TOUCH || box.bottom > bottom + TOUCH) say(`piece ${String(i)} lies on a selvage`);
    for (let j = i + 1; j < paths.length; j++) {
      const other = boxes[j];
      const [a, b] = [reach[i], reach[j]];
      if (!other || !a || !b) continue;
      const gap = between.value;
      if (other.left > box.right + gap || other.right < box.left - gap) continue;
      if (other.top > box.bottom + gap || other.bottom < box.top - gap) continue;
      const area = overlap(a, b);
      if (area > 1e-3) say(`pieces ${String(i)} and ${String(j)} share ${area.toFixed(4)} mm²`);
    }
    for (const flaw of table.flaws) {
      const piece = paths[i];
      if (piece && overlap(grown(piece, between.value - TOUCH), [cornersOf(flaw)]) > 1e-3)
        say(`piece ${String(i)} lies on a flaw`);
    }
  }
  for (const [i, { onFold, panels, parts }] of table.pieces.entries()) {
    const cut = panels.length + parts.length;
    if (onFold ? cut * 2 > table.layers : cut > table.layers) say(`piece ${String(i)} cuts ${String(cut)}`);
    const box = boxes[i];
    if (!onFold || !box) continue;
    const away = [
      ...(table.left === 'two folds' ? [box.left] : []),
      ...(table.bottom === 'fold' ? [table.across - box.bottom] : []),
      ...(table.right === 'fold' ? [table.along - box.right] : []),
    ];
    if (Math.min(...away) > TOUCH) say(`piece ${String(i)} is off its fold`);
  }
  const { leftOver } = table;
  if (leftOver) {
    const { x, y, along, across } = leftOver;
    const rest: Path64 = [
      { x: x * UNITS, y: y * UNITS },
      { x: (x + along) * UNITS, y: y * UNITS },
      { x: (x + along) * UNITS, y: (y + across) * UNITS },
      { x: x * UNITS, y: (y + across) * UNITS },
    ].map((corner) => ({ x: Math.round(corner.x), y: Math.round(corner.y) }));
    for (const path of paths) if (overlap([path], [rest]) > 1) say('what is left is cut into');
    if (x < 0 || x + along > table.along + TOUCH || y < top - TOUCH || y + across > bottom + TOUCH)
      say('what is left is beyond the cloth');
  }
  return faults;
}

/** Each panel and part of each wearer once, no more and no less. */
function demandFaults({ tables }: FoundCloth, { wanted }: ClothJob): string[] {
  const count = new Map<string, number>();
  const add = (wearer: string, name: string, number: number, by: number): void => {
    const key = `${wearer}: ${name} ${String(number)}`;
    count.set(key, (count.get(key) ?? 0) + by);
  };
  for (const { wearer, mains, parts } of wanted)
    for (const { copies } of [...mains, ...parts])
      for (const copy of copies)
        for (const { name, number } of [...copy.panels, ...copy.parts]) add(wearer, name, number, 1);
  for (const { pieces } of tables)
    for (const { wearer, panels, parts } of pieces)
      for (const { name, number } of [...panels, ...parts]) add(wearer, name, number, -1);
  return [...count]
    .filter(([, left]) => left !== 0)
    .map(([key, left]) => `${key} is cut ${String(left)} times too few`);
}
