import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, ofLevelBody, samples, type Drafted } from '../testing/drafts.ts';
import { anyBody } from '../testing/bodies.ts';
import { anyFlared, anyGathered } from '../testing/cuts.ts';
import type { RawRequest } from '../testing/requests.ts';
import { anyRibbons } from '../testing/ribbons.ts';
import { anyWaist } from '../testing/waists.ts';
import { distanceTo, flatten, lengthOf } from '../geometry/index.ts';
import { inches, type Mm } from '../units/index.ts';
import { clearHem, clearTop, composeRibbons, type Composition } from './index.ts';
import { bandsOf } from './options.ts';

interface Composed extends Drafted {
  readonly ribbons: Composition;
}
const composedOf = (raw: RawRequest = {}): Composed => {
  const drafted = draftOf(ofLevelBody(raw));
  const { skirt, request } = drafted;
  return { ...drafted, ribbons: composeRibbons(skirt, request.ribbons, request.mark) };
};
const anyComposed: fc.Arbitrary<RawRequest> = fc.record({
  body: anyBody,
  cut: fc.oneof(anyFlared, anyGathered),
  waist: anyWaist,
  ribbons: anyRibbons,
  mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
});
const every = samples(anyComposed, composedOf);

const HAIR = 1e-4;
const isOnMark = (length: number, mark: Mm): boolean =>
  Math.abs(length / mark - Math.round(length / mark)) < 1e-6;

/** Width of one panel, raw side to raw side along a level, from the marks a maker chalks: they run straight between. */
function acrossOnePanel({ skirt }: Drafted, fromHem: number): number {
  const { waistQuarter, hemQuarter } = skirt.marks;
  const flare = hemQuarter.value - waistQuarter.value;
  const quarter = hemQuarter.value - (flare * fromHem) / skirt.panelLength.value;
  return (4 * quarter) / skirt.panels.length;
}

// Common practice, no source.
describe('the usual composition', () => {
  const { ribbons, skirt } = composedOf({ body: { waist: '29 in', hip: '36 in', waistToHem: '31 in' } });

  test('is six rows of ⅝ in ribbon, a strip for the front and one for the back', () => {
    expect(ribbons.rows.length).toBe(6);
    for (const row of ribbons.rows) {
      expect(row.width.value).toBeCloseTo(inches(5 / 8), 9);
      expect(row.strips.map(({ panel }) => panel)).toEqual(['front', 'back']);
    }
    expect(ribbons.where).toBe('front and back');
    expect(codesOf(ribbons).filter((code) => code.startsWith('ribbon.no'))).toEqual([]);
  });

  test('begins 2 in above the hem and stays in the lower half of the skirt', () => {
    expect(ribbons.rows[0]?.fromHem.value).toBeCloseTo(inches(2), 9);
    const top = ribbons.rows.at(-1);
    expect((top?.fromHem.value ?? NaN) + (top?.width.value ?? NaN)).toBeLessThan(
      skirt.finishedLength.value / 2,
    );
  });

  test('takes its colours in turn', () => {
    expect(ribbons.rows.map(({ colour }) => colour.name)).toEqual([
      'teal',
      'gold',
      'teal',
      'gold',
      'teal',
      'gold',
    ]);
  });

  test('is chalked from the raw edge: the hem’s ¾ in further than from the finished hem', () => {
    expect(ribbons.rows[0]?.fromRawEdge.value).toBeCloseTo(inches(2.75), 9);
  });
});

