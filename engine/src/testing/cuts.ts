import fc from 'fast-check';
import { lengthBetween } from './lengths.ts';
import { hundredths, some, type Part } from './parts.ts';

const fullness = fc.integer({ min: 100, max: 400 }).map((hundredths) => hundredths / 100);

const commonCut = {
  fullness,
  sideSeam: lengthBetween(3, 30),
  hem: lengthBetween(6, 120),
  hemTurnUnder: lengthBetween(0, 20),
  margin: lengthBetween(0, 80),
  hemFloor: lengthBetween(0, 600),
};

export const anyFlared: fc.Arbitrary<Part> = some({
  ...commonCut,
  kind: fc.constant('flared'),
  leastFlare: lengthBetween(0, 300),
  hemAtFold: lengthBetween(200, 1200),
  hemline: fc.constantFrom('auto', 'straight', 'level'),
  levelTolerance: lengthBetween(0, 40),
});

export const anyGathered: fc.Arbitrary<Part> = fc
  .tuple(some({ ...commonCut, widths: fc.integer({ min: 1, max: 12 }), wholeWidths: fc.boolean() }))
  .map(([options]) => ({ kind: 'gathered', ...options }));

export const anyCircle: fc.Arbitrary<Part> = fc
  .tuple(
    some({
      fraction: fc.constantFrom('1/4', '1/3', '1/2', '3/4', 'full'),
      pieces: fc.constantFrom('auto', 1, 2, 4),
      sideSeam: commonCut.sideSeam,
      hem: commonCut.hem,
      hemTurnUnder: commonCut.hemTurnUnder,
      margin: commonCut.margin,
    }),
  )
  .map(([options]) => ({ kind: 'circle', ...options }));

export const anyTiered: fc.Arbitrary<Part> = fc
  .tuple(
    some({
      ...commonCut,
      tiers: fc.integer({ min: 2, max: 5 }),
      ratios: fc.array(hundredths(1, 3), { maxLength: 4 }),
      shares: fc.array(hundredths(1, 5), { maxLength: 5 }),
      tierSeam: lengthBetween(3, 30),
    }),
  )
  .map(([options]) => ({ kind: 'tiered', ...options }));

export const anyGored: fc.Arbitrary<Part> = fc
  .tuple(
    some({
      ...commonCut,
      gores: fc.constantFrom(4, 6, 8, 10),
      front: hundredths(0.5, 3),
      frontHem: lengthBetween(50, 1500),
      leastFlare: lengthBetween(0, 2500),
      hemRound: lengthBetween(400, 6000),
    }),
  )
  .map(([options]) => ({ kind: 'gored', ...options }));

export const anyWrap: fc.Arbitrary<Part> = fc
  .tuple(
    some({
      sideSeam: commonCut.sideSeam,
      hem: commonCut.hem,
      hemTurnUnder: commonCut.hemTurnUnder,
      margin: commonCut.margin,
      hemFloor: commonCut.hemFloor,
      overlap: lengthBetween(50, 1200),
      facing: lengthBetween(6, 80),
      closes: fc.constantFrom('ties', 'buttons'),
      tieLength: lengthBetween(100, 2500),
      tieWidth: lengthBetween(6, 80),
      flare: hundredths(1, 4),
      leastFlare: lengthBetween(0, 2500),
      hemRound: lengthBetween(400, 6000),
    }),
  )
  .map(([options]) => ({ kind: 'wrap', ...options }));

/** Every cut with any of its options. */
export const anyCut: fc.Arbitrary<Part> = fc.oneof(
  anyFlared,
  anyGathered,
  anyGored,
  anyTiered,
  anyCircle,
  anyWrap,
);
