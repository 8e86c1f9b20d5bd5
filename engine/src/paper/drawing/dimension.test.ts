import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../../testing/evenly.ts';
import { distance, point } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { dimension, readable } from './dimension.ts';
import type { ArrowMark, TextMark } from './mark.ts';

const parts = (offset: number) => {
  const { marks } = dimension({ from: point(10, 50), to: point(70, 50), text: '60', offset: mm(offset) });
  const lines = marks.filter((mark): mark is ArrowMark => mark.kind === 'arrow');
  const words = marks.filter((mark): mark is TextMark => mark.kind === 'text');
  return { line: lines[0], text: words[0], count: marks.length };
};

describe('a dimension', () => {
  test('is as long as what it measures, and stands beside it by its offset', () => {
    const { line } = parts(8);
    expect(line && distance(line.from, line.to)).toBeCloseTo(60);
    expect(line?.from).toEqual({ x: 10, y: 58 });
  });

  test('a positive offset lies to the right of the way walked, a negative one to the left', () => {
    expect(parts(8).text?.at.y).toBeGreaterThan(58);
    expect(parts(-8).text?.at.y).toBeLessThan(42);
  });

  test('on the measured line itself it needs no witness lines', () => {
    expect(parts(0).count).toBe(parts(8).count - 2);
  });

  test('its words are never upside down, and never turned by other than a half turn', () => {
    fc.assert(
      fc.property(evenly(-10, 10), (angle) => {
        const turned = readable(angle);
        expect(Math.abs(turned)).toBeLessThanOrEqual(Math.PI / 2 + 1e-9);
        expect(Math.abs(Math.sin(turned - angle))).toBeLessThan(1e-9);
      }),
      { numRuns: 200 },
    );
  });
});
