import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf, contains, distanceTo, line, point, polyline, arc } from '../../../geometry/index.ts';
import { classPlanOf, roster } from '../../../testing/classes.ts';
import { speakerOf } from '../../../testing/speakers.ts';
import { mm, radians } from '../../../units/index.ts';
import { placedTexts } from '../../drawing/index.ts';
import { namesOnTable } from '../../documents/laidPieces.ts';
import { chalkedLay, chalkedSheet } from './chalkedLay.ts';
import { edgeScale } from './labels.ts';
import { cornersOf, numbered } from './numbered.ts';
import { stretchesOf } from './stretches.ts';
import { betweenUprights, roomWithin } from './within.ts';

const box = (x: number, y: number, width: number, height: number) =>
  polyline([point(x, y), point(x + width, y), point(x + width, y + height), point(x, y + height)], {
    closed: true,
  });

describe('corners', () => {
  test('of a rectangle four, its own corners', () => {
    expect(cornersOf(box(2, 3, 100, 50))).toEqual([point(2, 3), point(102, 3), point(102, 53), point(2, 53)]);
  });

  test('a curve has none along it; where it meets a straight edge at an angle there is one', () => {
    const half = [
      arc(point(0, 0), mm(100), radians(0), radians(Math.PI / 2)),
      arc(point(0, 0), mm(100), radians(Math.PI / 2), radians(Math.PI / 2)),
      line(point(-100, 0), point(100, 0)),
    ];
    const corners = cornersOf(half);
    expect(corners).toHaveLength(2);
    for (const { x, y } of corners) expect([Math.abs(x), Math.abs(y)]).toEqual([100, expect.closeTo(0)]);
  });
});

describe('stretches of a long cloth', () => {
  const boxes = fc.array(
    fc.record({ x: fc.integer({ min: 0, max: 9000 }), width: fc.integer({ min: 50, max: 1500 }) }),
    { maxLength: 40 },
  );

  test('follow one another from end to end, none longer than it may be', () => {
    fc.assert(
      fc.property(boxes, fc.integer({ min: 1500, max: 4000 }), (placed, most) => {
        const along = 10_500;
        const stretches = stretchesOf(
          along,
          most,
          placed.map(({ x, width }) => boundsOf(box(x, 0, width, 10))),
        );
        expect(stretches[0]?.from).toBe(0);
        expect(stretches.at(-1)?.to).toBe(along);
        for (const [i, { from, to }] of stretches.entries()) {
          expect(to - from).toBeLessThanOrEqual(most * 1.001);
          expect(to).toBeGreaterThan(from);
          if (i > 0) expect(from).toBe(stretches[i - 1]?.to);
        }
      }),
    );
  });

  test('a stretch ends between pieces where it can', () => {
    const row = [0, 900, 1800, 2700].map((x) => boundsOf(box(x, 0, 900, 10)));
    expect(stretchesOf(3600, 2000, row)[0]).toEqual({ from: 0, to: 1800 });
  });
});

describe('words on pieces', () => {
  test('stand within the piece, of whatever shape', () => {
    // A ring of cloth: its middle is a hole's.
    const ring = Array.from({ length: 40 }, (_, i) => {
      const [radius, turn] = i < 20 ? [100, i] : [60, 39 - i];
      const angle = (turn / 19) * Math.PI;
      return point(radius * Math.cos(angle), radius * Math.sin(angle));
    });
    const { at, across, down } = roomWithin(ring);
    const outline = polyline(ring, { closed: true });
    expect(contains(outline, at)).toBe(true);
    expect(distanceTo(outline, at)).toBeGreaterThan(10);
    expect(across).toBeGreaterThan(20);
    expect(down).toBeGreaterThan(20);
  });

  test('a piece that two stretches part keeps only what lies between them', () => {
    const flat = [point(0, 0), point(100, 10), point(100, 90), point(0, 100)];
    const cut = betweenUprights(flat, 20, 60);
    expect(Math.min(...cut.map(({ x }) => x))).toBeCloseTo(20);
    expect(Math.max(...cut.map(({ x }) => x))).toBeCloseTo(60);
    expect(cut).toContainEqual(point(20, 2));
  });

  test('numbers at an edge never stand on one another', () => {
    const marks = edgeScale(
      [10, 10.5, 11, 11, 50, 50.2].map((at) => ({ at, text: String(at) })),
      20,
      'up',
      { from: 0, to: 100 },
    );
    const places = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.at.x] : [])).sort((a, b) => a - b);
    expect(places).toHaveLength(5);
    for (const [i, x] of places.slice(1).entries()) expect(x - (places[i] ?? 0)).toBeGreaterThan(2.2);
  });
});

