import { flatten, startOf, type Path, type Point } from '../../../geometry/index.ts';
import type { Panel } from '../../../skirt/index.ts';
import { mm } from '../../../units/index.ts';
import type { FoundCloth, FoundPiece, FoundTable, PanelSeam } from '../../job/found.ts';
import { pairsAlong, joinOf } from '../seamJoin.ts';
import { onLayers } from './openedFaults.ts';

type Ring = readonly Point[];
type OnCloth = (at: Point) => Point;

const CLOSE = 0.1;

/** How far a pattern is off at a seam, mm, read off the cloth opened out; null where a panel is not found on it. */
export function offOpened(found: FoundCloth, wearer: string, seam: PanelSeam): number | null {
  const [before, after] = [onCloth(found, wearer, seam.before), onCloth(found, wearer, seam.after)];
  const { pattern } = found.fabric;
  if (!before || !after || !pattern) return null;
  const join = joinOf(seam);
  const pairs = (join.whole ? pairsAlong(seam) : [join]).map((pair) => ({
    one: before(pair.before),
    other: after(pair.after),
  }));
  const off = (axis: 'x' | 'y', repeat: number | null): number =>
    Math.min(
      ...[1, -1].map((way) =>
        Math.max(...pairs.map(({ one, other }) => apart(one[axis] - way * other[axis], repeat))),
      ),
    );
  return Math.max(off('x', pattern.along), off('y', pattern.across));
}

function apart(distance: number, repeat: number | null): number {
  if (repeat === null) return 0;
  const rest = ((distance % repeat) + repeat) % repeat;
  return Math.min(rest, repeat - rest);
}

/** Where the places of a panel's sheet are on the cloth opened out, from a crossing of its pattern. */
function onCloth({ tables, fabric: { pattern } }: FoundCloth, wearer: string, panel: Panel): OnCloth | null {
  for (const table of tables)
    for (const piece of table.pieces) {
      const at = piece.wearer === wearer ? piece.panels.indexOf(panel) : -1;
      if (at < 0 || !pattern) continue;
      const places = lyingOf(table, piece, at);
      // A fold across the cloth lies along a band; else bands are where the cloth is trimmed to have them.
      const along = table.right === 'fold' ? table.along : pattern.at.along;
      return (
        places &&
        ((sheet) => {
          const { x, y } = places(sheet);
          return { x: x - along, y: y - pattern.at.across };
        })
      );
    }
  return null;
}

/** A panel with its middle on a fold lies over both layers; of two cut at once one lies on each, neither face down. */
function lyingOf(table: FoundTable, piece: FoundPiece, at: number): OnCloth | null {
  const { outline, panels, onFold, turned } = piece;
  const ring = flatten(outline, mm(0.002));
  const rings = onLayers(table).map((layer) => layer(ring));
  const cutOf = (i: number): Path => panels[i]?.shape.cut ?? [];
  if (onFold) return placedOn(rings, cutOf(at), turned);
  const [upper, lower] = rings;
  if (!upper) return null;
  if (!lower) return placedOn([upper], cutOf(at), turned);
  const on = (layer: Ring, i: number): OnCloth | null =>
    // Beyond a fold across the cloth what lay hem first lies hem last.
    placedOn([layer], cutOf(i), layer === lower && table.right === 'fold' ? !turned : turned);
  for (const [first, second] of [
    [upper, lower],
    [lower, upper],
  ] as const) {
    const lying = [on(first, 0), on(second, 1)];
    if (lying[0] && lying[1]) return lying[at] ?? null;
  }
  return null;
}

/** Quarter turns: hem to the right, to the left, down and up. */
const TURNS = [
  [0, -1],
  [0, 1],
  [1, 0],
  [-1, 0],
] as const;

/** The quarter turn that brings a sheet over what is cut there, never its mirror image; a rectangle lies as it is said to. */
function placedOn(rings: readonly Ring[], cut: Path, turned: boolean): OnCloth | null {
  const there = rings.flat();
  const corners = cut.map(startOf);
  const edge = (points: readonly Point[]) => ({
    x: Math.min(...points.map(({ x }) => x)),
    y: Math.min(...points.map(({ y }) => y)),
  });
  const cloth = edge(there);
  const [right, left, down, up] = TURNS;
  for (const [cos, sin] of turned ? [left, right, up, down] : [right, left, down, up]) {
    const stood = ({ x, y }: Point): Point => ({ x: x * cos - y * sin, y: x * sin + y * cos });
    const sheet = edge(flatten(cut, mm(0.002)).map(stood));
    const at = (place: Point): Point => {
      const { x, y } = stood(place);
      return { x: x + cloth.x - sheet.x, y: y + cloth.y - sheet.y };
    };
    const isThere = corners
      .map(at)
      .every(({ x, y }) => there.some((each) => Math.hypot(each.x - x, each.y - y) < CLOSE));
    if (isThere) return at;
  }
  return null;
}
