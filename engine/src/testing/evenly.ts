import fc from 'fast-check';

const PARTS = 1e9;

/** Numbers spread evenly over a range. fast-check's doubles are spread over their exponents: from 0 on, most are next to 0. */
export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.nat({ max: PARTS }).map((part) => min + (part / PARTS) * (max - min));
