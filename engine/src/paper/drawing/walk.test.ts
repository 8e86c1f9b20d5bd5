import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { point } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import { drawing, group, label, place } from './make.ts';
import type { Placement } from './mark.ts';
import { hasRoles, placed, placedTexts, within } from './walk.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const placement: fc.Arbitrary<Placement> = fc
  .tuple(number(-200, 200), number(-200, 200), number(0.1, 4), number(-4, 4))
  .map(([dx, dy, scale, angle]) => ({ dx: mm(dx), dy: mm(dy), scale, angle: radians(angle) }));

describe('placing', () => {
  test('a placement within a placement is one after the other', () => {
    fc.assert(
      fc.property(placement, placement, number(-100, 100), number(-100, 100), (outer, inner, x, y) => {
        const once = placed(point(x, y), within(outer, inner));
        const twice = placed(placed(point(x, y), inner), outer);
        expect(once.x).toBeCloseTo(twice.x, 6);
        expect(once.y).toBeCloseTo(twice.y, 6);
      }),
      { numRuns: 200 },
    );
  });

  test('a drawing placed at half size has its words at half size, where they then are', () => {
    const inner = drawing({
      width: mm(40),
      height: mm(20),
      title: 'Panel',
      description: '',
      marks: [label(point(10, 8), 'hem', { size: mm(4) })],
    });
    const [text] = placedTexts([place(inner, mm(100), mm(50), 0.5)]);
    expect(text).toMatchObject({ text: 'hem', size: 2, at: { x: 105, y: 54 } });
  });

  test('a role is found however deep it lies', () => {
    const words = label(point(0, 0), 'hem');
    expect(hasRoles([group('a', [group('b', [words])])])).toBe(false);
    expect(hasRoles([group('a', [group('b', [words], { role: 'paragraph' })])])).toBe(true);
  });

  test('a label is one line: line ends and tabs become spaces, no-break spaces stay', () => {
    expect(label(point(0, 0), 'two\r\nlines\tand 5\u00a0in').text).toBe('two lines and 5\u00a0in');
  });
});