describe('any rows', () => {
  test(
    'never overlap, and go up from the hem; rows of a band touch',
    every(({ ribbons }) => {
      ribbons.rows.forEach((row, i) => {
        const below = ribbons.rows[i - 1];
        expect(row.number).toBe(i + 1);
        if (!below) {
          expect(row.gapBelow).toBeNull();
          return;
        }
        const gap = row.fromHem.value - below.fromHem.value - below.width.value;
        expect(gap).toBeGreaterThanOrEqual(-HAIR);
        expect(row.gapBelow?.value).toBeCloseTo(gap, 4);
        if (row.band === below.band) expect(gap).toBeCloseTo(0, 6);
        else expect(row.band).toBe(below.band + 1);
      });
    }),
  );

  test(
    'never cross the fold of the hem, nor the casing and its gathers',
    every(({ ribbons, skirt }) => {
      const casing = skirt.finishedLength.value - skirt.waist.depth;
      for (const { fromHem, width } of ribbons.rows) {
        expect(fromHem.value).toBeGreaterThanOrEqual(0);
        expect(fromHem.value + width.value).toBeLessThan(casing);
      }
    }),
  );

  test(
    'have every band’s lower edge on a mark that can be chalked',
    every(({ ribbons, context }) => {
      ribbons.rows.forEach((row, i) => {
        if (row.band !== ribbons.rows[i - 1]?.band)
          expect(isOnMark(row.fromHem.value, context.mark)).toBe(true);
      });
    }),
  );

  test(
    'keep even gaps within one mark of one another',
    every(({ ribbons, request }) => {
      if (request.ribbons.spacing !== 'even') return;
      const gaps = ribbons.rows.flatMap(({ gapBelow, band }, i) =>
        gapBelow && band !== ribbons.rows[i - 1]?.band ? [gapBelow.value] : [],
      );
      if (gaps.length > 1)
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(request.mark + HAIR);
    }),
  );

  test(
    'are as many as were asked for, or those that are left off are told of',
    every(({ ribbons, request }) => {
      const asked = bandsOf(request.ribbons);
      const missing = asked.length - (ribbons.rows.at(-1)?.band ?? 0);
      const told = ribbons.notices.find(({ code }) => code === 'ribbon.rowPastTop');
      expect(told?.params['left'] ?? 0).toBe(missing);
      expect(told?.level ?? 'problem').toBe('problem');
      const placed = asked.slice(0, asked.length - missing).flat();
      expect(ribbons.rows.map(({ width }) => width.value)).toEqual(placed.map(({ width }) => width));
      expect(ribbons.rows.map(({ colour }) => colour)).toEqual(placed.map(({ colour }) => colour));
    }),
  );

  test(
    'keep to the maker’s own limits, unless she is told that they do not fit',
    every(({ ribbons, request }) => {
      if (request.ribbons.spacing === 'by hand' || codesOf(ribbons).includes('ribbon.noRoom')) return;
      const { lowest, highest } = request.ribbons;
      const top = ribbons.rows.at(-1);
      if (!top) return;
      expect(ribbons.rows[0]?.fromHem.value).toBeGreaterThanOrEqual(lowest - HAIR);
      if (highest !== undefined)
        expect(top.fromHem.value + top.width.value).toBeLessThanOrEqual(highest + HAIR);
    }),
  );

  test(
    'without an upper limit of the maker’s find room on any skirt that has it',
    every(({ ribbons, skirt, request }) => {
      const { highest, lowest, spacing } = request.ribbons;
      const bands = bandsOf(request.ribbons);
      if (highest !== undefined || spacing === 'by hand' || bands.length === 0) return;
      // Each band may wait for the next mark; 20 mm between two is what the usual zone leaves.
      const needed = bands.flat().reduce((sum, { width }) => sum + width, 0) + bands.length * 20;
      // Rows keep clear of the hem's stitching, however low the maker wishes them, and of all works at the top.
      const from = Math.max(lowest, clearHem(skirt).value);
      if (from + needed <= clearTop(skirt).value) expect(codesOf(ribbons)).not.toContain('ribbon.noRoom');
    }),
  );

  test(
    'are chalked from the raw edge at their height and the hem’s allowance',
    every(({ ribbons, skirt }) => {
      for (const { fromHem, fromRawEdge } of ribbons.rows)
        expect(fromRawEdge.value - fromHem.value).toBeCloseTo(skirt.hemAllowance.value, 9);
    }),
  );

  test(
    'lie on the panel from raw side to raw side, as wide as the marks say',
    every((composed) => {
      const { shape } = composed.skirt.panels[0];
      for (const row of composed.ribbons.rows) {
        const upper = row.fromHem.value + row.width.value;
        expect(lengthOf(row.lower)).toBeCloseTo(acrossOnePanel(composed, row.fromHem.value), 3);
        expect(lengthOf(row.upper)).toBeCloseTo(acrossOnePanel(composed, upper), 3);
        const [first] = flatten(row.lower);
        expect(first && distanceTo(shape.trimmed, first)).toBeLessThan(1e-3);
      }
    }),
  );
});

