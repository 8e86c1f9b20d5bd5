// Checked against poppler, a PDF reader that shares no code with the writer; page sizes of ISO 216 and ANSI.
import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../../testing/requests.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { missingGlyphs, writePdf } from '../pdf/index.ts';
import { fonts } from '../testing/fonts.ts';
import { poppler, printed, withoutPoppler, type Picture } from '../testing/poppler.ts';
import { cardFigures, makePaper, paperNames, type PaperInput } from './index.ts';

const body = { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '65 in' };

const requests: Readonly<Record<string, RawRequest>> = {
  'a flared skirt': { body },
  'a curved hem, glued ribbons': { body, cut: { hemAtFold: '20 in' }, ribbons: { hold: 'glue' } },
  'gathered, round rows, in French': {
    body,
    language: 'fr',
    cut: { kind: 'gathered' },
    ribbons: { where: 'round', rows: 10 },
    cloth: { have: '1.6 m', price: '12,50' },
    sewing: { overlocker: true, applique: true },
  },
  'gores, a fitted top, pockets and a lining': {
    body,
    cut: { kind: 'gored', gores: 8, front: 1.4 },
    waist: { kind: 'plain waistband', opens: 'placket' },
    extras: { pockets: {}, lining: {} },
  },
  'three tiers, in French': {
    body,
    language: 'fr',
    measure: 'metric',
    cut: { kind: 'tiered', tiers: 3 },
    waist: { kind: 'drawstring' },
  },
  'a circle': { body, cut: { kind: 'circle', fraction: '3/4' }, waist: { kind: 'separate casing' } },
  'a wrap for somebody who sits': { body: { ...body, wears: 'seated' }, cut: { kind: 'wrap' } },
  'tiers of two cloths': {
    body,
    cut: { kind: 'tiered', tiers: 3 },
    contrast: [{ pieces: ['tier 2'], cloth: { name: 'wool felt' } }],
  },
  'one with every problem': {
    body,
    cut: { fullness: 1, leastFlare: '0 in', hemAtFold: '10 in' },
    cloth: { width: '16 in', have: '20 cm', oneWay: true },
    ribbons: { rows: 60, width: '1 in', hold: 'spray', ends: 'flame' },
  },
};

function inputOf(raw: RawRequest): PaperInput {
  const plan = planOf(raw);
  return { plan, speaker: speakerOf(plan.request), fonts, date: new Date(0), fromCloth: [], laid: null };
}

const plain = (text: string): string => text.replace(/\s+/g, ' ');

describe.each(Object.entries(requests))('the papers of %s', (_, raw) => {
  const input = inputOf(raw);

  test('have a letter for every sign on them', () => {
    for (const name of paperNames)
      expect(missingGlyphs(makePaper(name, input).document, fonts), name).toEqual([]);
  });

  test('the card is one page', () => {
    expect(makePaper('card', input).document.pages).toHaveLength(1);
  });

  test.skipIf(withoutPoppler)('the card’s numbers come back from the printed page', async () => {
    const text = plain(
      poppler('pdftotext', ['-layout', '-', '-'], await writePdf(makePaper('card', input).document, fonts)),
    );
    const { speaker, plan } = input;
    const told = cardFigures(plan, speaker).flatMap(({ figure }) => {
      const working = speaker.working(figure);
      return working === null ? [] : [{ figure, working }];
    });
    expect(told.length).toBeGreaterThan(2);
    for (const { figure, working } of told.slice(0, 2)) {
      expect(text).toContain(plain(speaker.value(figure)));
      expect(text).toContain(plain(working));
    }
    for (const { notice } of plan.notices)
      expect(
        plain(speaker.notice(notice))
          .split(' ')
          .every((word) => text.includes(word)),
        notice.code,
      ).toBe(true);
  });
});

describe.skipIf(withoutPoppler)('the printed card', () => {
  test.each([
    ['letter', '612 x 792 pts (letter)'],
    ['a4', '595.276 x 841.89 pts (A4)'],
  ])('on %s paper', async (paper, size) => {
    const pdf = await writePdf(makePaper('card', inputOf({ body, paper })).document, fonts);
    expect(plain(poppler('pdfinfo', ['-'], pdf))).toContain(`Page size: ${size}`);
  });

  // The rule under the table's headings runs from margin to margin: 14 mm each on a sheet of 215.9 mm.
  test('at true size: the longest rule is 187.9 mm to a tenth', async () => {
    const pdf = await writePdf(makePaper('card', inputOf({ body })).document, fonts);
    expect(Math.abs(longestRule(printed(pdf)) / 10 - (215.9 - 2 * 14))).toBeLessThanOrEqual(0.1 + 1e-9);
  });
});

/** Longest unbroken run of dark dots in any row, in dots. */
function longestRule({ width, height, inkAt }: Picture): number {
  let longest = 0;
  for (let y = 0; y < height; y++) {
    let run = 0;
    for (let x = 0; x < width; x++) {
      run = inkAt(x, y) > 0.5 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
  }
  return longest;
}
