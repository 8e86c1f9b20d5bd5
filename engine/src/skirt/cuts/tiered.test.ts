import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, lengthOf, selfIntersects } from '../../geometry/index.ts';
import { codesOf, draftOf, samples, type Drafted } from '../../testing/drafts.ts';
import { referenceArea } from '../../testing/reference.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyCloth } from '../../testing/cloths.ts';
import { anyTiered } from '../../testing/cuts.ts';
import type { RawRequest } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';
import type { Panel, Round } from '../index.ts';
import { waistOf } from '../waists/index.ts';
import { tiered, type TieredOptions } from './tiered.ts';

const anyTieredRequest: fc.Arbitrary<RawRequest> = fc.record({
  body: anyBody,
  cut: anyTiered,
  waist: anyWaist,
  cloth: anyCloth,
  mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
});

const tieredOf = (raw: RawRequest): Drafted & { readonly cut: TieredOptions } => {
  const drafted = draftOf(raw);
  if (drafted.request.cut.kind !== 'tiered') throw new Error('not a tiered cut');
  return { ...drafted, cut: drafted.request.cut };
};
const every = samples(anyTieredRequest, tieredOf, 500);
/** What the waist asks of the panels. */
const needOf = ({ context, request }: Pick<Drafted, 'context' | 'request'>) =>
  waistOf(request.waist).top({ ...context, inTucks: null, inHem: null }, request.waist);
const lengthsOf = ({ panels }: Round, name: string): number[] =>
  panels.map(({ shape }) => lengthOf(shape.edges.find((edge) => edge.name === name)?.finished ?? []));
const sum = (lengths: readonly number[]): number => lengths.reduce((all, each) => all + each, 0);
const widthOf = ({ shape }: Panel): number => {
  const xs = shape.trimmed.flatMap((each) => (each.kind === 'line' ? [each.from.x, each.to.x] : []));
  return Math.max(...xs) - Math.min(...xs);
};
const isAtMark = (value: number, mark: number): boolean =>
  Math.abs(value / mark - Math.round(value / mark)) < 1e-6;

const adult = { waist: '29 in', hip: '36 in', waistToHem: '33 in' };
const drawn = (cut: Record<string, unknown> = {}, more: RawRequest = {}) =>
  draftOf({
    body: adult,
    cloth: { width: '44 in', selvage: '0 in', washed: true },
    ...more,
    cut: { kind: 'tiered', ...cut },
  }).skirt;

describe('heights of the tiers', () => {
  test(
    'add up to the length exactly, each hung from the one before',
    every(({ skirt, cut }) => {
      expect(skirt.rounds.length).toBe(cut.tiers);
      expect(sum(skirt.rounds.map(({ length }) => length))).toBeCloseTo(skirt.panelLength.value, 6);
      let above = 0;
      for (const { length, fromHem } of skirt.rounds) {
        above += length;
        expect(length).toBeGreaterThan(0);
        expect(fromHem).toBeCloseTo(skirt.panelLength.value - above, 6);
      }
      expect(skirt.rounds.at(-1)?.fromHem).toBe(0);
    }),
  );

  test(
    'are those asked for, and seams lie at marks counted from the hem',
    every(({ skirt, cut, context }) => {
      const shares = Array.from({ length: cut.tiers }, (_, i) => cut.shares?.[i] ?? 1);
      const lowestAsked = (skirt.panelLength.value * Math.min(...shares)) / sum(shares);
      skirt.rounds.forEach(({ length, fromHem }, i) => {
        const asked = (skirt.panelLength.value * (shares[i] ?? 1)) / sum(shares);
        expect(Math.abs(length - asked)).toBeLessThanOrEqual(context.mark + 1e-6);
        if (lowestAsked > context.mark) expect(isAtMark(fromHem, context.mark)).toBe(true);
      });
    }),
  );

  test('33 in is three tiers of 11 in', () => {
    for (const { length } of drawn().rounds) expect(length).toBeCloseTo(inches(11), 9);
  });

  test('31 in is 10⅜, 10¼ and 10⅜ in: seams at the nearest ⅛ in', () => {
    const { rounds } = drawn({}, { body: { ...adult, waistToHem: '31 in' } });
    [10.375, 10.25, 10.375].forEach((height, i) => {
      expect(rounds[i]?.length).toBeCloseTo(inches(height), 9);
    });
  });

  test('in shares 1, 1 and 2 of 32 in they are 8, 8 and 16 in', () => {
    const { rounds } = drawn({ shares: [1, 1, 2] }, { body: { ...adult, waistToHem: '32 in' } });
    [8, 8, 16].forEach((height, i) => {
      expect(rounds[i]?.length).toBeCloseTo(inches(height), 9);
    });
  });

  test('a tier of a doll’s skirt lower than a mark is not rounded away', () => {
    const { rounds } = drawn(
      { tiers: 5, shares: [1, 5, 5, 5, 5] },
      { mark: '1/4 in', body: { waist: '10 in', hip: '12 in', waistToHem: '4 in', age: 2 } },
    );
    for (const { length } of rounds) expect(length).toBeGreaterThan(0);
  });
});

