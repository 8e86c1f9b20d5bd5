import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, ofLevelBody, samples, type Drafted } from '../../testing/drafts.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyGored } from '../../testing/cuts.ts';
import type { RawRequest } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import {
  areaOf,
  contains,
  flatten,
  isClosed,
  lengthOf,
  selfIntersects,
  type Path,
} from '../../geometry/index.ts';
import { inches, mm, type Mm } from '../../units/index.ts';
import type { EdgeName, Panel } from '../panel.ts';
import type { GoredOptions } from './gored.ts';

const marks = fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm');
const anyGoredRequest: fc.Arbitrary<RawRequest> = fc.record({
  body: anyBody,
  cut: anyGored,
  waist: anyWaist,
  mark: marks,
});

type Gored = Drafted & { readonly cut: GoredOptions; readonly opens: boolean };
const goredOf = (raw: RawRequest): Gored => {
  const drafted = draftOf(raw);
  const { cut, waist } = drafted.request;
  if (cut.kind !== 'gored') throw new Error('not a gored cut');
  return { ...drafted, cut, opens: waist.kind === 'plain waistband' };
};
const every = samples(anyGoredRequest, goredOf, 700);
/** Bodies whose waist lies level, so that every top is as long as it was chalked. */
const level = samples(anyGoredRequest.map(ofLevelBody), goredOf, 500);
const edgeOf = ({ shape }: Panel, name: EdgeName): Path =>
  shape.edges.find((edge) => edge.name === name)?.finished ?? [];
const sumOf = (panels: readonly Panel[], name: EdgeName): number =>
  panels.reduce((sum, panel) => sum + lengthOf(edgeOf(panel, name)), 0);
const plainBand = { kind: 'plain waistband' };

describe('gores as they are sewn', () => {
  test(
    'side by side, their seams are of one length to a tenth of a millimetre, all the way round',
    every(({ skirt: { panels } }) => {
      for (const [i, panel] of panels.entries()) {
        const next = panels[(i + 1) % panels.length] ?? panel;
        expect(lengthOf(edgeOf(panel, 'right'))).toBeCloseTo(lengthOf(edgeOf(next, 'left')), 1);
      }
    }),
  );

  test(
    'they go once round, the first in the middle of the front and one in the middle of the back',
    every(({ skirt: { panels }, cut }) => {
      expect(panels).toHaveLength(cut.gores);
      const [first] = panels;
      expect(first.around.from).toBeCloseTo(-first.around.to, 9);
      for (const [i, { around }] of panels.entries())
        expect(around.from).toBeCloseTo(panels[i - 1]?.around.to ?? first.around.from, 9);
      expect((panels.at(-1) ?? first).around.to - first.around.from).toBeCloseTo(1, 9);
      const back = panels[cut.gores / 2];
      expect(((back?.around.from ?? 0) + (back?.around.to ?? 0)) / 2).toBeCloseTo(0.5, 9);
    }),
  );

  const lieInTheirCloth = ({ skirt: { panels } }: Drafted): void => {
    for (const { shape } of panels) {
      const finished = shape.edges.flatMap((edge) => edge.finished);
      for (const outline of [finished, shape.trimmed, shape.cut]) {
        expect(isClosed(outline, mm(1e-4))).toBe(true);
        expect(selfIntersects(outline)).toBe(false);
      }
      expect(flatten(finished, mm(2)).every((at) => contains(shape.trimmed, at))).toBe(true);
      expect(flatten(shape.trimmed, mm(2)).every((at) => contains(shape.cut, at))).toBe(true);
    }
  };

  test('each is closed, crosses nothing, and lies inside its cloth', level(lieInTheirCloth));

  // Of a toy's skirt that flares to a circle and rises like a roof not all of the allowance is left.
  test('so does each whose top rises and dips, on bodies that sit, expect, or differ by 2 in from side to side', () => {
    const bodies = [
      { wears: 'seated' },
      { wears: 'expecting' },
      { waistToFloor: '40 in', levels: { front: '39 in', back: '41 in', left: '41 in', right: '39 in' } },
    ];
    const girths = [
      ['24 in', '34 in'],
      ['30 in', '46 in'],
      ['44 in', '50 in'],
    ];
    const cuts = [4, 6, 10].flatMap((gores) => [0.7, 1, 2].map((front) => ({ kind: 'gored', gores, front })));
    for (const body of bodies)
      for (const [waist, hip] of girths)
        for (const cut of cuts)
          for (const kind of ['turned casing', 'plain waistband'])
            lieInTheirCloth(draftOf({ body: { ...body, waist, hip }, cut, waist: { kind } }));
  });

  test(
    'there are as many gore seams as gores, and their notches tell front from back and up from down',
    every(({ skirt: { panels, works }, cut }) => {
      expect(works).toMatchObject([{ name: 'gore seam', count: cut.gores }, ...works.slice(1)]);
      for (const [i, { shape }] of panels.entries()) {
        const next = panels[(i + 1) % panels.length];
        const lines = (from: Panel | undefined, side: 1 | -1) =>
          from?.shape.notches.find(({ use, inward }) => use === 'hip' && inward.x * side < 0)?.lines;
        expect(lines(panels[i], 1)).toBe(lines(next, -1));
        expect(shape.notches.filter(({ use }) => use === 'centre')).toHaveLength(i === 0 ? 1 : 0);
      }
    }),
  );
});

