import { grown } from './grow.ts';
import type { Lattice, Outline, PackingItem, PackingJob, Placement } from './job.ts';
import { boxOf, tidied, twiceArea } from './polygon.ts';
import { aboutItself, isSameStance, rotationsOf, scaleFor, shapeOf, type Shape } from './shapes.ts';

/** A job in whole units, as the search reads it. */
export interface Problem {
  readonly job: PackingJob;
  /** Units to one of the caller's. */
  readonly scale: number;
  readonly width: number;
  readonly shapes: readonly Shape[];
  /** Of each item, its shapes; empty where none fits the strip. */
  readonly stances: readonly (readonly number[])[];
  /** Item of each piece: those to be placed first, then fixed copies, then keep-outs (−1). */
  readonly pieces: readonly number[];
  /** How many pieces may be moved. */
  readonly movable: number;
  /** Of each shape where its origin may stand: from its left to the strip's end less its right, and across. */
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
  readonly fromX: Float64Array;
  /** Whether it must touch the strip's beginning. */
  readonly atStart: Uint8Array;
  readonly latticeX: readonly (Lattice | null)[];
  readonly latticeY: readonly (Lattice | null)[];
  /** Smaller side of each shape's box. */
  readonly small: Float64Array;
  readonly fixed: readonly FixedPiece[];
  readonly fixedEnd: number;
}

interface FixedPiece {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
}

/** Reads a job that was checked. */
export function problemOf(job: PackingJob): Problem {
  const scale = scaleFor(job.width);
  const width = Math.floor(job.width * scale + 1e-6);
  const spacing = (job.spacing ?? 0) * scale;
  const shapes: Shape[] = [];
  const stances = job.items.map((item, at) => {
    const own: number[] = [];
    for (const mirrored of item.mirror === true ? [false, true] : [false])
      for (const rotation of rotationsOf(item)) {
        const shape = shapeOf(item, { item: at, rotation, mirrored }, scale, spacing);
        if (!fits(shape, item, width, scale)) continue;
        if (!item.lattice && own.some((i) => shapes[i] && isSameStance(shapes[i], shape))) continue;
        own.push(shapes.length);
        shapes.push(shape);
      }
    return own;
  });
  const fixed: FixedPiece[] = (job.fixed ?? []).map((placement) => {
    const item = job.items[placement.item];
    if (item) shapes.push(shapeOf(item, placement, scale, spacing));
    return {
      shape: shapes.length - 1,
      x: Math.round(placement.x * scale),
      y: Math.round(placement.y * scale),
    };
  });
  const fixedEnd = Math.max(0, ...fixed.map(({ shape, x }) => x + (shapes[shape]?.box.right ?? 0)));
  for (const area of job.keepOut ?? []) {
    const { outline, x, y } = aboutItself(area, scale);
    shapes.push(keepOutShape(outline, spacing));
    fixed.push({ shape: shapes.length - 1, x, y });
  }
  const wanted = job.items.flatMap(({ demand }, item) => {
    const lying = (job.fixed ?? []).filter((placement) => placement.item === item).length;
    return new Array<number>(Math.max(0, demand - lying)).fill(item);
  });
  const numbers = (of: (shape: Shape) => number): Float64Array => Float64Array.from(shapes, of);
  const itemOf = ({ item }: Shape): PackingItem | undefined => job.items[item];
  const lattice = (axis: 'x' | 'y') =>
    shapes.map((shape) => {
      const { step, at } = itemOf(shape)?.lattice?.[axis] ?? { step: 0, at: 0 };
      return step > 0 ? { step: step * scale, at: at * scale } : null;
    });
  return {
    job,
    scale,
    width,
    shapes,
    stances,
    pieces: [...wanted, ...fixed.map(({ shape }) => shapes[shape]?.item ?? -1)],
    movable: wanted.length,
    left: numbers(({ body }) => body.left),
    right: numbers(({ box }) => box.right),
    least: numbers((shape) => (itemOf(shape)?.against === 'high' ? width - shape.box.high : -shape.box.low)),
    most: numbers((shape) => (itemOf(shape)?.against === 'low' ? -shape.box.low : width - shape.box.high)),
    fromX: numbers(({ box }) => -box.left),
    atStart: Uint8Array.from(shapes, (shape) => (itemOf(shape)?.against === 'start' ? 1 : 0)),
    latticeX: lattice('x'),
    latticeY: lattice('y'),
    small: numbers(({ box }) => Math.min(box.right - box.left, box.high - box.low)),
    fixed,
    fixedEnd,
  };
}

function fits({ box }: Shape, { against, lattice }: PackingItem, width: number, scale: number): boolean {
  const [from, to] = [-box.low, width - box.high];
  if (from > to) return false;
  const y = lattice?.y;
  if (!y || y.step <= 0) return true;
  const [least, most] = against === 'low' ? [from, from] : against === 'high' ? [to, to] : [from, to];
  const step = y.step * scale;
  return snapped(least, { step, at: y.at * scale }, least, most) !== null;
}

function keepOutShape(area: Outline, spacing: number): Shape {
  const outline = tidied(grown(tidied(area), spacing / 2));
  const body = boxOf(outline);
  return {
    item: -1,
    rotation: 0,
    mirrored: false,
    outline,
    body,
    box: body,
    area: twiceArea(outline) / 2,
    hullArea: 0,
  };
}

/** The place of a lattice nearest to a value, within two ends; null where there is none. Whole. */
export function snapped(value: number, { step, at }: Lattice, least: number, most: number): number | null {
  let turns = Math.round((value - at) / step);
  if (Math.round(at + turns * step) < least) turns = Math.ceil((least - at) / step);
  if (Math.round(at + turns * step) > most) turns = Math.floor((most - at) / step);
  const place = Math.round(at + turns * step);
  return place >= least && place <= most ? place : null;
}

export const placementOf = ({ shapes, scale }: Problem, shape: number, x: number, y: number): Placement => {
  const stood = shapes[shape];
  return {
    item: stood?.item ?? -1,
    rotation: stood?.rotation ?? 0,
    mirrored: stood?.mirrored ?? false,
    x: x / scale,
    y: y / scale,
  };
};
