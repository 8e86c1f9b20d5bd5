import { describe, expect, test } from 'vitest';
import { classOfOne } from '../../request/index.ts';
import { classPlanOf, roster } from '../../testing/classes.ts';
import { requestOf } from '../../testing/requests.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { howMany, planClass } from '../../workshop/index.ts';
import { placedTexts, type PaperDocument } from '../drawing/index.ts';
import { layDocument } from '../layDocument.ts';
import { missingGlyphs } from '../pdf/index.ts';
import { fonts } from '../testing/fonts.ts';
import { classCards } from './classCards.ts';
import { classLayPaper } from './classLay.ts';
import { lengthTitle } from './clothTexts.ts';

describe('the cutting layouts of a class', () => {
  test.each([
    [1, 'en'],
    [5, 'fr'],
    [20, 'en'],
    [20, 'fr'],
  ] as const)('%i skirts in %s: everybody, every length of cloth, no letter missing', (count, language) => {
    const plan = classPlanOf(roster(count, { language }));
    const speaker = speakerOf(plan.request);
    const paper = classLayPaper({ plan, shelf: howMany(plan.request, null), speaker, fonts, date: null });
    expect(missingGlyphs(paper, fonts)).toEqual([]);
    const said = paper.pages.flatMap(({ drawing }) => placedTexts(drawing.marks));
    const text = said.map((each) => each.text).join(' ');
    for (const { label } of plan.skirts) expect(text).toContain(label);
    for (const { chosen } of plan.cloths) expect(text).toContain(speaker.value(chosen.toBuy));
    for (const { width, height, drawing } of paper.pages)
      for (const { at } of placedTexts(drawing.marks)) {
        expect(at.x).toBeGreaterThan(0);
        expect(at.x).toBeLessThan(width);
        expect(at.y).toBeGreaterThan(0);
        expect(at.y).toBeLessThan(height);
      }
  });

  test('a skirt by itself has the same paper, under its own name', () => {
    const plan = planClass(classOfOne(requestOf({ wearer: 'Robin' })));
    const speaker = speakerOf(plan.request);
    const paper = classLayPaper({ plan, shelf: [], speaker, fonts, date: null });
    expect(paper.title).toBe('Ribbon skirt for Robin · Cutting layout');
  });
});

describe('cloth that is not enough for all', () => {
  const child = { body: { waist: '56 cm', hip: '64 cm', waistToHem: '50 cm' } };
  const navy = { width: '112 cm', washed: true, bolt: false, lengths: [{ length: '130 cm' }] };
  const plan = classPlanOf({
    cloths: { navy },
    skirts: ['Robin', 'Sam', 'Kit'].map((wearer) => ({ wearer, ...child })),
  });
  const speaker = speakerOf(plan.request);
  const shelf = howMany(plan.request, null);
  const textOf = ({ pages }: PaperDocument): string =>
    pages.flatMap(({ drawing }) => placedTexts(drawing.marks).map(({ text }) => text)).join(' ');

  test('the paper draws those it is enough for, tells what the others would need, each once', () => {
    expect(plan.cloths[0]?.chosen.fits).toBe(false);
    const text = textOf(classLayPaper({ plan, shelf, speaker, fonts, date: null }));
    expect(text).toContain('navy, what is at hand, for Robin: ');
    expect(text).toContain('1 · Robin');
    // Folded in four there is too little for Robin too.
    expect(text.match(/There is too little cloth for Sam, Kit\./g)).toHaveLength(3);
    expect(text).toContain('There is too little cloth for Robin, Sam, Kit.');
    expect(text.match(/of cloth is needed/g)).toHaveLength(2);
    expect(textOf(classLayPaper({ plan, shelf: [], speaker, fonts, date: null }))).not.toContain('1 · Robin');
  });

  test('a card says of whose pieces no layout is drawn', () => {
    const { pages } = classCards({ plan, shelf, speaker, fonts, date: null });
    const said = pages.map(({ drawing }) =>
      placedTexts(drawing.marks)
        .map(({ text }) => text)
        .join(' '),
    );
    const isTold = said.map((text) => text.includes('Not all of this skirt lies on a cutting layout'));
    expect(isTold).toEqual([false, true, true]);
  });

  test('machines are told how they lie', () => {
    const [answer] = layDocument(plan, speaker, shelf).shelf;
    expect(answer?.laid.map(({ skirts }) => skirts)).toEqual([['Robin']]);
    const pieces = answer?.laid.flatMap(({ tables }) => tables.flatMap((table) => table.pieces)) ?? [];
    expect(new Set(pieces.map(({ wearer }) => wearer))).toEqual(new Set(['Robin']));
    const enough = classPlanOf(roster(2));
    expect(layDocument(enough, speaker, howMany(enough.request, null)).shelf[0]?.laid).toEqual([]);
  });
});

