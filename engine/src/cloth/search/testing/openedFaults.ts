import {
  areaPaths,
  EndType,
  FillRule,
  inflatePaths,
  intersect,
  JoinType,
  union,
  xor,
  type Paths64,
} from 'clipper2-ts';
import {
  boundsOf,
  flatten,
  lengthOf,
  mirrorX,
  point,
  rotate,
  translate,
  type Path,
  type Point,
} from '../../../geometry/index.ts';
import { mm, radians } from '../../../units/index.ts';
import type { ClothJob, FoundCloth, FoundPiece, FoundTable } from '../../job/found.ts';
import { UNITS, whole } from './whole.ts';

type Ring = readonly Point[];

const ringOf = (outline: Path): Ring => flatten(outline, mm(0.002));
/** Either way round is the same piece of cloth. */
const filled = (rings: readonly Ring[]): Paths64 => union(rings.map(whole), FillRule.NonZero);
const areaOf = (paths: Paths64): number => Math.abs(areaPaths(paths)) / UNITS ** 2;

/** Where a point of a folded table lies on each layer: written down for each fold anew, by what a maker sees at its edges. */
export function onLayers({
  layers: count,
  left,
  right,
  bottom,
  along,
  across,
}: FoundTable): ((ring: Ring) => Ring)[] {
  const at = (place: (x: number, y: number) => readonly [number, number]) => (ring: Ring) =>
    ring.map((corner) => {
      const [x, y] = place(corner.x, corner.y);
      return point(x, y);
    });
  const same = (ring: Ring): Ring => ring;
  if (count === 1) return [same];
  if (count === 4 && left === 'two folds')
    return [
      at((x, y) => [along - x, y]),
      at((x, y) => [along + x, y]),
      at((x, y) => [3 * along - x, y]),
      at((x, y) => [3 * along + x, y]),
    ];
  if (bottom === 'fold') return [same, at((x, y) => [x, 2 * across - y])];
  if (right === 'fold') return [same, at((x, y) => [2 * along - x, y])];
  throw new Error('a fold that nobody makes');
}

/**
 * What is wrong with a lay once every table is opened out: a piece that has not its own shape, or the mirror image
 * of it, and pieces that lie on one another on cloth that was opened out.
 */
export function openedFaults(found: FoundCloth, job: ClothJob): string[] {
  const faults: string[] = [];
  const shapes = shapesOf(job);
  // What is cut from each stretch of cloth that lies folded; the same stretch opened out comes after it.
  const cut = new Map<FoundTable['from'], Paths64[]>();
  for (const [i, table] of found.tables.entries()) {
    const opened = table.pieces.map((piece) => {
      const rings = onLayers(table).map((layer) => layer(ringOf(piece.outline)));
      return piece.onFold ? pairsOf(rings).map(filled) : rings.map((ring) => filled([ring]));
    });
    for (const [j, piece] of table.pieces.entries())
      if (!isCutRight(piece, opened[j] ?? [], shapes))
        faults.push(`table ${String(i)}: piece ${String(j)} has not its shape when it is opened`);
    if (table.where !== 'opened') {
      cut.set(table.from, opened.flat());
      continue;
    }
    for (const one of opened.flat())
      for (const other of cut.get(table.from) ?? [])
        if (areaOf(intersect(shrunk(one), other, FillRule.NonZero)) > 1e-3)
          faults.push(`table ${String(i)}: a piece lies where another was cut`);
  }
  return faults;
}

/** Two pieces may lie on one another by a hundredth of a millimetre. */
const shrunk = (paths: Paths64): Paths64 =>
  inflatePaths(paths, -0.01 * UNITS, JoinType.Round, EndType.Polygon, 2, 1);

/** Layers that a fold holds together. */
const pairsOf = (rings: readonly Ring[]): Ring[][] =>
  rings.flatMap((ring, i) => (i % 2 === 0 ? [[ring, ...rings.slice(i + 1, i + 2)]] : []));

interface Shape {
  readonly outline: Path;
  readonly turns: readonly number[];
}

/** Each panel and part as it is to be cut, by its label. */
function shapesOf({ wanted }: ClothJob): Map<object, Shape> {
  const shapes = new Map<object, Shape>();
  for (const { mains, parts } of wanted)
    for (const { piece, copies, swing } of [...mains, ...parts])
      for (const { panels, parts: labels, mirrored } of copies) {
        const outline = mirrored ? mirrorX(piece.outline) : piece.outline;
        const quarters = [0, 1, 2, 3].map((turn) => (turn * Math.PI) / 2);
        const turns = [
          ...quarters,
          ...(swing > 0 ? quarters.flatMap((turn) => [turn + swing, turn - swing]) : []),
        ];
        for (const label of [...panels, ...labels]) shapes.set(label, { outline, turns });
      }
  return shapes;
}

/** Whether each of a piece's labels has a layer of its own that has its shape: turned, but not turned over. */
function isCutRight(piece: FoundPiece, layersOf: readonly Paths64[], shapes: Map<object, Shape>): boolean {
  const labels = [...piece.panels, ...piece.parts].map((label) => shapes.get(label));
  const fits = labels.map((shape) =>
    layersOf.flatMap((layer, i) => (shape && hasShape(layer, shape) ? [i] : [])),
  );
  const assign = (at: number, free: readonly number[]): boolean =>
    at === fits.length ||
    (fits[at] ?? []).some(
      (i) =>
        free.includes(i) &&
        assign(
          at + 1,
          free.filter((each) => each !== i),
        ),
    );
  return assign(0, [...layersOf.keys()]);
}

function hasShape(layer: Paths64, { outline, turns }: Shape): boolean {
  const points = layer.flat();
  const left = Math.min(...points.map(({ x }) => x)) / UNITS;
  const top = Math.min(...points.map(({ y }) => y)) / UNITS;
  return turns.some((turn) => {
    const stood = rotate(outline, radians(turn));
    const box = boundsOf(stood);
    const there = filled([ringOf(translate(stood, left - box.left, top - box.top))]);
    return areaOf(xor(layer, there, FillRule.NonZero)) < CLOSE * lengthOf(outline);
  });
}

/** Two outlines that are apart by this on the way round are one, in mm. */
const CLOSE = 0.1;
