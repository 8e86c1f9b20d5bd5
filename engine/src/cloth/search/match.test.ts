import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../geometry/index.ts';
import { planOf, type RawRequest } from '../../testing/requests.ts';
import type { FoundCloth, Wanted } from '../job/found.ts';
import type { LayKind } from '../options.ts';
import { stripedFold } from './linesOn.ts';
import { apart, MEETS } from './match.ts';
import { seamMeets } from './meets.ts';
import { searchCloth } from './search.ts';
import { faultsOf } from './testing/faults.ts';
import { clothJobOf, wantedOf } from '../job/wanted.ts';

interface Laid {
  readonly found: FoundCloth;
  readonly wanted: Wanted;
}

function laidOn(pattern: object, raw: RawRequest, way: LayKind = 'open'): Laid {
  const plan = planOf({ ...raw, cloth: { width: '150 cm', ...raw.cloth, pattern } });
  const wanted = wantedOf(plan.skirt, [], 'own');
  if (!wanted) throw new Error('nothing is cut');
  const job = clothJobOf(plan.request.cloth, [wanted]);
  const found = searchCloth(job, way, { seed: 1, evaluations: 1000 });
  if (found.fits) expect(faultsOf(found, job)).toEqual([]);
  return { found, wanted };
}

const patterns = {
  stripes: { across: '4 cm' },
  bands: { along: '7 cm' },
  checks: { across: '3 cm', along: '5 cm', at: { along: '1 cm', across: '2 cm' } },
};
const cuts: Readonly<Record<string, RawRequest>> = {
  'a flared skirt': {},
  'a curved one': { cut: { kind: 'flared', hemline: 'level' } },
  'six gores': { cut: { kind: 'gored' } },
  'eight gores': { cut: { kind: 'gored', gores: 8 } },
  'a body that is longer behind': {
    body: { levels: { front: '100 cm', back: '104 cm' } },
    cut: { kind: 'gored' },
  },
  tiers: { cut: { kind: 'tiered' } },
};
const cases = Object.entries(patterns).flatMap(([name, pattern]) =>
  Object.entries(cuts).map(([cut, raw]) => ({ name, pattern, cut, raw })),
);

describe('a pattern that has to meet', () => {
  test.each(cases)('$name on $cut: within a millimetre at every seam, as drawn', ({ pattern, raw }) => {
    const { found, wanted } = laidOn(pattern, raw);
    expect(found.fits).toBe(true);
    const meets = seamMeets(found, [wanted]);
    // Laid on another thread, or kept, its panels are copies.
    expect(seamMeets(structuredClone(found), [wanted])).toEqual(meets);
    expect(meets.length).toBe(wanted.seams.length);
    const off = meets.filter((each) => !each.meets);
    const told = found.notices.filter(({ code }) => code === 'cloth.seamNotMatched');
    expect(told.length).toBe(off.length);
    expect(off.map(({ seam }) => `${seam.before.name} ${String(seam.before.number)}`)).toEqual([]);
  });

  test('left to fall as it does, it is off somewhere', () => {
    const { found, wanted } = laidOn(
      { across: '13 cm', along: '17 cm', match: false },
      cuts['eight gores'] ?? {},
    );
    expect(seamMeets(found, [wanted]).some(({ off }) => off.value > MEETS)).toBe(true);
    expect(found.notices).toEqual([]);
  });

  test('whole widths have their stripes where the cloth has them: seams at which that is off are told', () => {
    const { found } = laidOn({ across: '4 cm' }, { cut: { kind: 'gathered', widths: 2 } });
    expect(found.fits).toBe(true);
    expect(found.notices.map(({ code }) => code)).toContain('cloth.seamNotMatched');
  });

  test.each(Object.entries(patterns))('%s are not folded in four', (_, pattern) => {
    const { found } = laidOn(pattern, {}, 'double fold');
    expect(found.fits).toBe(false);
    expect(found.notices.map(({ code }) => code)).toEqual(['cloth.matchInOneLayer']);
  });
});

const folds = ['lengthwise fold', 'crosswise fold'] as const;
/** Their gores make no pairs: of bodies that are longer behind, or of tiers, some panel is alone. */
const alone = ['a body that is longer behind', 'tiers'];