describe('round the top', () => {
  test(
    'pulled on, it is what the fullness asks or more, by less than two marks a gore',
    level(({ skirt, context, cut, opens }) => {
      if (opens) return;
      const { widest, hip } = context.body;
      const asked = Math.max(widest.value * cut.fullness, hip.value + (hip.plusMinus ?? 0) + inches(1));
      const sewn = sumOf(skirt.panels, 'waist');
      // A ring's seam lies beside its radius, not on it: a few hundredths at each.
      expect(sewn).toBeGreaterThanOrEqual(asked - 0.5);
      if (skirt.waist.kind === 'turned casing' || skirt.waist.kind === 'drawstring')
        expect(sewn).toBeLessThan(asked + 2 * cut.gores * context.mark + 0.01);
    }),
  );

  test(
    'where the waist opens it is sewn to what the waist asks, and its raw edge is chalked less than 2 mm beyond',
    level(({ skirt, context, cut, opens, request }) => {
      if (!opens || request.waist.kind !== 'plain waistband') return;
      // Hips hard below the band leave no side to fit.
      if (context.body.hipDepth.value - skirt.waist.above.value < 50) return;
      const band = context.body.waist.value + request.waist.ease;
      expect(skirt.opening.value).toBeGreaterThanOrEqual(band - 1e-6);
      const wider = skirt.opening.inputs['round']?.rule === 'skirt.fittedTopWider';
      if (!wider) expect(skirt.opening.value).toBeLessThan(band + context.mark);
      expect(sumOf(skirt.panels, 'waist')).toBeCloseTo(skirt.opening.value, 3);
      const chalked = 4 * skirt.marks.waistQuarter.value - 2 * cut.gores * cut.sideSeam;
      expect(chalked - skirt.opening.value).toBeGreaterThanOrEqual(-1e-4);
      expect(chalked - skirt.opening.value).toBeLessThan(2 * cut.gores * inches(1 / 16));
    }),
  );

  test('a fitted skirt is eased onto its band: neither gathers nor darts', () => {
    for (const gores of [4, 6, 8, 10])
      for (const waist of ['26 in', '29 3/8 in', '33 in', '38 1/8 in'])
        expect(
          draftOf({ body: { waist, hip: '44 in' }, cut: { kind: 'gored', gores }, waist: plainBand }).skirt
            .waist.takenUp?.by,
        ).toBe('nothing');
  });
});

test('hips so wide that the sides would lie down leave something to gather or dart at the waist', () => {
  const of = (hip: string) =>
    draftOf({ body: { waist: '24 in', hip }, cut: { kind: 'gored', gores: 4, front: 3 }, waist: plainBand })
      .skirt;
  expect(of('36 in').waist.takenUp?.by).toBe('nothing');
  expect(of('70 in').waist.takenUp?.by).toBe('gathers');
  expect(of('70 in').opening.value).toBeGreaterThan(inches(26));
});

