import type { Outline, PackingItem, PackingJob, Placement, Refusal } from './job.ts';
import { isSimple, tidied, twiceArea } from './polygon.ts';
import { problemOf } from './problem.ts';
import { aboutItself, scaled, scaleFor } from './shapes.ts';

/** More corners than any outline of cloth has, more pieces than any lay. */
const MOST_CORNERS = 5000;
const MOST_PIECES = 5000;
/** Widths of a strip that whole units can be made for, in any unit a caller may think of. */
const NARROWEST = 1e-6;
const WIDEST = 1e9;
/** Whole units are reckoned with exactly up to here: some 25 widths of the strip. A keep-out may lie farther off, up to there. */
const FARTHEST = 1e8;
const FARTHEST_OFF = 1e10;

/** Why a job can't be packed; empty where it can. */
export function check(job: PackingJob): Refusal[] {
  const { width, items, spacing = 0, keepOut = [], fixed = [], start = [] } = job;
  if (!(width >= NARROWEST && width <= WIDEST)) return [{ code: 'width' }];
  if (!(spacing >= 0 && spacing <= width)) return [{ code: 'spacing' }];
  const scale = scaleFor(width);
  const found: Refusal[] = [];
  for (const [at, item] of items.entries()) {
    const code = faultOf(item, scale);
    if (code) found.push({ code, at });
  }
  if (items.reduce((sum, { demand }) => sum + demand, 0) > MOST_PIECES) found.push({ code: 'demand' });
  for (const [at, outline] of keepOut.entries())
    if (!isKeepOut(outline, scale)) found.push({ code: 'keepOut', at });
  for (const [code, placements] of [
    ['fixed', fixed],
    ['start', start],
  ] as const)
    for (const [at, placement] of placements.entries())
      if (!isPlacement(placement, items)) found.push({ code, at });
  if (found.length > 0) return found;
  const { stances } = problemOf(job);
  return items.flatMap(({ demand }, at) =>
    demand > 0 && stances[at]?.length === 0 ? [{ code: 'too wide', at } as const] : [],
  );
}

function faultOf(
  { outline, demand, rotations, lattice }: PackingItem,
  scale: number,
): Refusal['code'] | null {
  if (!isOutline(scaled(outline, scale))) return 'outline';
  if (!(Number.isInteger(demand) && demand >= 0)) return 'demand';
  if (rotations !== 'any' && (rotations.length === 0 || !rotations.every(Number.isInteger)))
    return 'rotations';
  for (const each of [lattice?.x, lattice?.y])
    if (each && !(Number.isFinite(each.step) && each.step >= 0 && Number.isFinite(each.at))) return 'lattice';
  return null;
}

function isKeepOut(area: Outline, scale: number): boolean {
  const { outline, x, y } = aboutItself(area, scale);
  return Math.abs(x) <= FARTHEST_OFF && Math.abs(y) <= FARTHEST_OFF && isOutline(outline);
}

/** In whole units. */
function isOutline(outline: Outline): boolean {
  if (outline.length < 3 || outline.length > MOST_CORNERS) return false;
  const isNear = (at: number): boolean => Math.abs(at) <= FARTHEST;
  if (!outline.every(({ x, y }) => isNear(x) && isNear(y))) return false;
  const whole = tidied(outline);
  return whole.length >= 3 && twiceArea(whole) > 0 && isSimple(whole);
}

const isPlacement = ({ item, rotation, x, y }: Placement, items: readonly PackingItem[]): boolean =>
  items[item] !== undefined && Number.isInteger(rotation) && Number.isFinite(x) && Number.isFinite(y);
