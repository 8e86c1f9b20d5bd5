import fc from 'fast-check';
import { lengthBetween } from './lengths.ts';
import { percents, some, type Part } from './parts.ts';

const aboveOne = fc.integer({ min: 10, max: 30 }).map((tenths) => tenths / 10);
const elastic = {
  elasticWidth: lengthBetween(6, 60),
  ease: lengthBetween(2, 15),
  elasticShare: percents(70, 100),
  join: lengthBetween(1, 30),
  mostStretch: aboveOne,
};
const takeUp = {
  takeUp: fc.constantFrom('gathers', 'darts'),
  dartLength: lengthBetween(20, 200),
  dartMost: lengthBetween(8, 60),
};
const ofKind = (kind: string, fields: Readonly<Record<string, fc.Arbitrary<unknown>>>) =>
  some(fields).map((options) => ({ kind, ...options }));

/** Named wherever it has options: which kind is meant without a name goes with the cut. */
export const anyTurnedCasing: fc.Arbitrary<Part> = some({ ...elastic, turnUnder: lengthBetween(1, 15) }).map(
  (options) => (Object.keys(options).length === 0 ? options : { ...options, kind: 'turned casing' }),
);
export const anySeparateCasing = ofKind('separate casing', { ...elastic, seam: lengthBetween(3, 30) });
export const anyFlatFront = ofKind('flat front', {
  ...elastic,
  ...takeUp,
  seam: lengthBetween(3, 30),
  frontShare: percents(25, 75),
});
export const anyDrawstring = ofKind('drawstring', {
  cordWidth: lengthBetween(2, 40),
  ease: lengthBetween(1, 15),
  turnUnder: lengthBetween(1, 15),
  tieEnd: lengthBetween(0, 600),
  leastEnd: lengthBetween(0, 200),
});
export const anyPlainBand = ofKind('plain waistband', {
  ...takeUp,
  height: lengthBetween(10, 100),
  seam: lengthBetween(3, 30),
  ease: lengthBetween(0, 80),
  opens: fc.constantFrom('zip', 'placket'),
  openingDepth: lengthBetween(20, 400),
  overlap: lengthBetween(0, 100),
});
export const anyStretchBand = ofKind('stretch band', {
  height: lengthBetween(10, 300),
  bandShare: percents(50, 100),
  mostStretch: aboveOne,
  seam: lengthBetween(3, 30),
});

/** Every waist with any of its options. */
export const anyWaist: fc.Arbitrary<Part> = fc.oneof(
  anyTurnedCasing,
  anySeparateCasing,
  anyFlatFront,
  anyDrawstring,
  anyPlainBand,
  anyStretchBand,
);