describe('strips', () => {
  test(
    'of one tier are alike, cut to a mark, and no wider than the cloth',
    every(({ skirt, context }) => {
      for (const { panels } of skirt.rounds) {
        const [width = 0, ...others] = panels.map(widthOf);
        for (const other of others) expect(other).toBeCloseTo(width, 6);
        expect(width).toBeLessThanOrEqual(context.clothWidth.value + 1e-6);
        if (width < context.clothWidth.value - 1e-6) expect(isAtMark(width, context.mark)).toBe(true);
      }
    }),
  );

  test(
    'are as many as the round needs of this cloth, and not one more',
    every((drafted) => {
      const { skirt, context, cut } = drafted;
      if (codesOf(skirt).includes('skirt.tooManyStrips')) return;
      const usable = context.clothWidth.value - 2 * cut.sideSeam;
      for (const [i, { panels, seams }] of skirt.rounds.entries()) {
        expect(seams).toBe(panels.length);
        const round = roundAsked(i, drafted);
        if (round === null) continue;
        expect(panels.length * usable).toBeGreaterThanOrEqual(round - 0.01);
        if (panels.length > 1) expect((panels.length - 1) * usable).toBeLessThan(round + 0.01);
      }
    }),
  );

  test(
    'are numbered through, and go once round the body in every tier',
    every(({ skirt }) => {
      expect(skirt.panels.map(({ number }) => number)).toEqual(skirt.panels.map((_, i) => i + 1));
      expect(skirt.panels).toEqual(skirt.rounds.flatMap(({ panels }) => panels));
      for (const { panels } of skirt.rounds)
        expect(sum(panels.map(({ around }) => around.to - around.from))).toBeCloseTo(1, 9);
    }),
  );

  test(
    'join with sides alike, to a tenth of a millimetre, and never cross themselves',
    every(({ skirt }) => {
      for (const [i, round] of skirt.rounds.entries()) {
        const [left, right] = [lengthsOf(round, 'left'), lengthsOf(round, 'right')];
        right.forEach((side, at) => {
          expect(Math.abs(side - (left[(at + 1) % left.length] ?? NaN))).toBeLessThan(0.1);
          if (i > 0) expect(Math.abs(side - round.length)).toBeLessThan(0.1);
        });
        for (const { shape } of round.panels) {
          expect(selfIntersects(shape.cut)).toBe(false);
          expect(selfIntersects(shape.edges.flatMap(({ finished }) => finished))).toBe(false);
        }
      }
    }),
  );

  test(
    'add up to the cloth of their rounds, by two geometries',
    every(({ skirt, context }) => {
      if (Object.values(context.body.rises).some(({ value }) => value !== 0)) return;
      const first = skirt.panels[0].shape;
      const closed = sum(
        skirt.rounds.map(({ panels, length }) => {
          const { topAllowance, hemAllowance } = panels[0].shape;
          return panels.length * widthOf(panels[0]) * (length + topAllowance + hemAllowance);
        }),
      );
      expect(sum(skirt.panels.map(({ shape }) => areaOf(shape.trimmed))) / closed).toBeCloseTo(1, 9);
      expect(referenceArea(first.trimmed) / areaOf(first.trimmed)).toBeCloseTo(1, 9);
    }),
  );

  test('of the usual skirt: 2, 2 and 3 of 44 in cloth', () => {
    // 36 in × 1¼ = 45 in, × 1½ = 67½ in, × 1½ = 101¼ in; each strip gives 43½ in.
    expect(drawn().rounds.map(({ panels }) => panels.length)).toEqual([2, 2, 3]);
  });

  test('more than twenty in a tier are not drawn, and it is told of', () => {
    const skirt = drawn({ tiers: 5, ratios: [3, 3, 3, 3] }, { cloth: { width: '36 in', washed: true } });
    expect(codesOf(skirt)).toContain('skirt.tooManyStrips');
    expect(Math.max(...skirt.rounds.map(({ panels }) => panels.length))).toBe(20);
  });
});

