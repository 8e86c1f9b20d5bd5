import fc from 'fast-check';
import { lengthBetween } from './lengths.ts';
import { some, type Part } from './parts.ts';

/** Any of the extras, each with any of its options. */
export const anyExtras: fc.Arbitrary<Part> = some({
  pockets: some({
    count: fc.constantFrom(1, 2),
    side: fc.constantFrom('left', 'right'),
    hand: lengthBetween(100, 350),
    below: lengthBetween(0, 400),
    seam: lengthBetween(6, 25),
    cloth: fc.constantFrom('skirt', 'lining'),
  }),
  slits: some({
    where: fc.constantFrom('sides', 'left side', 'right side', 'back'),
    height: lengthBetween(30, 1000),
    facing: lengthBetween(10, 80),
  }),
  lining: some({
    shorter: lengthBetween(0, 500),
    fullness: fc.integer({ min: 100, max: 250 }).map((hundredths) => hundredths / 100),
    seam: lengthBetween(3, 30),
    hem: lengthBetween(6, 100),
  }),
  tucks: some({
    how: fc.constantFrom('tucks', 'deep hem'),
    count: fc.integer({ min: 1, max: 8 }),
    depth: lengthBetween(3, 60),
    months: fc.integer({ min: 1, max: 60 }),
    letsDown: lengthBetween(5, 300),
    below: lengthBetween(0, 300),
  }),
  liningCloth: some({
    width: lengthBetween(500, 2000),
    selvage: lengthBetween(0, 30),
  }),
});
