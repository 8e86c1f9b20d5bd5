import { boundsOf, startOf, translate, type Path } from '../../geometry/index.ts';
import type { Placement } from '../../packing/index.ts';
import type { Stance } from '../blocks.ts';
import { stancesOf } from '../blocks.ts';
import type { HandLaid } from '../hand/inTurn.ts';
import type { ClothJob, Wanted } from '../job/found.ts';
import { placedAt, standing, turnsOf, type Lying } from './lying.ts';
import type { Strip } from './strip.ts';
import { unfold } from './unfold.ts';

/** A piece laid by hand, opened out on the strip. */
export interface HandPlaced {
  readonly lying: Lying;
  readonly placement: Omit<Placement, 'item'>;
}

/** Lays made by hand as a single layer on the strip; null where one can't be read so. */
export function handStart(
  laid: readonly HandLaid<Wanted>[],
  { fabric }: ClothJob,
  strip: Strip,
): HandPlaced[] | null {
  const placed: HandPlaced[] = [];
  for (const { of: wanted, lay, length, start } of laid) {
    const from = strip.lengths[length];
    if (!from) return null;
    for (const { cutting, outline } of unfold(lay, wanted, fabric)) {
      const there = translate(outline, from.start + start, from.low);
      const found = readAs({ wearer: wanted.wearer, cutting }, there, fabric.oneWay);
      if (!found) return null;
      placed.push(found);
    }
  }
  return placed;
}

/** How a piece lies: the stance and the turn that cover the outline. */
function readAs(of: Pick<Lying, 'wearer' | 'cutting'>, outline: Path, oneWay: boolean): HandPlaced | null {
  const { left, top } = boundsOf(outline);
  const all: Stance[] = ['along', 'across', 'cornered'];
  const first = stancesOf(of.cutting.cut);
  for (const stance of [...first, ...all.filter((each) => !first.includes(each))]) {
    const lying: Lying = { ...of, stance, onFold: 'no' };
    const stood = standing(lying);
    for (const rotation of turnsOf(lying, oneWay).rotations) {
      const turned = placedAt(stood, { rotation, mirrored: false, x: 0, y: 0 });
      const box = boundsOf(turned);
      const [x, y] = [left - box.left, top - box.top];
      if (covers(translate(turned, x, y), outline))
        return { lying, placement: { rotation, mirrored: false, x, y } };
    }
  }
  return null;
}

const CLOSE = 0.05;

function covers(a: Path, b: Path): boolean {
  if (a.length !== b.length) return false;
  const [one, other] = [boundsOf(a), boundsOf(b)];
  if (Math.abs(one.width - other.width) > CLOSE || Math.abs(one.height - other.height) > CLOSE) return false;
  const corners = b.map(startOf);
  return a
    .map(startOf)
    .every(({ x, y }) => corners.some((at) => Math.abs(at.x - x) < CLOSE && Math.abs(at.y - y) < CLOSE));
}