/** What a tier was to measure: from the fullness at the top, from the tier above elsewhere. Null where ratios were ours to widen. */
function roundAsked(i: number, drafted: ReturnType<typeof tieredOf>): number | null {
  const { skirt, context, cut } = drafted;
  if (i === 0) return Math.max(context.body.widest.value * cut.fullness, needOf(drafted).round.value);
  if (!cut.ratios) return null;
  return (skirt.rounds[i - 1]?.bottom.value ?? NaN) * (cut.ratios[i - 1] ?? 1.5);
}

describe('rounds', () => {
  test(
    'measure what their strips measure, sewn; edges that are sewn together are those of neighbours',
    every(({ skirt }) => {
      const [first, ...lower] = skirt.rounds;
      for (const round of lower) {
        expect(sum(lengthsOf(round, 'waist'))).toBeCloseTo(round.top.value, 4);
        expect(sum(lengthsOf(round, 'hem'))).toBeCloseTo(round.bottom.value, 4);
      }
      expect(sum(lengthsOf(first, 'hem'))).toBeCloseTo(first.bottom.value, 4);
      expect(skirt.hemRound.value).toBeCloseTo(skirt.rounds.at(-1)?.bottom.value ?? NaN, 4);
    }),
  );

  test(
    'are as full as asked, at least, and less than a mark for each strip more',
    every((drafted) => {
      const { skirt, context } = drafted;
      if (codesOf(skirt).includes('skirt.tooManyStrips')) return;
      skirt.rounds.forEach(({ top, seams }, i) => {
        const asked = roundAsked(i, drafted);
        if (asked === null) return;
        expect(top.value).toBeGreaterThanOrEqual(asked - 0.01);
        expect(top.value).toBeLessThan(asked + seams * context.mark + 0.01);
      });
    }),
  );

  test(
    'of ratios that are ours give the lowest room to walk, unless that took more than three times the tier above',
    every(({ skirt, context, cut }) => {
      if (cut.ratios || codesOf(skirt).includes('skirt.tooManyStrips')) return;
      const { stride, body } = context;
      const need = Math.max(
        stride.checked || !body.adult ? stride.needed.value : 0,
        body.adult ? 4 * cut.hemFloor : 0,
      );
      const most = skirt.rounds[0].top.value * 3 ** (cut.tiers - 1);
      expect(skirt.hemRound.value).toBeGreaterThanOrEqual(Math.min(need, most) - 0.01);
      skirt.rounds.slice(1).forEach(({ top }, i) => {
        expect(top.value / (skirt.rounds[i]?.bottom.value ?? NaN)).toBeGreaterThanOrEqual(1.5 - 1e-6);
      });
    }),
  );

  test('two flat tiers on a long skirt are widened for a step; ratios of the maker’s own are kept, and she is told', () => {
    const tall = { body: { ...adult, waistToHem: '38 in', height: '70 in', waistToFloor: '42 in' } };
    const cut = { tiers: 2, fullness: 1, hemFloor: '0 in' };
    const ours = drawn(cut, tall);
    const hers = drawn({ ...cut, ratios: [1] }, tall);
    expect(ours.hemRound.value).toBeGreaterThan(hers.hemRound.value);
    expect(codesOf(ours).filter((code) => code.startsWith('skirt.hem'))).toEqual([]);
    expect(codesOf(hers).some((code) => code.startsWith('skirt.hem'))).toBe(true);
  });

  // Common practice, no source.
  test('a seam of heavy cloth bunches past twice the tier above, of medium past 2½, of light it takes 3', () => {
    const bunched = (weight: string, ratio: number) =>
      codesOf(drawn({ ratios: [ratio, 1] }, { cloth: { width: '60 in', washed: true, weight } })).includes(
        'skirt.tierBunched',
      );
    expect([bunched('heavy', 2), bunched('heavy', 2.1)]).toEqual([false, true]);
    expect([bunched('medium', 2.5), bunched('medium', 2.6)]).toEqual([false, true]);
    expect(bunched('light', 3)).toBe(false);
  });

  test('lists of another length than the tiers are filled in or cut off, and told of', () => {
    const skirt = drawn({ tiers: 3, ratios: [2], shares: [1, 1, 1, 5] });
    expect(codesOf(skirt).filter((code) => code === 'skirt.tierList')).toHaveLength(2);
    expect(skirt.rounds.length).toBe(3);
    expect(codesOf(drawn({ tiers: 3, ratios: [2, 2], shares: [1, 1, 1] }))).not.toContain('skirt.tierList');
  });
});

