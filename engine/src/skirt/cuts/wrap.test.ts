import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples, type Drafted } from '../../testing/drafts.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyWrap } from '../../testing/cuts.ts';
import type { RawRequest } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { contains, flatten, isClosed, lengthOf, selfIntersects, type Path } from '../../geometry/index.ts';
import { inches, mm } from '../../units/index.ts';
import type { EdgeName, Panel } from '../panel.ts';
import type { WrapOptions } from './wrap.ts';

const anyWrapRequest: fc.Arbitrary<RawRequest> = fc.record({
  body: anyBody,
  cut: anyWrap,
  // Without a kind a wrap's waist is a plain band, which has no elastic.
  waist: anyWaist.map((waist) => ({ kind: 'turned casing', ...waist })),
  mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
});
type Wrap = Drafted & { readonly cut: WrapOptions };
const wrapOf = (raw: RawRequest): Wrap => {
  const drafted = draftOf(raw);
  if (drafted.request.cut.kind !== 'wrap') throw new Error('not a wrap');
  return { ...drafted, cut: drafted.request.cut };
};
const wrap = (raw: RawRequest = {}): Wrap => wrapOf({ ...raw, cut: { kind: 'wrap', ...raw.cut } });
const every = samples(anyWrapRequest, wrapOf, 700);
const edgeOf = (panel: Panel | undefined, name: EdgeName): Path =>
  panel?.shape.edges.find((edge) => edge.name === name)?.finished ?? [];
const sumOf = (panels: readonly Panel[], name: EdgeName): number =>
  panels.reduce((sum, panel) => sum + lengthOf(edgeOf(panel, name)), 0);

describe('a wrap as it is sewn', () => {
  test(
    'is a back between two fronts: two seams, two faced edges, sides of one length',
    every(({ skirt: { panels, works, sideSeams } }) => {
      expect(panels.map(({ name }) => name)).toEqual(['left front', 'back', 'right front']);
      const [left, back, right] = panels;
      expect(lengthOf(edgeOf(left, 'right'))).toBeCloseTo(lengthOf(edgeOf(back, 'left')), 1);
      expect(lengthOf(edgeOf(back, 'right'))).toBeCloseTo(lengthOf(edgeOf(right, 'left')), 1);
      const turned = panels.map(({ shape }) =>
        shape.edges.filter((edge) => edge.turned && /left|right/.test(edge.name)).map((edge) => edge.name),
      );
      expect(turned).toEqual([['left'], [], ['right']]);
      expect(sideSeams).toBe(2);
      const count = (name: string) => works.find((work) => work.name === name)?.count;
      expect([count('side seam'), count('facing')]).toEqual([2, 2]);
    }),
  );

  test(
    'each panel is closed, crosses nothing, and lies inside its cloth',
    every(({ skirt: { panels }, context }) => {
      // Levels further apart than this are asked about: a slip of the tape draws what it draws.
      if (Object.values(context.body.rises).some(({ value }) => Math.abs(value) > 100)) return;
      for (const { shape } of panels) {
        const finished = shape.edges.flatMap((edge) => edge.finished);
        for (const outline of [finished, shape.trimmed, shape.cut]) {
          expect(isClosed(outline, mm(1e-4))).toBe(true);
          expect(selfIntersects(outline)).toBe(false);
        }
        expect(flatten(finished, mm(2)).every((at) => contains(shape.trimmed, at))).toBe(true);
        expect(flatten(shape.trimmed, mm(2)).every((at) => contains(shape.cut, at))).toBe(true);
      }
    }),
  );

  test(
    'goes from its one free edge round the back to the other, and beyond the centre with both',
    every(({ skirt: { panels, overlap } }) => {
      const [left, back, right] = panels;
      expect(left.around.to).toBe(back?.around.from);
      expect(back?.around).toEqual({ from: 0.25, to: 0.75 });
      expect(right?.around.from).toBe(0.75);
      expect(left.around.from).toBeCloseTo(1 - (right?.around.to ?? 0), 9);
      expect(left.around.from).toBeLessThan(0);
      expect(overlap).not.toBeNull();
    }),
  );

  test(
    'on a level body the hem hangs level: seams and free edges are as long as the centre',
    every(({ skirt, context }) => {
      if (Object.values(context.body.rises).some(({ value }) => value !== 0)) return;
      for (const panel of skirt.panels)
        for (const side of ['left', 'right'] as const)
          expect(lengthOf(edgeOf(panel, side))).toBeCloseTo(skirt.panelLength.value, 4);
    }),
  );
});

