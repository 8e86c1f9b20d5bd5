import { arc, point, polyline, type Path, type Point } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { DOT_RADIUS, hatch } from './hatch.ts';
import type { ArrowMark, GroupMark, HeadName, Mark, PathMark, TextMark } from './mark.ts';
import { inks, style, type Ink, type Style } from './style.ts';

/** What a writer needs to know how to write; everything else is made of these. */
export type PlainMark = PathMark | TextMark | GroupMark;

const circlePath = (centre: Point, radius: Mm): Path => [
  arc(centre, radius, radians(0), radians(2 * Math.PI)),
];

const filled = (paths: readonly Path[], ink: Ink): PathMark => ({
  kind: 'path',
  paths,
  closed: true,
  style: style({ stroke: null, fill: ink }),
});

/** Lightness of a colour, 0 to 1, by the weights of ITU-R BT.601: enough to choose between dark and light lines. */
function lightness(ink: Ink): number {
  const channel = (at: number) => parseInt(ink.slice(at, at + 2), 16) / 255;
  return 0.299 * channel(1) + 0.587 * channel(3) + 0.114 * channel(5);
}

const DARK = 0.4;
const patternInk = ({ fill }: Style): Ink =>
  fill !== null && lightness(fill) < DARK ? inks.paper : inks.ink;

function patterned(mark: PathMark): readonly PlainMark[] {
  const ink = patternInk(mark.style);
  const { lines, dots } = hatch(mark.paths, mark.style.pattern);
  const marks: PlainMark[] = [];
  if (mark.style.fill !== null) marks.push(filled(mark.paths, mark.style.fill));
  if (lines.length > 0)
    marks.push({
      kind: 'path',
      paths: lines.map(({ a, b }) => polyline([a, b])),
      closed: false,
      style: style({ stroke: ink, width: mm(0.15) }),
    });
  if (dots.length > 0)
    marks.push(
      filled(
        dots.map((centre) => circlePath(centre, mm(DOT_RADIUS))),
        ink,
      ),
    );
  if (mark.style.stroke !== null)
    marks.push({ ...mark, style: { ...mark.style, fill: null, pattern: 'none' } });
  return marks;
}

function headAt(
  tip: Point,
  back: { x: number; y: number },
  head: HeadName,
  mark: ArrowMark,
): PathMark | null {
  const { size } = mark;
  const at = (along: number, across: number) =>
    point(tip.x + back.x * along - back.y * across, tip.y + back.y * along + back.x * across);
  if (head === 'none') return null;
  const ink = mark.style.stroke ?? inks.ink;
  if (head === 'arrow')
    return filled([polyline([tip, at(size, size * 0.3), at(size, size * -0.3)], { closed: true })], ink);
  // A tick leans at 45° across the end, as a stroke of chalk does.
  const half = size * 0.5 * Math.SQRT1_2;
  return {
    kind: 'path',
    paths: [polyline([at(-half, -half), at(half, half)])],
    closed: false,
    style: style({ stroke: ink, width: mm(mark.style.width * 1.8) }),
  };
}

function arrowMarks(mark: ArrowMark): readonly PlainMark[] {
  const { from, to, size } = mark;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const back = length > 0 ? { x: (from.x - to.x) / length, y: (from.y - to.y) / length } : { x: 1, y: 0 };
  const forth = { x: -back.x, y: -back.y };
  // The line ends inside an arrowhead, so that its square end doesn't blunt the tip.
  const inset = (head: HeadName) => (head === 'arrow' ? Math.min(size * 0.8, length / 2) : 0);
  const shaft = polyline([
    point(from.x + forth.x * inset(mark.tail), from.y + forth.y * inset(mark.tail)),
    point(to.x + back.x * inset(mark.head), to.y + back.y * inset(mark.head)),
  ]);
  const heads = [headAt(from, forth, mark.tail, mark), headAt(to, back, mark.head, mark)];
  return [
    { kind: 'path', paths: [shaft], closed: false, style: mark.style },
    ...heads.filter((head) => head !== null),
  ];
}

/** A mark as paths, words and groups; patterns and heads become paths, the same for every writer. */
export function resolve(mark: Mark): readonly PlainMark[] {
  switch (mark.kind) {
    case 'text':
    case 'group':
      return [mark];
    case 'circle':
      return resolve({
        kind: 'path',
        paths: [circlePath(mark.centre, mark.radius)],
        closed: true,
        style: mark.style,
      });
    case 'arrow':
      return arrowMarks(mark);
    case 'path':
      return mark.closed && mark.style.pattern !== 'none' ? patterned(mark) : [mark];
  }
}
