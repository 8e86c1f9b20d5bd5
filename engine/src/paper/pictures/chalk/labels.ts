import { point, type Point } from '../../../geometry/index.ts';
import { mm, radians } from '../../../units/index.ts';
import { inks, label, straight, type Mark } from '../../drawing/index.ts';
import { thinLine } from '../cloth.ts';
import { spread } from '../fit.ts';

/** Mean width of a letter, and height of a line, for each unit of size. */
const LETTER = 0.52;
export const LINE = 1.15;
export const widthOf = (text: string, size: number): number => LETTER * size * text.length;

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
/** Words that lie already: others keep clear of them. */
export type Taken = Box[];

export const clear = (box: Box, taken: Taken): boolean =>
  taken.every(
    (each) =>
      box.right <= each.left || box.left >= each.right || box.bottom <= each.top || box.top >= each.bottom,
  );

export const SCALE_SIZE = 2.7;
/** From the cloth's edge to the words of its scale. */
const LEADER = 4;

export interface EdgeValue {
  /** On paper, along the edge. */
  readonly at: number;
  readonly text: string;
}

/** Depth that a scale of these words takes beyond its edge. */
export const scaleDepth = (values: readonly { readonly text: string }[]): number =>
  values.length === 0 ? 2 : LEADER + 1.5 + Math.max(...values.map(({ text }) => widthOf(text, SCALE_SIZE)));

/** Distances along an edge: a tick at each place, its words moved apart beside it. Up from the edge, or down. */
export function edgeScale(
  values: readonly EdgeValue[],
  edge: number,
  side: 'up' | 'down',
  { from, to }: { readonly from: number; readonly to: number },
): Mark[] {
  const once = values
    .toSorted((one, other) => one.at - other.at)
    .filter(({ text, at }, i, all) => {
      const before = all[i - 1];
      return !(before?.text === text && Math.abs(before.at - at) < SCALE_SIZE);
    });
  const gap = Math.min(SCALE_SIZE * 1.1, (to - from) / Math.max(1, once.length));
  const places = spread(
    once.map(({ at }) => at),
    gap,
    to,
  );
  const way = side === 'up' ? -1 : 1;
  return once.flatMap(({ at, text }, i): Mark[] => {
    const place = places[i] ?? at;
    return [
      straight(point(at, edge), point(at, edge + way * 1.5), thinLine),
      straight(point(at, edge + way * 1.5), point(place, edge + way * LEADER), thinLine),
      label(point(place, edge + way * (LEADER + 0.6)), text, {
        size: mm(Math.min(SCALE_SIZE, gap / 1.05)),
        baseline: 'middle',
        align: side === 'up' ? 'start' : 'end',
        angle: radians(-Math.PI / 2),
      }),
    ];
  });
}

const USUAL = 3.2;
const SMALLEST = 1.9;

/** Words in the middle of a piece, as large as they fit: on one line or several, along it or down it. */
export function namedWithin(
  { at, across, down }: { readonly at: Point; readonly across: number; readonly down: number },
  ways: readonly (readonly string[])[],
  taken: Taken,
): Mark[] {
  const sizeIn = (lines: readonly string[], long: number, short: number): number =>
    Math.min(
      USUAL,
      (long - 1) / Math.max(...lines.map((line) => LETTER * line.length)),
      (short - 0.6) / (LINE * lines.length),
    );
  const tried = ways.flatMap((lines) => [
    { lines, size: sizeIn(lines, across, down), upright: false },
    { lines, size: sizeIn(lines, down, across), upright: true },
  ]);
  const [first] = tried;
  if (!first) return [];
  const fitting = tried.find(({ size }) => size >= SMALLEST) ?? tried.at(-2) ?? first;
  // Of the ways to say as much the one that is read from furthest away.
  const best = tried
    .filter(({ lines }) => lines.join(' · ') === fitting.lines.join(' · '))
    .reduce((most, each) => (each.size > most.size ? each : most));
  const size = Math.max(1.5, best.size);
  const long = Math.max(...best.lines.map((line) => widthOf(line, size)));
  const short = LINE * size * best.lines.length;
  const [w, h] = best.upright ? [short, long] : [long, short];
  taken.push({ left: at.x - w / 2, right: at.x + w / 2, top: at.y - h / 2, bottom: at.y + h / 2 });
  return best.lines.map((line, i) => {
    const off = (i - (best.lines.length - 1) / 2) * LINE * size;
    return label(point(at.x + (best.upright ? off : 0), at.y + (best.upright ? 0 : off)), line, {
      size: mm(size),
      align: 'middle',
      baseline: 'middle',
      bold: i === 0,
      halo: inks.paper,
      ...(best.upright ? { angle: radians(-Math.PI / 2) } : {}),
    });
  });
}
