import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SkirtPlan } from '../../plan/index.ts';
import { anyRequest, planOf } from '../../testing/requests.ts';
import { patience, runs } from '../../testing/runs.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { placedTexts, type Drawing } from '../drawing/index.ts';
import { foldStages } from './folds.ts';
import { finite, outside } from './testing/bounds.ts';
import { anyUnlike } from './testing/unlike.ts';

const stagesOf = (plan: SkirtPlan) => foldStages(plan, speakerOf(plan.request));
const lays = ['double fold', 'lengthwise fold', 'crosswise fold', 'open'];
const languages = ['en', 'fr'];
const wide = { width: '60 in' };

describe.each(languages)('from cloth to panels, in %s', (language) => {
  test.each(lays)('%s: the marks carry the plan’s own numbers', (lay) => {
    const plan = planOf({ language, cloth: { lay, ...wide } });
    const speaker = speakerOf(plan.request);
    const stages = stagesOf(plan);
    const { marks } = plan.skirt;
    const joined = stages.at(-2);
    const texts = placedTexts(joined?.drawing.marks ?? []).map(({ text }) => text);
    // Words are broken into lines; the numbers stand in them whole or broken at a space.
    const all = texts.join(' ');
    for (const mark of [marks.waistQuarter, marks.hemQuarter, marks.casingEnd, marks.hemEnd, marks.bottom])
      expect(all).toContain(speaker.value(mark));
    const flat = placedTexts(stages[0]?.drawing.marks ?? []).map(({ text }) => text);
    expect(flat).toContain(speaker.value(plan.cloth.chosen.clothAfter));
    expect(flat).toContain(speaker.words.tableEdges.selvage);
  });

  test.each(lays.slice(1))('%s: straight widths are chalked on the cloth, with no marks at a fold', (lay) => {
    const plan = planOf({ language, cut: { kind: 'gathered' }, cloth: { lay, ...wide } });
    const stages = stagesOf(plan);
    const { papers } = speakerOf(plan.request).words;
    expect(stages.map(({ title }) => title)).toContain(papers.markWidthsTitle);
    expect(stages.map(({ title }) => title)).not.toContain(papers.markWaistTitle);
    expect(stages.at(-1)?.title).toBe(papers.cutOpened);
  });

  test('a curve tells the last dot of waist and hem', () => {
    const plan = planOf({ language, cut: { kind: 'flared', hemAtFold: '26 in' }, cloth: wide });
    const speaker = speakerOf(plan.request);
    const texts = placedTexts(stagesOf(plan).at(-2)?.drawing.marks ?? []).map(({ text }) => text);
    const { hemOrdinates, waistOrdinates } = plan.skirt.hang;
    for (const last of [hemOrdinates.at(-1), waistOrdinates.at(-1)])
      expect(texts.join(' ')).toContain(last ? speaker.value(last.up) : '—');
  });
});

test.each(['gored', 'tiered', 'wrap', 'circle'])('the pieces of a %s skirt are laid, then shown', (kind) => {
  const plan = planOf({ cut: { kind }, cloth: wide });
  const stages = stagesOf(plan);
  const { papers } = speakerOf(plan.request).words;
  const titles = stages.map(({ title }) => title);
  expect(titles).not.toContain(papers.markWaistTitle);
  expect(titles.at(-1)).toBe(papers.piecesOpened);
  expect(titles.includes(papers.swingTitle)).toBe(plan.skirt.marking === 'swung');
  for (const { drawing, words } of stages) {
    expect(words).not.toBe('');
    expect(outside(drawing)).toEqual([]);
  }
});

test('each lay is folded as often as it asks', () => {
  const titlesOf = (lay: string) => stagesOf(planOf({ cloth: { lay, ...wide } })).map(({ title }) => title);
  expect(titlesOf('double fold').slice(0, 4)).toEqual([
    'The cloth, opened out',
    'The first fold',
    'The second fold',
    'Folded: which edge is which',
  ]);
  expect(titlesOf('lengthwise fold')).not.toContain('The second fold');
  expect(titlesOf('open')).not.toContain('The first fold');
});

/** Middles of lines less half a figure: no digit is cut off by the drawing's upper edge, be it by a hair. */
const highest = ({ marks }: Drawing): number =>
  Math.min(...placedTexts(marks).map(({ at, size }) => at.y - 0.36 * size));

// The waist curve of a body far wider below rises to the top edge: its dot, told in four lines, lies level with that edge.
test.each([
  // Not measured: no middling hip takes its place.
  [undefined, '9⁷⁄₁₆'],
  ['36 in', '13⁷⁄₁₆'],
])('the last dot of a steep waist curve is told within the drawing, hip %s', (hip, across) => {
  const plan = planOf({
    mark: '1/16 in',
    waist: { kind: 'flat front', elasticWidth: '21.0 mm', seam: '3.8 mm' },
    body: {
      hip,
      waist: '250.8 mm',
      hipDepth: '30.8 mm',
      thigh: '404.1 mm',
      waistToHem: '748.6 mm',
      waistToFloor: '1420.8 mm',
      height: '97 3/16 po',
      calf: '92.8 cm',
      pace: 'easy',
    },
  });
  const told = stagesOf(plan).filter(({ drawing }) =>
    placedTexts(drawing.marks).some(({ text }) => text.startsWith(across)),
  );
  expect(told.map(({ title }) => title)).toContain('Chalk the waist mark');
  for (const { title, drawing } of told) {
    expect(outside(drawing), title).toEqual([]);
    expect(highest(drawing), title).toBeGreaterThan(0);
  }
});

test('so does every other cut, with any waist and extras', patience, () => {
  fc.assert(
    fc.property(anyUnlike, (raw) => {
      for (const { title, words, drawing } of stagesOf(planOf(raw))) {
        expect(words, title).not.toBe('');
        expect(finite(drawing), title).toBe(true);
      }
    }),
    { numRuns: runs(25) },
  );
});

test('any request gives stages with words, finite numbers and no words outside the drawing', patience, () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      const plan = planOf(raw);
      for (const { title, words, drawing } of stagesOf(plan)) {
        expect(words, title).not.toBe('');
        expect(finite(drawing), title).toBe(true);
        // Panels that hang over a cloth too small for them push its words about; that it does not fit is told anyhow.
        if (plan.cloth.chosen.fits) expect(outside(drawing), title).toEqual([]);
      }
    }),
    { numRuns: runs(60) },
  );
});