describe('the lay for machines', () => {
  test('is plain JSON, with every piece of everybody and its corners on its table', () => {
    const plan = classPlanOf(roster(4));
    const document = layDocument(plan, speakerOf(plan.request));
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    const [cloth] = document.cloths;
    expect(cloth?.ways).toHaveLength(4);
    const chosen = cloth?.ways.find(({ way }) => way === cloth.chosen);
    const pieces = chosen?.tables.flatMap((table) => table.pieces) ?? [];
    expect(new Set(pieces.map(({ wearer }) => wearer))).toEqual(new Set(cloth?.skirts));
    for (const { along, across, corners } of pieces)
      for (const corner of corners) {
        expect(corner.along.mm).toBeGreaterThanOrEqual((along[0]?.mm ?? 0) - 0.01);
        expect(corner.along.mm).toBeLessThanOrEqual((along[1]?.mm ?? 0) + 0.01);
        expect(corner.across.mm).toBeLessThanOrEqual((across[1]?.mm ?? 0) + 0.01);
      }
  });

  test('has no lengths of a way that nothing lies in, only why', () => {
    const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
    const cloth = { width: '60 cm', pattern: { across: '4 cm' } };
    const one = planClass(classOfOne(requestOf({ body, cloth, cut: { kind: 'gored', gores: 6 } })));
    const ways = layDocument(one, speakerOf(one.request)).cloths.flatMap((each) => each.ways);
    const folded = ways.find(({ way }) => way === 'double fold');
    expect(folded).toMatchObject({ fits: false, clothAfter: null, toBuy: null, saved: null, tables: [] });
    expect(folded?.notices.map(({ level }) => level)).toEqual(['problem', 'problem']);
    for (const { fits, toBuy, lowerBound } of ways)
      expect([toBuy === null, lowerBound === null]).toEqual([!fits, !fits]);
  });
});

test.each(['en', 'fr'] as const)('parts of one length have a title each, in %s', (language) => {
  const { cloths, request } = classPlanOf(roster(5, { language }));
  let several = 0;
  for (const way of cloths.flatMap(({ ways }) => ways)) {
    const titles = way.tables.map((table) => lengthTitle(table, way, speakerOf(request)));
    expect(new Set(titles).size).toBe(titles.length);
    if (titles.length > 1) several++;
  }
  expect(several).toBeGreaterThan(0);
});

describe('the cards of a class', () => {
  test.each(['en', 'fr'] as const)(
    'in %s: one for everybody, under her label, without her own cloth',
    (language) => {
      const plan = classPlanOf(roster(5, { language }));
      const speaker = speakerOf(plan.request);
      const paper = classCards({ plan, shelf: [], speaker, fonts, date: null });
      expect(paper.pages).toHaveLength(5);
      expect(missingGlyphs(paper, fonts)).toEqual([]);
      plan.skirts.forEach(({ label, plan: { cloth } }, i) => {
        const said = placedTexts(paper.pages[i]?.drawing.marks ?? []).map(({ text }) => text);
        expect(said.some((text) => text.includes(label))).toBe(true);
        expect(said.join(' ')).not.toContain(speaker.name(cloth.chosen.clothBefore));
      });
    },
  );

  test('the grain of a gore is drawn as the gore lies in the class', () => {
    const across = speakerOf(requestOf({})).words.papers.pieceAcross;
    const said = (lay: string): string => {
      const plan = classPlanOf({
        skirt: { cut: { kind: 'gored', gores: 6 } },
        cloths: { navy: { lay } },
        skirts: [
          { wearer: 'Sam', cloth: 'navy', body: { waist: '34 in', hip: '44 in', waistToHem: '36 in' } },
        ],
      });
      const speaker = speakerOf(plan.request);
      const paper = classCards({ plan, shelf: [], speaker, fonts, date: null });
      return paper.pages
        .flatMap(({ drawing }) => placedTexts(drawing.marks))
        .map(({ text }) => text)
        .join(' ');
    };
    expect(said('lengthwise fold')).not.toContain(across.split(',')[0]);
    expect(said('open')).toContain(across.split(',')[0]);
  });
});
