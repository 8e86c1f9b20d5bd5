import type { Problem } from './problem.ts';
import type { Shape } from './shapes.ts';

/**
 * A length that no answer can fall below, in units: the larger of (1) all area over the width, keep-outs taken off;
 * (2) the longest piece; (3) the pieces that reach past the middle of the strip wherever they lie, one after the
 * other. Spacing is left out of account, which only makes it smaller.
 */
export function lowerBound(problem: Problem): number {
  const { pieces, movable, stances, shapes, width, fixed, fixedEnd } = problem;
  const stood = (item: number): Shape[] => (stances[item] ?? []).flatMap((at) => shapes[at] ?? []);
  const wanted = pieces.slice(0, movable).map(stood);
  const lying = fixed.flatMap(({ shape }) => {
    const found = shapes[shape];
    return found && found.item >= 0 ? [found] : [];
  });
  const area =
    wanted.reduce((sum, [first]) => sum + (first?.area ?? 0), 0) +
    lying.reduce((sum, { area: each }) => sum + each, 0);
  const longest = Math.max(
    fixedEnd,
    ...wanted.map((all) => Math.min(...all.map(({ box }) => box.right - box.left))),
  );
  const byArea = lengthFor(area, problem);
  const across = wanted.reduce((sum, all) => sum + Math.min(...all.map((each) => atMiddle(each, width))), 0);
  return Math.max(byArea, longest, Math.floor(across));
}

/** Least length whose free cloth is enough for an area: keep-outs are counted by their boxes' overlap-free share. */
function lengthFor(area: number, { width, fixed, shapes }: Problem): number {
  const flaws = fixed.flatMap(({ shape, x, y }) => {
    const found = shapes[shape];
    return found && found.item < 0 ? [{ found, x, y }] : [];
  });
  if (flaws.length === 0) return Math.ceil(area / width - 1e-9);
  // Only rectangles that span the strip (walls between lengths of cloth) are counted: they can't overlap usefully.
  const walls = flaws
    .map(({ found: { box, outline }, x, y }) => ({
      from: x + box.left,
      to: x + box.right,
      spans: outline.length === 4 && y + box.low <= 0 && y + box.high >= width && isUpright(outline),
    }))
    .filter(({ spans }) => spans)
    .toSorted((a, b) => a.from - b.from);
  let left = area;
  let at = 0;
  for (const { from, to } of walls) {
    const room = Math.max(0, from - at) * width;
    if (left <= room) return Math.ceil(at + left / width - 1e-9);
    left -= room;
    at = Math.max(at, to);
  }
  return left <= 0 ? at : Math.ceil(at + left / width - 1e-9);
}

const isUpright = (outline: Shape['outline']): boolean =>
  outline.every((corner, i) => {
    const next = outline[(i + 1) % outline.length];
    return next !== undefined && (next.x === corner.x || next.y === corner.y);
  });

/**
 * Least length of cloth that a piece takes along the middle of the strip, over all places across where it may lie: 0
 * for one that fits beside the middle. What is cut along a level is linear between corners, so the least is at one.
 */
function atMiddle({ outline, body, box }: Shape, width: number): number {
  if (body !== box && (body.left !== box.left || body.high !== box.high)) return 0;
  const from = box.high - width / 2;
  const to = box.low + width / 2;
  if (from > to) return 0;
  if (from <= box.low || to >= box.high) return 0;
  const levels = [from, to, ...outline.map(({ y }) => y).filter((y) => y > from && y < to)];
  // At a corner what is cut may jump: the lesser of just below and just above.
  const near = (box.high - box.low) * 1e-9;
  return Math.min(...levels.flatMap((y) => [y - near, y + near]).map((y) => cutAt(outline, y)));
}

function cutAt(outline: Shape['outline'], y: number): number {
  const crossings: number[] = [];
  for (const [i, p] of outline.entries()) {
    const q = outline[(i + 1) % outline.length];
    if (q && p.y > y !== q.y > y) crossings.push(p.x + ((y - p.y) * (q.x - p.x)) / (q.y - p.y));
  }
  crossings.sort((a, b) => a - b);
  let length = 0;
  for (let i = 0; i + 1 < crossings.length; i += 2) length += (crossings[i + 1] ?? 0) - (crossings[i] ?? 0);
  return length;
}