describe('strips', () => {
  test(
    'are cut by the wider edge of the ribbon and two overhangs, up to the next mark, never short',
    every((composed) => {
      const { ribbons, skirt, request } = composed;
      if (request.ribbons.where === 'round') return;
      for (const row of ribbons.rows) {
        const wider = Math.max(
          acrossOnePanel(composed, row.fromHem.value),
          acrossOnePanel(composed, row.fromHem.value + row.width.value),
        );
        const exact = wider + 2 * request.ribbons.overhang;
        if (request.ribbons.where === 'front and back') expect(row.strips.length).toBe(skirt.panels.length);
        expect(row.strips.length).toBeGreaterThan(0);
        for (const { length } of row.strips) {
          expect(length.value).toBeGreaterThanOrEqual(exact - 1e-3);
          expect(length.value).toBeLessThan(exact + request.mark + 1e-3);
          expect(isOnMark(length.value, request.mark)).toBe(true);
        }
      }
    }),
  );

  test(
    'round the skirt are one, less the seams that are sewn by then',
    every((composed) => {
      const { ribbons, skirt, request } = composed;
      if (request.ribbons.where !== 'round') return;
      for (const row of ribbons.rows) {
        const flat = skirt.panels.length * acrossOnePanel(composed, row.fromHem.value);
        const sewn = 2 * (skirt.sideSeams - 1) * skirt.sideSeamAllowance.value;
        const exact = flat - sewn + 2 * request.ribbons.overhang;
        expect(row.strips.map(({ panel }) => panel)).toEqual(['round']);
        expect(row.strips[0]?.length.value).toBeGreaterThanOrEqual(exact - 1e-3);
        expect(row.strips[0]?.length.value).toBeLessThan(exact + request.mark + 1e-3);
      }
    }),
  );

  test('of a skirt of plain widths: those that are worn in front, or behind', () => {
    const strips = (where: string, widths: number) =>
      composedOf({ cut: { kind: 'gathered', widths }, ribbons: { where } }).ribbons.rows[0]?.strips.map(
        ({ panel, number }) => `${panel} ${String(number)}`,
      );
    expect(strips('front', 3)).toEqual(['width 1']);
    expect(strips('back', 3)).toEqual(['width 2', 'width 3']);
    expect(strips('front', 5)).toEqual(['width 1', 'width 2', 'width 5']);
    expect(strips('front', 2)).toEqual(['front 1']);
    expect(strips('back', 2)).toEqual(['back 1']);
    expect(strips('back', 1)).toEqual(['width 1']);
    expect(strips('front and back', 3)).toEqual(['width 1', 'width 2', 'width 3']);
  });
});