describe('a cloth drawn to chalk from', () => {
  const plan = classPlanOf(roster(8));
  const speaker = speakerOf(plan.request);
  const [cloth] = plan.cloths;
  if (!cloth) throw new Error('no cloth');
  const open = cloth.ways.find(({ kind }) => kind === 'open');
  const table = open?.tables.at(-1);
  if (!table) throw new Error('no table');
  const look = {
    speaker,
    nameOf: namesOnTable(cloth, speaker),
    fabric: { pattern: null },
    width: mm(188),
    most: mm(96),
    least: mm(46),
  };
  const stretches = chalkedLay(table, look);

  test('whose each piece is stands on it, or its number in the table', () => {
    const said = stretches.flatMap(({ marks }) => placedTexts(marks).map(({ text }) => text));
    for (const { number, piece } of numbered(table))
      expect(
        said.some(
          (text) => text === String(number) || text.startsWith(`${String(number)} · ${piece.wearer}`),
        ),
      ).toBe(true);
  });

  test('where each piece begins and ends along the cloth stands at an edge', () => {
    const said = new Set(stretches.flatMap(({ marks }) => placedTexts(marks).map(({ text }) => text)));
    for (const { box: bounds } of numbered(table))
      for (const x of [bounds.left, bounds.right]) expect(said).toContain(speaker.length(mm(x)));
  });

  test('it is drawn to one scale, no wider than its paper, and never as a ribbon', () => {
    expect(stretches.length).toBeGreaterThan(1);
    for (const { width, height } of stretches) {
      expect(width).toBe(188);
      expect(height).toBeGreaterThan(46);
    }
    const sheet = chalkedSheet(table, look);
    expect(sheet.height).toBeGreaterThan(stretches.reduce((sum, { height }) => sum + height, 0));
  });

  test('however long the cloth, no last stretch is a sliver, and what is left over is named once', () => {
    for (let along = 1000; along < 9000; along += 130) {
      const rest = { x: mm(0), y: mm(900), along: mm(along), across: mm(150), count: 1 };
      const long = {
        ...table,
        along: mm(along),
        used: mm(along),
        pieces: [],
        leftOver: { ...rest, opened: { along: mm(along), across: mm(150) } },
      };
      const drawn = chalkedLay(long, look);
      // The cloth of a stretch, without its margins.
      const wide = (each: (typeof drawn)[number]): number =>
        Math.max(
          ...each.marks.flatMap((mark) =>
            mark.kind === 'path' ? mark.paths.map((path) => boundsOf(path).right) : [],
          ),
        );
      const last = drawn.at(-1);
      if (drawn.length > 1 && last) expect(wide(last) - 13).toBeGreaterThan(0.2 * (188 - 18));
      const named = drawn
        .flatMap(({ marks }) => placedTexts(marks))
        .filter(({ text }) => text.includes('left over'));
      expect(named).toHaveLength(1);
    }
  });

  test('spoilt places and what is left over are shown', () => {
    const flawed = {
      ...table,
      flaws: [box(100, 100, 50, 50)],
      leftOver: {
        x: mm(200),
        y: mm(300),
        along: mm(500),
        across: mm(400),
        opened: { along: mm(500), across: mm(800) },
        count: 2,
      },
    };
    const said = chalkedLay(flawed, look).flatMap(({ marks }) => placedTexts(marks).map(({ text }) => text));
    expect(said).toContain(speaker.words.workshop.flaw);
    expect(said.some((text) => text.includes('left over'))).toBe(true);
  });
});