describe('round the hips', () => {
  const widthAt = ({ shape }: Panel, down: Mm): number => {
    const { apex, edges } = shape;
    const corner = edges.find(({ name }) => name === 'right')?.finished[0];
    if (corner?.kind !== 'line') throw new Error('a side is made of lines');
    const { x, y } = corner.to;
    if (!apex) return 2 * x;
    expect(Math.hypot(x, y + apex.waistRadius) - apex.waistRadius).toBeCloseTo(down, 4);
    return 2 * Math.atan2(x, y + apex.waistRadius) * (apex.waistRadius + down);
  };

  test('a fitted skirt has the hip and the 5 cm of a block there, or more', () => {
    for (const gores of [4, 6, 8, 10])
      for (const front of [0.7, 1, 2])
        for (const hip of ['36 in', '41 in', '50 in']) {
          const { skirt, context } = draftOf({
            body: { waist: '29 in', hip, hipDepth: '8 in' },
            cut: { kind: 'gored', gores, front },
            waist: plainBand,
          });
          const down = mm(inches(8) - skirt.waist.above.value);
          const round = skirt.panels.reduce((sum, panel) => sum + widthAt(panel, down), 0);
          expect(round).toBeGreaterThanOrEqual(context.body.hip.value + inches(2) - 0.01);
          // No more than rounding where the hips, not the flare, decide it.
          if (hip === '50 in')
            expect(round).toBeLessThan(context.body.hip.value + inches(2) + 2 * gores * context.mark);
        }
  });

  test('on a level body all lines down from the hip line are as long, and so are the seams', () => {
    const { skirt } = draftOf({ body: { hip: '46 in' }, cut: { kind: 'gored', front: 2 }, waist: plainBand });
    for (const { shape } of skirt.panels) {
      const [above, below] = shape.edges.find(({ name }) => name === 'right')?.finished ?? [];
      expect(lengthOf(below ? [below] : [])).toBeCloseTo(
        skirt.panelLength.value - (inches(8) - skirt.waist.above.value),
        4,
      );
      expect(lengthOf(above ? [above] : [])).toBeGreaterThanOrEqual(
        inches(8) - skirt.waist.above.value - 1e-4,
      );
    }
  });
});

describe('round the hem', () => {
  test(
    'it is the largest of the floor, of the flare and of a step, or the maker’s own, by less than two marks a gore',
    level(({ skirt, context, cut, opens }) => {
      const codes = codesOf(skirt);
      if (['Capped', 'Widened'].some((code) => codes.includes(`skirt.hemRound${code}`))) return;
      const { body, stride } = context;
      const floor = body.adult && body.walks ? 4 * cut.hemFloor : 0;
      const step = stride.checked || !body.adult ? stride.needed.value : 0;
      const above = opens ? 0 : skirt.opening.value + cut.leastFlare;
      const asked = cut.hemRound ?? Math.max(floor, above, step);
      const sewn = sumOf(skirt.panels, 'hem');
      expect(skirt.hemRound.value).toBeGreaterThanOrEqual(asked - 1);
      expect(sewn).toBeGreaterThanOrEqual(asked - 1);
      if (cut.hemRound !== undefined && cut.frontHem === undefined && cut.front === 1)
        expect(sewn).toBeLessThan(asked + 2 * cut.gores * context.mark + 0.1);
    }),
  );

  test(
    'no gore narrows downwards, and none is more than a quarter of a circle',
    every(({ skirt, context }) => {
      for (const panel of skirt.panels) {
        expect(lengthOf(edgeOf(panel, 'hem'))).toBeGreaterThanOrEqual(
          Math.min(lengthOf(edgeOf(panel, 'waist')), lengthOf(edgeOf(panel, 'hem')) + 1e-6) - 1e-3,
        );
        const { apex, length } = panel.shape;
        if (apex) expect(apex.halfSweep).toBeLessThan(Math.PI / 4 + 0.4 + (2 * context.mark) / length);
      }
    }),
  );

  test('a hem of the maker’s own is kept, and she is told what it goes against', () => {
    const hem = (hemRound: string, more = {}) => draftOf({ cut: { kind: 'gored', hemRound, ...more } }).skirt;
    expect(hem('90 in').hemRound.value).toBeGreaterThanOrEqual(inches(90));
    expect(hem('90 in').hemRound.value).toBeLessThan(inches(90 + 12 / 8));
    expect(codesOf(hem('50 in'))).toContain('skirt.hemRoundBelowFloor');
    expect(codesOf(hem('20 in'))).toContain('skirt.hemRoundWidened');
    expect(hem('20 in').hemRound.value).toBeGreaterThanOrEqual(hem('20 in').opening.value);
    expect(codesOf(hem('450 in'))).toContain('skirt.hemRoundCapped');
  });

  test('a front gore too wide at the hem, or too narrow, is held, and told', () => {
    for (const frontHem of ['40 in', '4 in']) {
      const { skirt } = draftOf({ cut: { kind: 'gored', frontHem, hemRound: '66 in' } });
      expect(codesOf(skirt)).toContain('skirt.frontHemHeld');
      for (const panel of skirt.panels)
        expect(lengthOf(edgeOf(panel, 'hem'))).toBeGreaterThanOrEqual(lengthOf(edgeOf(panel, 'waist')));
    }
  });
});

