import { describe, expect, test } from 'vitest';
import { boundsOf, lengthOf, point } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { arrow, circle, label, rectangle, rectanglePath, stroke } from './make.ts';
import type { Mark, PathMark } from './mark.ts';
import { resolve } from './resolve.ts';
import { dashesOf, style } from './style.ts';

const pathsOf = (mark: Mark): readonly PathMark[] => resolve(mark).filter((each) => each.kind === 'path');

describe('marks as paths', () => {
  test('an arrow ends at its tip, and its line stops short of it', () => {
    const [shaft, head] = pathsOf(arrow(point(0, 0), point(30, 0), { size: mm(3) }));
    expect(boundsOf(head?.paths[0] ?? []).right).toBeCloseTo(30);
    expect(boundsOf(head?.paths[0] ?? []).left).toBeCloseTo(27);
    expect(boundsOf(shaft?.paths[0] ?? []).right).toBeCloseTo(30 - 0.8 * 3);
  });

  test('an arrow shorter than its heads has a line that never runs backwards', () => {
    const [shaft] = pathsOf(arrow(point(0, 0), point(1, 0), { tail: 'arrow', size: mm(3) }));
    expect(lengthOf(shaft?.paths[0] ?? [])).toBeCloseTo(0);
  });

  test('a tick crosses the end of its line; no head, no path', () => {
    const ticked = pathsOf(arrow(point(0, 0), point(30, 0), { tail: 'tick', head: 'none', size: mm(2) }));
    expect(ticked).toHaveLength(2);
    expect(lengthOf(ticked[1]?.paths[0] ?? [])).toBeCloseTo(2);
  });

  test('a circle is as long round as a circle is', () => {
    const [round] = pathsOf(circle(point(3, 4), mm(5)));
    expect(lengthOf(round?.paths[0] ?? [])).toBeCloseTo(10 * Math.PI);
    expect(round?.closed).toBe(true);
  });

  test('a patterned area is its colour, its pattern, its outline, in that order', () => {
    const marks = pathsOf(rectangle(0, 0, 20, 10, { fill: '#14716f', pattern: 'diagonal' }));
    expect(marks.map(({ style: { fill, stroke: line } }) => [fill !== null, line !== null])).toEqual([
      [true, false],
      [false, true],
      [false, true],
    ]);
    expect(marks.every((mark) => mark.style.pattern === 'none')).toBe(true);
  });

  test('the pattern is light on a dark colour and dark on a light one', () => {
    const lineOn = (fill: string) =>
      pathsOf(rectangle(0, 0, 20, 10, { fill, pattern: 'cross' }))[1]?.style.stroke;
    expect(lineOn('#1d2c55')).toBe('#ffffff');
    expect(lineOn('#f2d13c')).not.toBe('#ffffff');
  });

  test('an open line has no pattern; words and groups stay as they are', () => {
    const open = stroke(rectanglePath(0, 0, 5, 5), { pattern: 'dots' });
    expect(resolve(open)).toEqual([open]);
    const words = label(point(0, 0), 'hem');
    expect(resolve(words)).toEqual([words]);
  });

  test('dashes of a thick line are longer, those of a solid line are none', () => {
    const thin = dashesOf(style({ dash: 'chalk', width: mm(0.4) }));
    expect(dashesOf(style({ dash: 'chalk', width: mm(1) }))).toEqual(thin.map((length) => length * 2));
    expect(dashesOf(style())).toEqual([]);
  });
});