describe('overlap', () => {
  test(
    'closes to what the waist asks: the top spread flat is that and the overlap, which rounding only makes more',
    every(({ skirt, cut, context }) => {
      if (Object.values(context.body.rises).some(({ value }) => value !== 0)) return;
      const overlap = skirt.overlap?.width.value ?? NaN;
      const flat = sumOf(skirt.panels, 'waist');
      expect(flat).toBeCloseTo(skirt.opening.value, 1);
      const held = codesOf(skirt).includes('skirt.overlapHeld');
      const asked = held ? 0 : (cut.overlap ?? 0.25 * (skirt.opening.value - overlap));
      expect(overlap).toBeGreaterThanOrEqual(asked - 1e-3);
      expect(sumOf(skirt.panels, 'hem')).toBeCloseTo(skirt.hemRound.value, 1);
    }),
  );

  test('of a plain band is in the band too, and nothing is left to gather', () => {
    for (const waist of ['24 in', '29 3/8 in', '35 in', '47 1/8 in']) {
      const { skirt } = wrap({ body: { waist, hip: '48 in' } });
      expect(skirt.waist.kind).toBe('plain waistband');
      expect(skirt.waist.takenUp?.by).toBe('nothing');
      expect(skirt.waist.takenUp?.difference.value).toBeCloseTo(0, 6);
      expect(skirt.waist.closure).toBeNull();
    }
  });

  // Common practice, no source.
  test('is 8 in on an adult, a quarter of the round where that is more, and on a child a quarter', () => {
    const overlap = (body: Record<string, unknown>): number =>
      (wrap({ body }).skirt.overlap?.width.value ?? 0) / 25.4;
    expect(overlap({ waist: '29 in' })).toBeGreaterThan(8 - 1e-9);
    expect(overlap({ waist: '29 in' })).toBeLessThan(8.75);
    expect(overlap({ waist: '41 in', hip: '46 in' })).toBeGreaterThanOrEqual(10.5);
    expect(overlap({ waist: '21 in', hip: '24 in', waistToHem: '18 in', age: 7 })).toBeLessThan(6.5);
  });

  test('of more than once round is held, and told', () => {
    expect(codesOf(wrap({ cut: { overlap: '50 in' } }).skirt)).toContain('skirt.overlapHeld');
    expect(codesOf(wrap({ cut: { overlap: '20 in' } }).skirt)).not.toContain('skirt.overlapHeld');
  });

  test('covers the hips by half of itself at the least, and their ease', () => {
    for (const hip of ['36 in', '40 in', '44 in'])
      for (const overlap of ['6 in', '10 in', '16 in']) {
        const { skirt, context } = wrap({
          body: { waist: '29 in', hip, hipDepth: '8 in' },
          cut: { overlap, flare: 1, leastFlare: '0 in', hemFloor: '0 in' },
        });
        const share = (inches(8) - skirt.waist.above.value) / skirt.panelLength.value;
        const flat = skirt.opening.value + share * (skirt.hemRound.value - skirt.opening.value);
        expect(flat).toBeGreaterThanOrEqual(
          context.body.hip.value + inches(2) + inches(parseFloat(overlap)) / 2 - 0.01,
        );
      }
  });
});

