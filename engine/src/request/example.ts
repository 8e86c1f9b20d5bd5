import type { RequestDocument } from './change.ts';
import type { Language } from './request.ts';

/** A skirt of our own scenario: a likely body, one group of touching rows, prices of a corner shop. */
const english = {
  version: 1,
  wearer: 'Robin',
  language: 'en',
  measure: 'inches',
  body: {
    waist: '28 in',
    hip: '36 in',
    waistToHem: '33 in',
    waistToFloor: '40 in',
    height: '5 ft 5 in',
  },
  cut: { kind: 'flared', fullness: 1.5 },
  ribbons: {
    rows: [
      { colour: 'teal', width: '7/8 in' },
      { touching: [{ colour: 'gold' }, { colour: 'plum' }, { colour: 'gold' }] },
      { colour: 'teal' },
      { colour: 'light green' },
    ],
    width: '5/8 in',
    spacing: 'even',
    hold: 'pins',
  },
  cloth: { name: 'quilting cotton', colour: 'navy', width: '44 in', price: '14.50' },
  supplies: {
    currency: 'CAD',
    ribbon: { price: '1.80' },
    elastic: { price: '2.20' },
    thread: { price: '4.25' },
  },
};

const french = {
  ...english,
  language: 'fr',
  measure: 'metric',
  body: { waist: '71 cm', hip: '92 cm', waistToHem: '84 cm', waistToFloor: '101 cm', height: '165 cm' },
  ribbons: {
    ...english.ribbons,
    rows: [{ colour: 'teal', width: '22 mm' }, ...english.ribbons.rows.slice(1)],
    width: '16 mm',
  },
  cloth: { ...english.cloth, name: 'coton', width: '112 cm', price: '15.90' },
};

const examples: Readonly<Record<Language, RequestDocument>> = { en: english, fr: french };

/** A ready request to start from, in the usual measure of the language. */
export const exampleRequest = (language: Language): RequestDocument => examples[language];
