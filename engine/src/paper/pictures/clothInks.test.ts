import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { anyContrast } from '../../testing/cloths.ts';
import { anyRequest, planOf, type RawRequest } from '../../testing/requests.ts';
import { patience, runs } from '../../testing/runs.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { eachMark, placedTexts, type Drawing, type Mark } from '../drawing/index.ts';
import { makePaper } from '../documents/index.ts';
import { panelPicture, wornPicture, wornSides } from '../live/index.ts';
import { fonts } from '../testing/fonts.ts';
import { washOf } from './clothInks.ts';
import { layPicture } from './layPicture.ts';
import { panelRows } from './panelRows.ts';
import { pieceChart } from './pieceChart.ts';
import { stepPicture } from './steps/index.ts';
import { mm } from '../../units/index.ts';

const skirt = (more: RawRequest = {}): SkirtPlan =>
  planOf({
    cut: { kind: 'tiered', tiers: 3 },
    waist: { kind: 'plain waistband' },
    cloth: { name: 'quilting cotton', colour: 'navy' },
    contrast: [
      { pieces: ['tier 2'], cloth: { name: 'poplin', colour: '#c40001' } },
      { pieces: ['waistband'], cloth: { colour: '#d6a001' } },
    ],
    ribbons: { rows: 4, colours: ['teal'] },
    ...more,
  });

const fillsOf = (marks: readonly Mark[]): Set<string> => {
  const found = new Set<string>();
  eachMark(marks, (mark) => {
    if (mark.kind !== 'text' && mark.style.fill !== null) found.add(mark.style.fill);
  });
  return found;
};
const wordsOf = ({ marks }: Drawing): string =>
  placedTexts(marks)
    .map(({ text }) => text)
    .join(' ');

const layer = (marks: readonly Mark[], name: string): readonly Mark[] =>
  marks.flatMap((mark) =>
    mark.kind !== 'group' ? [] : mark.name === name ? mark.marks : layer(mark.marks, name),
  );

const plan = skirt();
const speaker = speakerOf(plan.request);

describe('the worn skirt', () => {
  test.each(wornSides)(
    '%s: a tier and a waistband in their colours, within what is of the skirt’s own',
    (side) => {
      const { marks } = wornPicture(plan, speaker, side).drawing;
      const [own] = layer(marks, 'cloth');
      const others = layer(marks, 'other cloths');
      expect(fillsOf(others)).toEqual(new Set(['#1d2c55', '#c40001', '#d6a001']));
      const boxOf = (of: readonly Mark[]) =>
        boundsOf(of.flatMap((mark) => (mark.kind === 'path' ? mark.paths.flat() : [])));
      const whole = boxOf(own ? [own] : []);
      const all = boxOf(others);
      for (const edge of ['left', 'top'] as const) expect(all[edge]).toBeGreaterThan(whole[edge] - 0.5);
      for (const edge of ['right', 'bottom'] as const) expect(all[edge]).toBeLessThan(whole[edge] + 0.5);
    },
  );

  test('of one cloth it has no other layer', () => {
    const one = skirt({ contrast: [] });
    expect(layer(wornPicture(one, speaker, 'front').drawing.marks, 'other cloths')).toEqual([]);
  });

  test('says in words what is cut from which', () => {
    const { description } = wornPicture(plan, speaker, 'front').drawing;
    expect(description).toContain('Cut from poplin (#c40001): tier 2.');
  });
});

test('a flat panel has the colour of its cloth, its own photo the skirt’s own alone', () => {
  const { marks } = panelPicture(plan, speaker).drawing;
  expect(fillsOf(layer(marks, 'cloth'))).toContain('#1d2c55');
  expect(fillsOf(layer(marks, 'cloth'))).not.toContain('#c40001');
  expect(fillsOf(layer(marks, 'other cloths'))).toContain('#c40001');
});

describe('on paper', () => {
  const tone = washOf(plan, 'waistband');

  test('pieces and rows are toned by their cloth, and every cloth is named', () => {
    const chart = pieceChart(plan, speaker);
    expect(fillsOf(chart.marks)).toContain(tone);
    for (const drawn of [chart, panelRows(plan, speaker)]) {
      expect(wordsOf(drawn)).toContain('quilting cotton (navy)');
      expect(wordsOf(drawn)).toContain('poplin (#c40001)');
    }
  });

  test('alike gores of two cloths are two pieces', () => {
    const gored = planOf({
      cut: { kind: 'gored', gores: 6 },
      contrast: [{ pieces: ['gore 1', 'gore 4'], cloth: { name: 'poplin', colour: 'red' } }],
    });
    const { description } = pieceChart(gored, speakerOf(gored.request), undefined, { of: 'panels' });
    expect(description).toMatch(/cut 2 · poplin \(red\)/);
    expect(description).toMatch(/cut 4 · navy cloth/);
  });

  test('a lay names its strips by the tier they are of, though it has but that one', () => {
    const [red] = plan.contrast;
    const room = { width: mm(180), height: mm(120) };
    if (!red) throw new Error('no other cloth is laid');
    const drawn = layPicture({ lay: red.cloth.chosen, skirt: plan.skirt }, speaker, 'large', room);
    expect(wordsOf(drawn)).toContain('tier 2 · strip 1');
    expect(wordsOf(drawn)).not.toContain('tier 1');
  });

  test('the cutting layout has a heading and a drawing for each cloth', () => {
    const { pages } = makePaper('lay', {
      plan,
      speaker,
      fonts,
      date: null,
      fromCloth: [],
      laid: null,
    }).document;
    const words = pages.map(({ drawing }) => wordsOf(drawing)).join(' ');
    for (const name of ['quilting cotton (navy):', 'poplin (#c40001):', '#d6a001 cloth:'])
      expect(words).toContain(name);
  });

  test('the step that sews the band on shows it in its tone and says which cloth that is', () => {
    const step = plan.sewing.steps.find(({ id }) => id === 'band');
    if (!step) throw new Error('no band is sewn');
    const drawn = stepPicture(plan, step, speaker);
    expect(fillsOf(drawn.marks)).toContain(tone);
    expect(wordsOf(drawn)).toContain('#d6a001 cloth');
    const one = skirt({ contrast: [] });
    expect(wordsOf(stepPicture(one, step, speaker))).not.toContain('cloth');
  });
});

test(
  'whatever cloths a skirt has, its pictures are drawn, and none has a tone that no cloth has',
  patience,
  () => {
    fc.assert(
      fc.property(anyRequest, anyContrast, (raw, contrast) => {
        const any = planOf({ ...raw, contrast });
        const say = speakerOf(any.request);
        for (const side of wornSides) {
          const inks = new Set(any.cloths.map(({ options }) => options.colour.hex));
          const found = fillsOf(layer(wornPicture(any, say, side).drawing.marks, 'other cloths'));
          for (const ink of found) expect(inks).toContain(ink);
        }
        for (const step of any.sewing.steps) expect(stepPicture(any, step, say).height).toBeGreaterThan(0);
      }),
      { numRuns: runs(30) },
    );
  },
);