describe('what the gores are called', () => {
  const names = (cut: Record<string, unknown>) =>
    draftOf({ cut: { kind: 'gored', ...cut } }).skirt.panels.map(
      ({ name, number }) => `${name} ${String(number)}`,
    );

  test('all alike they are numbered', () => {
    expect(names({ gores: 4 })).toEqual(['gore 1', 'gore 2', 'gore 3', 'gore 4']);
  });

  test('with a front of its own, by where they are worn', () => {
    const unlike = [
      'front gore 1',
      'side gore 1',
      'side gore 2',
      'back gore 1',
      'side gore 3',
      'side gore 4',
    ];
    expect(names({ front: 1.5 })).toEqual(unlike);
    expect(names({ frontHem: '9 in' })).toEqual(unlike);
  });
});

test('the cloth of gores all alike is that of as many pieces of a ring', () => {
  for (const gores of [4, 6, 8, 10]) {
    const { skirt } = draftOf({ cut: { kind: 'gored', gores } });
    const { marks, panelLength, waist, hemAllowance } = skirt;
    const [top, hem] = [4 * marks.waistQuarter.value, 4 * marks.hemQuarter.value];
    const turn = (hem - top) / panelLength.value;
    const radius = top / turn;
    const [inner, outer] = [
      radius - waist.topAllowance.value,
      radius + panelLength.value + hemAllowance.value,
    ];
    const area = skirt.panels.reduce((sum, { shape }) => sum + areaOf(shape.trimmed), 0);
    expect(area / ((turn / 2) * (outer ** 2 - inner ** 2))).toBeCloseTo(1, 9);
  }
});

test('a wider front has the same share of top and hem, and of the way round', () => {
  const { skirt } = draftOf({ cut: { kind: 'gored', front: 2 } });
  const [front, side] = skirt.panels;
  if (!side) throw new Error('one gore');
  for (const name of ['waist', 'hem'] as const)
    expect(lengthOf(edgeOf(front, name)) / lengthOf(edgeOf(side, name))).toBeCloseTo(2, 6);
  expect(front.around.to - front.around.from).toBeCloseTo(2 / 7, 9);
});

test('a skirt too short for a hip line is wide enough for the hips at its hem', () => {
  const { skirt, context } = draftOf({
    body: { waist: '29 in', hip: '44 in', waistToHem: '9 in', hipDepth: '9 in', age: 30 },
    cut: { kind: 'gored', hemFloor: '0 in', leastFlare: '0 in' },
    waist: plainBand,
  });
  expect(skirt.hemRound.value).toBeGreaterThanOrEqual(context.body.hip.value + inches(2) - 0.01);
});

test('metric makers have metric figures', () => {
  const { cut } = draftOf({ measure: 'metric', cut: { kind: 'gored' } }).request;
  expect(cut).toMatchObject({ gores: 6, leastFlare: 600, hemFloor: 380, sideSeam: 6 });
});