describe('in a step', () => {
  const narrow = { body: { height: '5 ft 4 in' }, cut: { hemRound: '56 in', hemFloor: '0 in' } };

  test('a hem as wide as the step, or more, stays closed: the usual one always does', () => {
    expect(codesOf(wrap({ body: { height: '5 ft 4 in' } }).skirt)).not.toContain('skirt.overlapOpens');
    expect(codesOf(wrap(narrow).skirt)).toContain('skirt.overlapOpens');
  });

  test(
    'it is told of exactly where the step opens the hem by more than what lies over one another there',
    every(({ skirt, context }) => {
      const need = context.stride.everyday?.value ?? 0;
      expect(codesOf(skirt).includes('skirt.overlapOpens')).toBe(skirt.hemRound.value < need);
      const notice = skirt.notices.find(({ code }) => code === 'skirt.overlapOpens');
      if (!notice) return;
      const { opens, overlap } = notice.params;
      if (typeof opens !== 'object' || typeof overlap !== 'object') throw new Error('no figures');
      expect(opens.value).toBeGreaterThan(overlap.value);
      expect(skirt.hemRound.value - overlap.value + opens.value).toBeCloseTo(need, 6);
    }),
  );

  test('the overlap and the hem that are told would each do', () => {
    const { skirt } = wrap(narrow);
    const notice = skirt.notices.find(({ code }) => code === 'skirt.overlapOpens');
    const { more, wider } = notice?.params ?? {};
    if (typeof more !== 'object' || typeof wider !== 'object') throw new Error('no remedy');
    const hemOf = (cut: Record<string, unknown>) =>
      codesOf(wrap({ ...narrow, cut: { ...narrow.cut, ...cut } }).skirt);
    expect(hemOf({ hemRound: `${String(wider.value)} mm` })).not.toContain('skirt.overlapOpens');
    // The same flare: the hem grows as the top does.
    const grown =
      (skirt.hemRound.value / skirt.opening.value) *
      (skirt.opening.value - (skirt.overlap?.width.value ?? 0) + more.value);
    expect(
      hemOf({ overlap: `${String(more.value)} mm`, hemRound: `${String(grown + 0.01)} mm` }),
    ).not.toContain('skirt.overlapOpens');
  });
});

describe('ties', () => {
  const ties = (cut = {}) => wrap({ cut }).skirt.parts.filter(({ name }) => name === 'tie');

  test('two, round the waist and 15 in for the bow, both ends turned; twice as wide as they finish, and seams', () => {
    const [tie] = ties();
    const [width, length] = tie?.measures ?? [];
    // 29 + 15 in of tie do not lie across 44 in cloth: each is joined once.
    expect(tie?.count).toBe(4);
    expect(length?.value).toBeCloseTo(inches(22.5), 6);
    expect(width?.value).toBeCloseTo(inches(2.5), 6);
  });

  test('a length of the maker’s own is kept', () => {
    const [tie] = ties({ tieLength: '30 in' });
    expect(tie?.count).toBe(2);
    expect(tie?.measures[1]?.value).toBeCloseTo(inches(30.5), 6);
  });

  test('none where it buttons', () => {
    expect(ties({ closes: 'buttons' })).toEqual([]);
    expect(wrap({ cut: { closes: 'buttons' } }).skirt.overlap?.closes).toBe('buttons');
  });
});

test('a hem of the maker’s own is kept, or as wide as covers the hips', () => {
  expect(wrap({ cut: { hemRound: '100 in' } }).skirt.hemRound.value).toBeGreaterThanOrEqual(inches(100));
  const { skirt } = wrap({ cut: { hemRound: '30 in' } });
  expect(codesOf(skirt)).toContain('skirt.hemRoundWidened');
  expect(skirt.hemRound.value).toBeGreaterThanOrEqual(skirt.opening.value);
});

test('an elastic waist, which goes round, is told of', () => {
  expect(codesOf(wrap({ waist: { kind: 'turned casing' } }).skirt)).toContain('waist.needsRound');
});

test('the faced edge runs from raw top to raw hem, and its cloth is turned under too', () => {
  const { skirt } = wrap();
  const facing = skirt.works.find(({ name }) => name === 'facing');
  expect(facing?.each.value).toBeCloseTo(
    skirt.panelLength.value + skirt.waist.topAllowance.value + inches(0.75),
    4,
  );
  const [left] = skirt.panels;
  expect(left.shape.edges.find(({ name }) => name === 'left')?.allowance).toBeCloseTo(inches(1.25), 6);
});
