import { describe, expect, test } from 'vitest';
import { classOfOne } from '../../request/index.ts';
import { planOf, requestOf, type RawRequest } from '../../testing/requests.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { laidClass, planLaid, searchClass, type ClassPlan, type ClothLay } from '../../workshop/index.ts';
import { fromAll, type FromCloth, type SkirtPlan } from '../../plan/index.ts';
import { placedTexts } from '../drawing/index.ts';
import { missingGlyphs } from '../pdf/index.ts';
import { fonts } from '../testing/fonts.ts';
import { haveTitle } from './haveTexts.ts';
import { makePaper } from './index.ts';

const body = { waist: '28 in', hip: '36 in', waistToHem: '33 in' };

function searched(raw: RawRequest): { readonly plan: SkirtPlan; readonly laid: ClassPlan | null } {
  const request = requestOf({ body, ...raw });
  const lays: ClothLay[] = [];
  searchClass(classOfOne(request), {
    seed: 1,
    evaluations: 2000,
    better: (_, found, { key }) => lays.push({ cloth: key, found }),
  });
  const plan = planLaid(request, lays);
  return { plan, laid: laidClass(plan, lays) };
}

function paperOf(plan: SkirtPlan, laid: ClassPlan | null, fromCloth: readonly FromCloth[] = []) {
  const speaker = speakerOf(plan.request);
  const paper = makePaper('lay', { plan, speaker, fonts, date: null, fromCloth, laid }).document;
  const texts = paper.pages.flatMap(({ drawing }) => placedTexts(drawing.marks)).map(({ text }) => text);
  return { speaker, paper, texts, text: texts.join(' ') };
}

describe('the cutting layout of a skirt whose lay was searched', () => {
  test.each(['en', 'fr'] as const)(
    'in %s: every way with what it takes, every piece to chalk',
    (language) => {
      const { plan, laid } = searched({ cut: { kind: 'gored', gores: 6 }, language, measure: 'inches' });
      const { speaker, paper, texts, text } = paperOf(plan, laid);
      const [cloth] = laid?.cloths ?? [];
      if (!cloth) throw new Error('the search finds nothing closer for six gores');
      expect(missingGlyphs(paper, fonts)).toEqual([]);
      expect(cloth.chosen.clothBefore.value).toBe(plan.cloth.chosen.clothBefore.value);
      for (const { kind, toBuy, fits } of cloth.ways) {
        expect(text).toContain(speaker.words.lays[kind]);
        if (fits) expect(texts).toContain(speaker.value(toBuy));
      }
      for (const { across, pieces, used } of cloth.chosen.tables) {
        expect(texts).toContain(speaker.length(across));
        // Where the last piece ends stands at the edge.
        expect(texts).toContain(speaker.length(used));
        for (let number = 1; number <= pieces.length; number++) expect(texts).toContain(String(number));
      }
    },
  );

  test('tells how the cloth is put on the table', () => {
    const { plan, laid } = searched({ cut: { kind: 'gored', gores: 6 } });
    expect(plan.cloth.chosen.kind).toBe('open');
    expect(paperOf(plan, laid).text).toContain('right side up, in one layer');
  });

  test('of several lengths that the others lie the same way', () => {
    const cut = { kind: 'gored' as const, gores: 6 as const };
    const { plan, laid } = searched({ cut, cloth: { lengths: [{ length: '45 in' }] } });
    expect(plan.cloth.chosen.more.length).toBeGreaterThan(0);
    expect(paperOf(plan, laid).text).toContain('The other lengths of it lie the same way');
  });

  test('of a length that it is cut from it is not told what else could be made of it', () => {
    const cut = { kind: 'gored' as const, gores: 6 as const };
    const lengths = [
      { name: 'old', length: '45 in' },
      { name: 'rag', length: '12 in', width: '30 in' },
    ];
    const { plan, laid } = searched({ cut, cloth: { lengths } });
    const [old, rag] = fromAll(plan.request).map((answer) => haveTitle(answer, speakerOf(plan.request)));
    const { texts } = paperOf(plan, laid, fromAll(plan.request));
    expect(texts).not.toContain(old);
    expect(texts).toContain(rag);
    expect(paperOf(plan, null, fromAll(plan.request)).texts).toContain(old);
  });

  test('where nothing was found there is nothing to chalk from but the lay by hand', () => {
    const plan = planOf({ body });
    expect(laidClass(plan, [])).toBeNull();
    const { texts } = paperOf(plan, null);
    expect(texts).toContain('The ways to lay it');
    expect(texts).not.toContain('What each cloth takes');
  });
});

test('by hand too, each other cloth of a skirt is laid under its name', () => {
  const plan = planOf({
    body,
    cut: { kind: 'tiered', tiers: 3 },
    contrast: [{ pieces: ['tier 2'], cloth: { name: 'wool felt' } }],
  });
  const { text, texts, speaker } = paperOf(plan, null);
  const [other] = plan.contrast;
  if (!other) throw new Error('nothing is cut from the other cloth');
  expect(text).toContain('wool felt');
  expect(texts).toContain(speaker.length(other.cloth.chosen.table.along));
});
