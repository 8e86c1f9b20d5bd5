import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evenly } from '../testing/evenly.ts';
import { runs } from '../testing/runs.ts';
import { cellAt, cellsOf, enter } from './cells.ts';
import { problemOf } from './problem.ts';

const WIDTHS = [10, 25, 60];
const END = 400;

test('whatever overlaps a piece is in the cell of its left side, and what has left is not', () => {
  const items = WIDTHS.map((width) => ({
    outline: [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: 10 },
      { x: 0, y: 10 },
    ],
    demand: 3,
    rotations: [0],
  }));
  const problem = problemOf({ width: 100, items });
  const long = (piece: number): number => (WIDTHS[problem.pieces[piece] ?? 0] ?? 0) * problem.scale;
  const move = fc.record({
    piece: fc.nat({ max: problem.movable - 1 }),
    // Before the strip and past the last cell too, as keep-outs lie.
    left: evenly(-0.5, 3),
  });
  fc.assert(
    fc.property(fc.array(move, { minLength: 5, maxLength: 60 }), (moves) => {
      const cells = cellsOf(problem, END * problem.scale);
      const lies = new Map<number, number>();
      for (const { piece, left: share } of moves) {
        const left = Math.round(share * END * problem.scale);
        enter(cells, piece, left, left + long(piece));
        lies.set(piece, left);
        const cell = cellAt(cells, left);
        const members = [...(cells.members[cell] ?? [])].slice(0, cells.count[cell]);
        expect(new Set(members).size).toBe(members.length);
        for (const [other, at] of lies)
          if (at < left + long(piece) && at + long(other) > left) expect(members).toContain(other);
      }
      const listed = cells.count.reduce((sum, many) => sum + many, 0);
      const spanned = [...lies.keys()].map(
        (piece) => (cells.last[piece] ?? 0) - (cells.first[piece] ?? 0) + 1,
      );
      expect(listed).toBe(spanned.reduce((sum, many) => sum + many, 0));
    }),
    { numRuns: runs(100) },
  );
});