describe('compositions of the maker’s own', () => {
  test('touching ribbons touch, and count as one band', () => {
    const { ribbons } = composedOf({
      ribbons: {
        rows: [
          { touching: [{ width: '1/4 in' }, { width: '1 in' }, { width: '1/4 in' }] },
          { width: '5/8 in' },
        ],
      },
    });
    expect(ribbons.rows.map(({ band }) => band)).toEqual([1, 1, 1, 2]);
    expect(ribbons.rows.map(({ gapBelow }) => gapBelow?.value ?? null).slice(0, 3)).toEqual([null, 0, 0]);
    expect(ribbons.rows[3]?.gapBelow?.value).toBeGreaterThan(0);
  });

  test('gaps by hand are kept', () => {
    const { ribbons } = composedOf({
      ribbons: { rows: 3, spacing: 'by hand', gaps: ['1 in', '2 1/2 in'], lowest: '3 in' },
    });
    expect(ribbons.rows.map(({ fromHem }) => fromHem.value / 25.4)).toEqual(
      [3, 4.625, 7.75].map((at) => expect.closeTo(at, 9) as number),
    );
  });

  test('shrinking gaps are growing ones upside down, within a mark', () => {
    const gaps = (spacing: string) =>
      composedOf({ ribbons: { spacing, rows: 5, highest: '16 in' } }).ribbons.rows.flatMap(
        ({ gapBelow }) => gapBelow?.value ?? [],
      );
    const growing = gaps('growing');
    expect(growing).toEqual(growing.toSorted((a, b) => a - b));
    for (const [i, gap] of gaps('shrinking').toReversed().entries())
      expect(Math.abs(gap - (growing[i] ?? NaN))).toBeLessThanOrEqual(inches(1 / 8) + HAIR);
    const ratios = growing.slice(1).map((gap, i) => gap / (growing[i] ?? NaN));
    for (const ratio of ratios) expect(ratio).toBeCloseTo(1.25, 0);
  });

  test('more rows than there is room for are a problem; those that fit are still placed', () => {
    const { ribbons } = composedOf({ ribbons: { rows: 60, width: '1 in' } });
    expect(codesOf(ribbons)).toEqual(expect.arrayContaining(['ribbon.noRoom', 'ribbon.rowPastTop']));
    expect(ribbons.notices.filter(({ level }) => level === 'problem').length).toBe(2);
    expect(ribbons.rows.length).toBeGreaterThan(20);
    expect(ribbons.rows.length).toBeLessThan(60);
  });

  test('the room that is told to be needed is more than there is', () => {
    const figureOf = (raw: RawRequest, name: string): number => {
      const param = composedOf(raw).ribbons.notices.find(({ code }) => code === 'ribbon.noRoom')?.params[
        name
      ];
      return typeof param === 'object' ? param.value : NaN;
    };
    // Six ribbons of 15 mm take 90 mm, but on 2 mm marks each waits for the next: 95 mm.
    const tight: RawRequest = {
      measure: 'metric',
      ribbons: { rows: 6, width: '15 mm', lowest: '50 mm', highest: '142 mm' },
    };
    expect(figureOf(tight, 'room')).toBeCloseTo(92, 9);
    expect(figureOf(tight, 'needed')).toBeCloseTo(95, 9);
  });

  test('no rows at all are a plain skirt', () => {
    const { ribbons } = composedOf({ ribbons: { rows: 0 } });
    expect(ribbons.rows).toEqual([]);
    expect(ribbons.notices).toEqual([]);
  });

  test('one row, wherever on the skirt its lowest edge is asked for, has room', () => {
    for (const lowest of ['33 cm', '33.3 cm', '13 1/16 in', '40.01 cm'])
      expect(codesOf(composedOf({ ribbons: { rows: 1, lowest } }).ribbons)).not.toContain('ribbon.noRoom');
  });
});

describe('clear of the works', () => {
  test('a row on the stitching of the hem is told of', () => {
    // ¾ in of hem with ¼ in turned under is stitched ½ in above its fold.
    const codes = (lowest: string) => codesOf(composedOf({ ribbons: { lowest } }).ribbons);
    expect(codes('1/2 in')).toContain('ribbon.rowOnHemStitching');
    expect(codes('3/4 in')).not.toContain('ribbon.rowOnHemStitching');
  });

  test('rows asked for up to the waist end below the casing', () => {
    const { ribbons, skirt } = composedOf({ ribbons: { rows: 8, highest: '31 in' } });
    expect(ribbons.rows.length).toBeLessThan(8);
    expect(codesOf(ribbons)).toContain('ribbon.rowPastTop');
    const top = ribbons.rows.at(-1);
    expect((top?.fromHem.value ?? NaN) + (top?.width.value ?? NaN)).toBeLessThan(
      skirt.finishedLength.value - skirt.waist.depth,
    );
  });

  test('a row that just fits below the casing is not lost to the last digit of a binary fraction', () => {
    // 20⅛ in, less 26.1 mm of casing and 12 mm clear of it: 473.075 mm, which is 18 in and ⅝ in of ribbon.
    const just = (lowest: string) =>
      composedOf({
        body: { waistToHem: '20 1/8 in' },
        waist: { elasticWidth: '3/4 in', ease: '7.05 mm' },
        ribbons: { rows: 1, lowest, highest: '473.075 mm' },
      }).ribbons;
    expect(codesOf(just('18 in'))).toEqual([]);
    expect(just('18 in').rows.length).toBe(1);
    expect(codesOf(just('18 1/8 in'))).toContain('ribbon.noRoom');
  });
});