describe('a pattern that has to meet, folded once', () => {
  test.each(cases.flatMap((each) => folds.map((way) => ({ ...each, way }))))(
    '$name on $cut, $way: it meets as in one layer, as drawn',
    ({ pattern, cut, raw, way }) => {
      const { found, wanted } = laidOn(pattern, raw, way);
      if (way === 'crosswise fold' && alone.includes(cut)) {
        expect(found.notices.map(({ code }) => code)).toEqual(['cloth.matchInOneLayer']);
        return;
      }
      expect(found.fits).toBe(true);
      expect(found.tables[0]?.layers).toBe(2);
      const meets = seamMeets(found, [wanted]);
      expect(meets.length).toBe(wanted.seams.length);
      for (const { off } of meets) expect(off.value).toBeLessThanOrEqual(MEETS);
      expect(found.notices.filter(({ code }) => code === 'cloth.seamNotMatched')).toEqual([]);
    },
  );

  test('the fold along stripes lies on one or midway, as near to the middle as that can be', () => {
    for (const at of ['0 cm', '1 cm', '1.7 cm', '3.9 cm']) {
      const { found } = laidOn({ across: '4 cm', at: { across: at } }, {}, 'lengthwise fold');
      const [table] = found.tables;
      const { pattern, usable, selvage } = found.fabric;
      if (!table || !pattern?.across) throw new Error(at);
      // Opened out, what was cut through the lower layer lies on stripes that are as far from the selvage as any.
      expect(apart(2 * (table.across - pattern.at.across), pattern.across)).toBeLessThan(0.01);
      const spare = usable.value + 2 * selvage.value - 2 * table.across;
      expect(spare).toBeGreaterThan(-0.01);
      expect(spare).toBeLessThan(2 * pattern.across);
      expect(stripedFold(table, found.fabric)?.beyond).toBeCloseTo(spare, 1);
    }
  });

  test('of a lower layer that reaches far out what is worth keeping is told; there one selvage lies at the edge', () => {
    for (const [across, from, cut] of [
      ['50 cm', '10 cm', {}],
      ['30 cm', '0 cm', { kind: 'gored', gores: 8 }],
      ['4 cm', '0 cm', {}],
    ] as const) {
      const { found } = laidOn({ across, at: { across: from } }, { cut }, 'lengthwise fold');
      const [table] = found.tables;
      const fold = table && stripedFold(table, found.fabric);
      if (!table || !fold) throw new Error(across);
      expect(fold.beyond >= 100).toBe(across !== '4 cm');
      // What is left along all of the upper selvage is one piece with it on the lower layer.
      const along = across === '50 cm' ? (table.leftOver?.opened.across ?? NaN) : 0;
      expect(table.beneath).toEqual(
        across === '4 cm' ? null : { opened: { along: table.along, across: fold.beyond + along }, count: 1 },
      );
      if (across === '50 cm') expect(table.leftOver).toMatchObject({ along: table.along, count: 1 });
      expect(table.top).toBe(fold.beyond > 0 ? 'selvage' : 'selvages');
    }
  });

  test.each([
    ['50 cm', '10 cm'],
    ['40 cm', '2 cm'],
  ])(
    'wide stripes, %s from %s: a strip too long for the fold is cut in one layer, and the fold lies where most finds room',
    (across, from) => {
      const raw: RawRequest = {
        cut: { kind: 'gored', gores: 8 },
        body: { waist: '72 cm', hip: '92 cm', waistToHem: '70 cm' },
        cloth: { width: '60 in' },
      };
      const { found } = laidOn({ across, at: { across: from } }, raw, 'lengthwise fold');
      expect(found.notices.filter(({ level }) => level === 'problem')).toEqual([]);
      expect(found.fits).toBe(true);
      const single = found.tables.filter(({ layers }) => layers === 1).flatMap(({ pieces }) => pieces);
      expect(single.length).toBeGreaterThan(0);
      expect(single.flatMap(({ panels }) => panels)).toEqual([]);
    },
  );

  test('a panel too wide to reach from its selvage to the fold is no larger than the cloth: it is laid open', () => {
    const raw: RawRequest = { cut: { kind: 'flared' }, cloth: { width: '60 in' } };
    const { found } = laidOn({ across: '40 cm', at: { across: '2 cm' } }, raw, 'lengthwise fold');
    expect(found.notices.map(({ code }) => code)).toEqual(['cloth.matchInOneLayer']);
  });

  test('a panel with its middle on the fold has the line there that it asks for', () => {
    const { found } = laidOn({ across: '4 cm' }, {}, 'lengthwise fold');
    const [table] = found.tables;
    const onFold = table?.pieces.filter((piece) => piece.onFold && piece.panels.length > 0) ?? [];
    expect(onFold.length).toBeGreaterThan(0);
    expect(table && stripedFold(table, found.fabric)?.on).toBe('line');
  });

  test('where two that are cut at once ask for stripes at different places they are cut in one layer', () => {
    const { found } = laidOn(patterns.stripes, { cut: { kind: 'gathered' } }, 'crosswise fold');
    expect(found.notices.map(({ code }) => code)).toEqual(['cloth.matchInOneLayer']);
  });

  test('on lengths of several widths each is folded where its own stripes fall on themselves', () => {
    const raw: RawRequest = {
      cut: { kind: 'gored', gores: 8 },
      cloth: {
        width: '150 cm',
        bolt: false,
        lengths: [
          { length: '95 cm', width: '113 cm' },
          { length: '3 m', width: '139 cm' },
        ],
      },
    };
    const { found, wanted } = laidOn({ across: '4 cm', at: { across: '1 cm' } }, raw, 'lengthwise fold');
    expect(found.fits).toBe(true);
    const folded = found.tables.filter(({ bottom }) => bottom === 'fold');
    expect(folded.length).toBe(2);
    const { pattern } = found.fabric;
    for (const { across } of folded)
      expect(apart(2 * (across - (pattern?.at.across ?? NaN)), pattern?.across ?? NaN)).toBeLessThan(0.01);
    for (const { off } of seamMeets(found, [wanted])) expect(off.value).toBeLessThanOrEqual(MEETS);
    expect(seamMeets(found, [wanted])).toHaveLength(8);
  });

  test('two panels on the fold have their hems on the same place of a repeat', () => {
    // Read off the drawing by itself: both halves' ends.
    const { found } = laidOn({ along: '7 cm' }, { cut: { kind: 'flared' } }, 'lengthwise fold');
    const boxes = found.tables
      .flatMap(({ pieces }) => pieces)
      .filter(({ panels }) => panels.length > 0)
      .map((piece) => ({ ...boundsOf(piece.outline), many: piece.panels.length }));
    expect(boxes.reduce((sum, { many }) => sum + many, 0)).toBe(2);
    const [a = NaN, b = NaN, c = NaN, d = NaN] = boxes.flatMap(({ left, right }) => [left, right]);
    // It shrinks as the cloth does.
    const repeat = found.fabric.pattern?.along ?? NaN;
    expect(repeat).toBeCloseTo(70 * 0.95, 6);
    const isSame = (one: number, other: number): boolean => apart(one - other, repeat) < MEETS;
    expect(boxes).toHaveLength(2);
    // Both the same way up, or head to tail.
    expect(isSame(a, c) || isSame(a, -d) || isSame(b, -c)).toBe(true);
  });

  test('of a panel that makes no pair and has no fold they are cut in one layer', () => {
    const raw: RawRequest = {
      body: { levels: { front: '100 cm', back: '104 cm' } },
      cut: { kind: 'wrap' },
    };
    const { found } = laidOn(patterns.bands, raw, 'lengthwise fold');
    expect(found.notices.map(({ code }) => code)).toEqual(['cloth.matchInOneLayer']);
  });

  test('a class takes the fold where it is bought less of, and only where they meet', () => {
    const { found, wanted } = laidOn(patterns.bands, { cut: { kind: 'gored', gores: 8 } }, 'lengthwise fold');
    expect(found.fits).toBe(true);
    expect(found.tables[0]?.layers).toBe(2);
    expect(seamMeets(found, [wanted]).length).toBe(8);
  });
});

test('a pattern of which nothing repeats is none: nothing has to meet, and in four it is folded as plain cloth is', () => {
  const { found } = laidOn({}, {}, 'double fold');
  expect(found.fabric.pattern).toBeNull();
  expect(found.fits).toBe(true);
  const { notices } = planOf({ cloth: { width: '150 cm', pattern: {} } });
  expect(notices.map(({ notice }) => notice.code)).not.toContain('cloth.laidByHand');
});
