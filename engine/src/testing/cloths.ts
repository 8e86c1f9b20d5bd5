import fc from 'fast-check';
import { lengthBetween } from './lengths.ts';
import { percents, some, type Part } from './parts.ts';
import { anyColour } from './ribbons.ts';

export const price = fc.integer({ min: 0, max: 5000 }).map((cents) => (cents / 100).toFixed(2));
const change = fc.oneof(
  percents(0, 15),
  percents(0, 8).chain((from) => fc.record({ from: fc.constant(from), to: percents(8, 15) })),
  fc.record({ before: fc.constant('50 cm'), after: lengthBetween(440, 500) }),
);

export const anyCloth: fc.Arbitrary<Part> = some({
  colour: anyColour,
  width: lengthBetween(700, 2800),
  selvage: lengthBetween(0, 30),
  weight: fc.constantFrom('light', 'medium', 'heavy'),
  washed: fc.boolean(),
  change: some({ lengthwise: change, crosswise: change }),
  oneWay: fc.boolean(),
  lay: fc.constantFrom('auto', 'double fold', 'lengthwise fold', 'crosswise fold', 'open'),
  step: lengthBetween(10, 500),
  least: lengthBetween(0, 500),
  price,
  have: lengthBetween(300, 20_000),
});

/** Other cloths, with pieces that the skirt may or may not have. */
export const anyContrast: fc.Arbitrary<readonly Part[]> = fc.array(
  fc.record({
    pieces: fc.uniqueArray(
      fc.constantFrom(
        ...['tier 1', 'tier 2', 'tier 3', 'front', 'back', 'gore 2', 'front gore', 'left front'],
        ...['half circle', 'waistband', 'waistband back', 'casing strip', 'tie', 'placket', 'pocket bag'],
        ...['slit facing', 'hem facing'],
      ),
      { minLength: 1, maxLength: 6 },
    ),
    cloth: anyCloth,
  }),
  { maxLength: 2 },
);
