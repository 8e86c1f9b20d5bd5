import { boundsOf, rotate, type Point } from '../../geometry/index.ts';
import type { Lattice } from '../../packing/index.ts';
import type { Panel } from '../../skirt/index.ts';
import { radians } from '../../units/index.ts';
import type { Fabric, Pattern } from '../fabric.ts';
import type { PanelSeam, Wanted } from '../job/found.ts';
import type { Lying } from './lying.ts';
import { joinOf, type Join } from './seamJoin.ts';

/** Where a piece's own origin may lie so that the pattern meets; null where it may lie anywhere. */
export type Phases = (lying: Lying) => Phase | null;

/** Where a line or crossing of the pattern passes on a table, or on the strip. */
export interface PatternOn {
  readonly along: number;
  readonly across: number;
}

interface Phase {
  /** On the piece as it stands: a line or crossing of the pattern passes there. */
  readonly origin: Point;
  readonly lattice: { readonly x?: Lattice; readonly y?: Lattice };
}

/** Farther apart than a millimetre is seen; what is a millimetre to the eye may come out a hair above in binary. */
export const MEETS = 1 + 1e-6;

/** No pattern that has to meet. */
export const FREE: Phases = () => null;

/**
 * Where a line of the pattern has to pass through each panel, so that it meets at the seams: a stripe down the middle
 * of the first panel of each round, a band through its first seam, and every other panel as its neighbour asks. Stripes
 * and bands are taken to look the same from both sides of their line, as they do where a cloth has no way up.
 */
export function phasesOn({ pattern }: Fabric, wanted: readonly Wanted[], at: PatternOn): Phases {
  if (!pattern?.match) return FREE;
  const found = wanted.map(({ wearer, seams }) => ({ wearer, lines: linesOf(seams, pattern) }));
  const x = pattern.along === null ? {} : { x: { step: pattern.along, at: at.along } };
  const y = pattern.across === null ? {} : { y: { step: pattern.across, at: at.across } };
  return ({ wearer, cutting, stance, onFold }) => {
    // Only where the cloth's length runs down the panel do its stripes do so too.
    if (stance !== 'along') return null;
    const panel = cutting.copies[0]?.panels[0];
    const line =
      panel && found.find((each) => each.wearer === wearer && each.lines.has(panel))?.lines.get(panel);
    // What lies on a fold has no choice across.
    const lattice = onFold === 'along' ? x : { ...x, ...y };
    return line ? { origin: onStanding(panel, line), lattice } : null;
  };
}

/** A place of a panel's sheet on the panel as it stands with its length along the bolt. */
function onStanding({ shape }: Panel, { x, y }: Point): Point {
  const { left, top } = boundsOf(rotate(shape.cut, radians(-Math.PI / 2)));
  return { x: y - left, y: -x - top };
}

/** Places on the sheets of panels through which a line or crossing passes, and at how many seams it does not meet. */
interface Lines {
  readonly lines: ReadonlyMap<Panel, Point>;
  readonly off: number;
}

/** The pattern runs on over upright seams where that closes round the body; else it is mirrored at each seam. */
function linesOf(seams: readonly PanelSeam[], pattern: Pattern): Lines['lines'] {
  const joins = new Map(seams.map((seam) => [seam, joinOf(seam)]));
  const isUpright = [...joins.values()].every((join) => join.upright);
  const ways = isUpright ? ([1, -1] as const) : ([-1] as const);
  const all = ways.map((way) => goneRound(joins, pattern, way));
  return all.reduce((best, each) => (each.off < best.off ? each : best)).lines;
}

/** `way` is 1 where the pattern runs on across a seam, −1 where it is mirrored. */
function goneRound(joins: ReadonlyMap<PanelSeam, Join>, { across, along }: Pattern, way: 1 | -1): Lines {
  const lines = new Map<Panel, Point>();
  let off = 0;
  for (const [seam, { before, after }] of joins) {
    const one = lines.get(seam.before) ?? { x: 0, y: before.y };
    lines.set(seam.before, one);
    const next = { x: after.x - way * (before.x - one.x), y: one.y + after.y - before.y };
    const known = lines.get(seam.after);
    if (!known) lines.set(seam.after, next);
    else if (apart(known.x - next.x, across) > MEETS || apart(known.y - next.y, along) > MEETS) off++;
  }
  return { lines, off };
}

/** How far two lines of a repeat are apart; 0 where nothing repeats. */
export function apart(distance: number, repeat: number | null): number {
  if (repeat === null) return 0;
  const rest = Math.abs(distance) % repeat;
  return Math.min(rest, repeat - rest);
}