describe('edges', () => {
  test(
    'are turned at the waist as it asks and at the hem, and seams between tiers',
    every((drafted) => {
      const { skirt, cut } = drafted;
      const { turned, allowance } = needOf(drafted);
      skirt.rounds.forEach(({ panels }, i) => {
        const [waist, , hem] = panels[0].shape.edges;
        const isLast = i === skirt.rounds.length - 1;
        if (i > 0) expect(waist).toMatchObject({ turned: false, allowance: cut.tierSeam });
        else expect(waist).toMatchObject({ turned, allowance: allowance.value });
        expect(hem).toMatchObject({ turned: isLast, allowance: isLast ? cut.hem : cut.tierSeam });
      });
    }),
  );

  test(
    'that meet have a mark at each quarter: a notch, or a seam, at the same turn round the body',
    every(({ skirt }) => {
      const marked = ({ panels, top }: Round, inward: 1 | -1): number[] => {
        const notches = panels.flatMap(({ shape, around }) =>
          shape.notches
            .filter((notch) => notch.inward.y === inward)
            .map(({ at }) => (around.from + around.to) / 2 + at.x / top.value),
        );
        const seams = panels.map(({ around }) => around.to);
        return [...notches, ...seams].map((turn) => ((turn % 1) + 1) % 1);
      };
      const has = (turns: readonly number[], turn: number, slack: number): boolean =>
        turns.some((each) => Math.min(Math.abs(each - turn), 1 - Math.abs(each - turn)) < slack);
      skirt.rounds.forEach((round, i) => {
        const slack = 2.01 / round.top.value;
        for (const turn of [0, 0.25, 0.5, 0.75]) {
          expect(has(marked(round, 1), turn, slack)).toBe(true);
          if (i < skirt.rounds.length - 1) expect(has(marked(round, -1), turn, slack)).toBe(true);
        }
      });
    }),
  );

  test('a hem that is turned up has no notch; the back has two lines', () => {
    const { rounds } = drawn({ tiers: 2 });
    const lowest = rounds.at(-1)?.panels ?? [];
    for (const { shape } of lowest)
      for (const { at, inward } of shape.notches) {
        expect(at.y).toBeLessThan(0);
        expect(inward.y).toBe(1);
      }
    const back = rounds[0].panels.flatMap(({ shape }) => shape.notches).filter(({ lines }) => lines === 2);
    expect(back.length).toBe(2);
  });
});

describe('what is sewn', () => {
  test(
    'joins of every tier, a seam as long as the tier above, and two gathering rows where a tier is fuller than that',
    every((drafted) => {
      const { rounds, works } = tiered.draft(
        { ...drafted.context, inTucks: null, inHem: null },
        drafted.cut,
        needOf(drafted),
      );
      const named = (name: string) => works.filter((work) => work.name === name);
      expect(named('strip join').map(({ count }) => count)).toEqual(rounds.map(({ seams }) => seams));
      expect(named('gathering rows').map(({ each, count }) => [each.value, count])).toEqual(
        rounds
          .slice(1)
          .filter(({ top }, i) => top.value / (rounds[i]?.bottom.value ?? NaN) > 1.02)
          .map(({ top }) => [top.value, 2]),
      );
      expect(named('tier seam').map(({ each }) => each.value)).toEqual(
        rounds.slice(0, -1).map(({ bottom }) => bottom.value),
      );
    }),
  );

  test(
    'takes lengths that add up: one strip of each tier',
    every(({ skirt, cut, context }) => {
      const exact =
        skirt.panelLength.value +
        skirt.waist.topAllowance.value +
        cut.hem +
        2 * (cut.tiers - 1) * cut.tierSeam +
        cut.tiers * cut.margin;
      const { value } = skirt.marks.cutLength;
      expect(value).toBeGreaterThanOrEqual(exact - 1e-4);
      expect(value).toBeLessThan(exact + cut.tiers * context.mark);
    }),
  );

  test('strips are cut by measure, piece by piece', () => {
    expect(drawn().marking).toBe('by piece');
  });
});
