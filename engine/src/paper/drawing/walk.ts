import { point, type Point } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import { unmoved } from './make.ts';
import type { GroupMark, Mark, Placement, TextMark } from './mark.ts';

/** A point of a group on the sheet it is placed on. */
export function placed({ x, y }: Point, by: Placement): Point {
  const cos = Math.cos(by.angle) * by.scale;
  const sin = Math.sin(by.angle) * by.scale;
  return point(x * cos - y * sin + by.dx, x * sin + y * cos + by.dy);
}

/** The placement of what is placed by `inner` in a group that is itself placed by `outer`. */
export function within(outer: Placement, inner: Placement): Placement {
  const at = placed(point(inner.dx, inner.dy), outer);
  return {
    dx: mm(at.x),
    dy: mm(at.y),
    scale: outer.scale * inner.scale,
    angle: radians(outer.angle + inner.angle),
  };
}

/** Every mark that isn't a group, in the order it is drawn, with its placement on the sheet. */
export function eachMark(
  marks: readonly Mark[],
  visit: (mark: Exclude<Mark, GroupMark>, by: Placement) => void,
  by: Placement = unmoved,
): void {
  for (const mark of marks)
    if (mark.kind === 'group') eachMark(mark.marks, visit, within(by, mark.placement));
    else visit(mark, by);
}

/** Every line of words where it stands on the sheet, at the size it has there. */
export function placedTexts(marks: readonly Mark[]): readonly TextMark[] {
  const found: TextMark[] = [];
  eachMark(marks, (mark, by) => {
    if (mark.kind === 'text')
      found.push({
        ...mark,
        at: placed(mark.at, by),
        size: mm(mark.size * by.scale),
        angle: radians(mark.angle + by.angle),
      });
  });
  return found;
}

/** Whether any group, at any depth, tells what it is. */
export const hasRoles = (marks: readonly Mark[]): boolean =>
  marks.some((mark) => mark.kind === 'group' && (mark.role !== null || hasRoles(mark.marks)));
