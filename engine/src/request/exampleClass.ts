import type { RequestDocument } from './change.ts';
import type { Language } from './request.ts';

/**
 * A class of our own scenario: five people and six skirts of four cuts, two bolts, a remnant left from an earlier class.
 */
const english = {
  version: 1,
  name: 'Saturday class',
  language: 'en',
  measure: 'inches',
  skirt: {
    cut: { kind: 'flared', fullness: 1.5 },
    ribbons: {
      rows: [{ colour: 'teal' }, { colour: 'gold' }, { colour: 'plum' }],
      width: '7/8 in',
      spacing: 'even',
    },
    supplies: { currency: 'CAD' },
  },
  cloths: {
    navy: {
      name: 'quilting cotton',
      colour: 'navy',
      width: '44 in',
      price: '14.50',
      lengths: [{ name: 'from the winter class', length: '65 in' }],
    },
    berry: { name: 'quilting cotton', colour: 'plum', width: '44 in', price: '14.50' },
  },
  skirts: [
    {
      wearer: 'Robin',
      cloth: 'navy',
      body: { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '5 ft 5 in' },
    },
    {
      wearer: 'Sam',
      cloth: 'navy',
      cut: { kind: 'gored', gores: 6 },
      body: { waist: '34 in', hip: '43 in', waistToHem: '34 in', waistToFloor: '41 in', height: '5 ft 7 in' },
    },
    {
      wearer: 'Jo',
      cloth: 'berry',
      cut: { kind: 'circle', fraction: '1/2' },
      body: { waist: '31 in', hip: '40 in', waistToHem: '28 in', waistToFloor: '40 in', height: '5 ft 6 in' },
    },
    {
      wearer: 'Kit',
      cloth: 'berry',
      cut: { kind: 'gathered' },
      body: {
        waist: '22 in',
        hip: '25 in',
        waistToHem: '20 in',
        waistToFloor: '27 in',
        height: '3 ft 10 in',
        age: 7,
      },
    },
    {
      wearer: 'Alex',
      cloth: 'navy',
      body: { waist: '40 in', hip: '48 in', waistToHem: '35 in', waistToFloor: '41 in', height: '5 ft 8 in' },
    },
    {
      wearer: 'Kit',
      cloth: 'navy',
      ribbons: { rows: [{ colour: 'light green' }, { colour: 'gold' }] },
      body: {
        waist: '22 in',
        hip: '25 in',
        waistToHem: '20 in',
        waistToFloor: '27 in',
        height: '3 ft 10 in',
        age: 7,
      },
    },
  ],
};

/** The same bodies as a metric tape reads them. */
const metricBodies = [
  { waist: '71 cm', hip: '92 cm', waistToHem: '84 cm', waistToFloor: '101 cm', height: '165 cm' },
  { waist: '86 cm', hip: '109 cm', waistToHem: '86 cm', waistToFloor: '104 cm', height: '170 cm' },
  { waist: '79 cm', hip: '102 cm', waistToHem: '71 cm', waistToFloor: '101 cm', height: '168 cm' },
  { waist: '56 cm', hip: '64 cm', waistToHem: '51 cm', waistToFloor: '69 cm', height: '117 cm', age: 7 },
  { waist: '102 cm', hip: '122 cm', waistToHem: '89 cm', waistToFloor: '104 cm', height: '173 cm' },
  { waist: '56 cm', hip: '64 cm', waistToHem: '51 cm', waistToFloor: '69 cm', height: '117 cm', age: 7 },
];

const french = {
  ...english,
  name: 'Atelier du samedi',
  language: 'fr',
  measure: 'metric',
  skirt: { ...english.skirt, ribbons: { ...english.skirt.ribbons, width: '22 mm' } },
  cloths: {
    marine: {
      name: 'coton',
      colour: 'navy',
      width: '112 cm',
      price: '15.90',
      lengths: [{ name: 'de l’atelier d’hiver', length: '165 cm' }],
    },
    prune: { name: 'coton', colour: 'plum', width: '112 cm', price: '15.90' },
  },
  skirts: english.skirts.map((skirt, i) => ({
    ...skirt,
    cloth: skirt.cloth === 'navy' ? 'marine' : 'prune',
    body: metricBodies[i] ?? skirt.body,
  })),
};

const examples: Readonly<Record<Language, RequestDocument>> = { en: english, fr: french };

/** A ready class to start from, in the usual measure of the language. */
export const exampleClass = (language: Language): RequestDocument => examples[language];
