import { point, polyline, type Path, type Point } from '../../geometry/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import type {
  ArrowMark,
  CircleMark,
  Drawing,
  GroupMark,
  Mark,
  PathMark,
  Placement,
  TextMark,
} from './mark.ts';
import { inks, style, type Style } from './style.ts';

export const drawing = (of: Drawing): Drawing => of;

const several = (paths: Path | readonly Path[]): readonly Path[] =>
  paths.length > 0 && paths.every((each) => Array.isArray(each))
    ? (paths as readonly Path[])
    : [paths as Path];

/** An open line along one path or several. */
export const stroke = (paths: Path | readonly Path[], changes: Partial<Style> = {}): PathMark => ({
  kind: 'path',
  paths: several(paths),
  closed: false,
  style: style(changes),
});

/** An area within one path or several; even-odd, so that a path inside another is a hole. */
export const area = (paths: Path | readonly Path[], changes: Partial<Style> = {}): PathMark => ({
  ...stroke(paths, changes),
  closed: true,
});

export const rectanglePath = (x: number, y: number, width: number, height: number): Path =>
  polyline([point(x, y), point(x + width, y), point(x + width, y + height), point(x, y + height)], {
    closed: true,
  });

export const straight = (from: Point, to: Point, changes: Partial<Style> = {}): PathMark =>
  stroke(polyline([from, to]), changes);

export const rectangle = (
  x: number,
  y: number,
  width: number,
  height: number,
  changes: Partial<Style> = {},
): PathMark => area(rectanglePath(x, y, width, height), changes);

export const circle = (centre: Point, radius: Mm, changes: Partial<Style> = {}): CircleMark => ({
  kind: 'circle',
  centre,
  radius,
  style: style(changes),
});

/** A filled dot: a match mark, or a point to measure to. */
export const dot = (centre: Point, radius: Mm = mm(0.8)): CircleMark =>
  circle(centre, radius, { stroke: null, fill: inks.ink });

export const arrow = (
  from: Point,
  to: Point,
  changes: Partial<Omit<ArrowMark, 'kind' | 'from' | 'to'>> = {},
): ArrowMark => ({
  kind: 'arrow',
  from,
  to,
  tail: 'none',
  head: 'arrow',
  size: mm(2.4),
  style: style(),
  ...changes,
});

/** Words at a point. Line ends and tabs become spaces: a mark is one line. Default 3.5 mm (10 pt), dark, upright. */
export const label = (
  at: Point,
  text: string,
  changes: Partial<Omit<TextMark, 'kind' | 'at' | 'text'>> = {},
): TextMark => ({
  kind: 'text',
  at,
  text: text.replace(/[\t\n\r\f\v]+/g, ' '),
  size: mm(3.5),
  align: 'start',
  baseline: 'foot',
  bold: false,
  angle: radians(0),
  ink: inks.ink,
  halo: null,
  ...changes,
});

export const unmoved: Placement = { dx: mm(0), dy: mm(0), scale: 1, angle: radians(0) };

export const group = (
  name: string,
  marks: readonly Mark[],
  changes: Partial<Omit<GroupMark, 'kind' | 'name' | 'marks' | 'placement'>> & {
    readonly placement?: Partial<Placement>;
  } = {},
): GroupMark => ({
  kind: 'group',
  name,
  role: changes.role ?? null,
  alt: changes.alt ?? '',
  placement: { ...unmoved, ...changes.placement },
  marks,
});

/**
 * One drawing in another, its top left corner at (dx, dy). `scale` scales everything, words and line
 * widths too: build a drawing at the size it is read at rather than scaling it here.
 */
export const place = (of: Drawing, dx: Mm, dy: Mm, scale = 1): GroupMark =>
  group(of.title, of.marks, { placement: { dx, dy, scale } });
