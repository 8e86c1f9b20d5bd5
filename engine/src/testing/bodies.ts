import fc from 'fast-check';
import { anyLength, lengthBetween } from './lengths.ts';
import { document, maybe, seldom, type Part } from './parts.ts';

const pace = fc.constantFrom('easy', 'usual', 'brisk');
const wears = fc.constantFrom('standing', 'seated', 'expecting');
/** Proportions as they are met, of toddlers and of grown people. */
const likelyBody: fc.Arbitrary<Part> = document(
  fc
    .record({
      height: fc.integer({ min: 850, max: 2000 }),
      waist: fc.double({ min: 0.36, max: 0.75, noNaN: true }),
      hip: fc.double({ min: 0.95, max: 1.5, noNaN: true }),
      length: fc.double({ min: 0.2, max: 0.62, noNaN: true }),
      knows: fc.constantFrom('neither', 'height', 'floor', 'both'),
      age: maybe(fc.integer({ min: 2, max: 90 })),
      pace: maybe(pace),
      second: fc.double({ min: 0.98, max: 1.02, noNaN: true }),
      again: fc.boolean(),
      hipBy: fc.constantFrom('tape', 'tape', 'tape', 'halves', 'both', 'size', 'none'),
      uneven: fc.double({ min: -0.03, max: 0.03, noNaN: true }),
      wears: maybe(wears),
    })
    .chain(({ height, waist, hip, length, knows, age, pace, second, again, hipBy, uneven, wears }) => {
      const girth = waist * height;
      const seat = Math.max(325, girth * hip);
      const floor = (share: number) => seldom(anyLength((0.62 + share) * height));
      const given = <T>(there: boolean, values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
        there ? values : fc.constant(undefined);
      return fc.record({
        waist: anyLength(girth),
        hip: given(hipBy === 'tape' || hipBy === 'both', anyLength(seat)),
        halves: given(
          hipBy === 'halves' || hipBy === 'both',
          document(
            fc.record({
              left: anyLength((0.5 + uneven) * seat),
              right: anyLength((0.5 - uneven) * seat),
            }),
          ),
        ),
        size: given(
          hipBy === 'size',
          fc.record({ from: anyLength(0.98 * seat), to: anyLength(1.02 * seat) }),
        ),
        levels: seldom(
          document(
            fc.record({
              front: floor(uneven),
              back: floor(-uneven),
              left: floor(uneven / 3),
              right: floor(0),
            }),
          ),
        ),
        wears: fc.constant(wears),
        hipDepth: seldom(anyLength(0.12 * height)),
        thigh: seldom(anyLength(0.38 * height)),
        waistToHem: anyLength(length * height),
        waistToFloor:
          knows === 'floor' || knows === 'both' ? anyLength(0.62 * height) : fc.constant(undefined),
        height: knows === 'height' || knows === 'both' ? anyLength(height) : fc.constant(undefined),
        age: fc.constant(age),
        pace: fc.constant(pace),
        second: again ? fc.record({ waist: anyLength(girth * second) }) : fc.constant(undefined),
      });
    }),
);

/** Anything that is read as a body at all. */
const unlikelyBody: fc.Arbitrary<Part> = document(
  fc.record({
    waist: lengthBetween(250, 2500),
    hip: maybe(lengthBetween(300, 2500)),
    halves: seldom(fc.record({ left: lengthBetween(150, 1250), right: lengthBetween(150, 1250) })),
    size: seldom(fc.record({ from: lengthBetween(300, 2500), to: lengthBetween(300, 2500) })),
    levels: seldom(
      document(
        fc.record({
          front: maybe(lengthBetween(250, 1800)),
          back: maybe(lengthBetween(250, 1800)),
          left: maybe(lengthBetween(250, 1800)),
          right: maybe(lengthBetween(250, 1800)),
        }),
      ),
    ),
    wears: maybe(wears),
    hipDepth: seldom(lengthBetween(30, 600)),
    thigh: seldom(lengthBetween(100, 1500)),
    waistToHem: lengthBetween(100, 1800),
    waistToFloor: maybe(lengthBetween(250, 1800)),
    height: maybe(lengthBetween(500, 2750)),
    calf: maybe(lengthBetween(100, 1000)),
    age: maybe(fc.integer({ min: 0, max: 125 })),
    pace: maybe(pace),
  }),
);

/** A body as it stands in a document, each length in units of its own, any of what is welcome there or not. */
export const anyBody: fc.Arbitrary<Part> = fc
  .oneof({ arbitrary: likelyBody, weight: 3 }, { arbitrary: unlikelyBody, weight: 1 })
  // A hip that nobody measured stands there as undefined, so that no middling one takes its place.
  .map((body) => ({ hip: undefined, ...body }));
