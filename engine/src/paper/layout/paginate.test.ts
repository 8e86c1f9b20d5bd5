import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../../testing/evenly.ts';
import { paginate } from './paginate.ts';
import { piece, type Piece } from './piece.ts';

const pieces = fc.array(
  fc
    .record({
      height: evenly(0, 130),
      gap: evenly(0, 20),
      keepWithNext: fc.boolean(),
      endsPage: fc.constantFrom(false, false, false, false, true),
    })
    .map(({ height, endsPage, ...rest }) => piece(endsPage ? 0 : height, [], { endsPage, ...rest })),
  { maxLength: 25 },
);

const row = (height: number, head: Piece | null): Piece => piece(height, [], { repeat: head });

describe('pages', () => {
  test('every piece is printed once, in order, within its page and below the one before', () => {
    fc.assert(
      fc.property(pieces, (all) => {
        const pages = paginate(all, 100);
        expect(pages.flat().map((at) => at.piece)).toEqual(all.filter(({ endsPage }) => !endsPage));
        for (const page of pages)
          page.reduce((foot, at) => {
            expect(at.y).toBeGreaterThanOrEqual(foot - 1e-6);
            const end = at.y + at.piece.height * at.scale;
            expect(end).toBeLessThanOrEqual(100 + 1e-5);
            return end;
          }, 0);
      }),
      { numRuns: 300 },
    );
  });

  test('only what is taller than a page is made smaller', () => {
    fc.assert(
      fc.property(pieces, (all) => {
        for (const at of paginate(all, 100).flat()) if (at.piece.height <= 100) expect(at.scale).toBe(1);
      }),
      { numRuns: 300 },
    );
  });

  test('what belongs together goes to the next page together', () => {
    const heading = piece(20, [], { keepWithNext: true });
    const pages = paginate([piece(70, []), heading, piece(20, [])], 100);
    expect(pages.map((page) => page.length)).toEqual([1, 2]);
  });

  test('a table’s headings stand at the top of each of its pages', () => {
    const head = piece(10, [], { keepWithNext: true });
    const rows = Array.from({ length: 9 }, () => row(20, head));
    const pages = paginate([head, ...rows], 100);
    expect(pages.map((page) => page.length)).toEqual([5, 5, 2]);
    for (const page of pages) expect(page[0]?.piece).toBe(head);
  });

  test('a page is not left blank by two page ends, nor by one at the end', () => {
    const end = piece(0, [], { endsPage: true });
    expect(paginate([end, piece(9, []), end, end, piece(9, []), end], 100)).toHaveLength(2);
  });
});
