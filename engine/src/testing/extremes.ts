import fc from 'fast-check';

type Part = fc.Arbitrary<Readonly<Record<string, unknown>>>;

/** A number at either end of what a field takes, or between. */
const number = (least: number, most: number): fc.Arbitrary<number> =>
  fc.oneof(fc.constantFrom(least, most), fc.double({ min: least, max: most, noNaN: true }));
const length = (least: number, most: number): fc.Arbitrary<string> =>
  number(least, most).map((value) => `${value.toFixed(3)} mm`);
const some = (fields: Readonly<Record<string, fc.Arbitrary<unknown>>>, requiredKeys: string[] = []): Part =>
  fc.record(fields, { requiredKeys });

const common = {
  fullness: number(1, 4),
  sideSeam: length(3, 60),
  hem: length(6, 250),
  hemTurnUnder: length(0, 60),
  margin: length(0, 150),
  hemFloor: length(0, 1500),
};
const flared = some({
  ...common,
  leastFlare: length(0, 1000),
  hemAtFold: length(50, 3000),
  hemline: fc.constantFrom('auto', 'straight', 'level'),
  levelTolerance: length(0, 100),
});
const gathered = some(
  {
    kind: fc.constant('gathered'),
    ...common,
    widths: fc.integer({ min: 1, max: 12 }),
    wholeWidths: fc.boolean(),
  },
  ['kind'],
);

/** A document whose every field stands at either end of what it takes, or anywhere between; nobody would write it. */
export const anyExtreme: Part = some(
  {
    mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
    body: some(
      {
        waist: length(250, 2500),
        hip: length(300, 2500),
        waistToHem: length(100, 1800),
        waistToFloor: length(250, 1800),
        height: length(500, 2750),
        hipDepth: length(30, 600),
        calf: length(100, 1000),
        thigh: length(100, 1500),
        wears: fc.constantFrom('standing', 'seated', 'expecting'),
        levels: some({
          front: length(250, 1800),
          back: length(250, 1800),
          left: length(250, 1800),
          right: length(250, 1800),
        }),
        halves: some({ left: length(150, 1250), right: length(150, 1250) }, ['left', 'right']),
        size: some({ from: length(300, 2500), to: length(300, 2500) }, ['from', 'to']),
        age: number(0, 125),
        pace: fc.constantFrom('easy', 'usual', 'brisk'),
      },
      ['waist', 'waistToHem'],
    ),
    cut: fc.oneof(flared, gathered),
    waist: some({
      elasticWidth: length(3, 100),
      ease: length(1, 150),
      turnUnder: length(1, 150),
      elasticShare: number(50, 100),
      join: length(1, 150),
      mostStretch: number(1, 3),
    }),
    ribbons: some({
      rows: fc.integer({ min: 0, max: 60 }),
      width: length(2, 200),
      lowest: length(0, 1800),
      highest: length(0, 1800),
      spacing: fc.constantFrom('even', 'growing', 'shrinking'),
      growth: number(1, 3),
      overhang: length(0, 150),
      where: fc.constantFrom('front and back', 'front', 'back', 'round'),
      easesUnseen: number(0, 20),
      easesWithCare: number(0, 20),
    }),
    cloth: some({
      width: length(200, 4000),
      selvage: length(0, 80),
      washed: fc.boolean(),
      change: some({ lengthwise: number(0, 40), crosswise: number(0, 40) }),
      oneWay: fc.boolean(),
      step: length(1, 10_000),
      least: length(0, 10_000),
      have: length(50, 200_000),
    }),
    supplies: some({
      ribbon: some({ step: length(1, 10_000), least: length(1, 10_000) }),
      elastic: some({ step: length(1, 10_000), least: length(1, 10_000) }),
      thread: some({
        straight: number(1, 30),
        zigzag: number(1, 60),
        overlock: number(1, 60),
        waste: number(0, 100),
        tail: length(0, 500),
        spool: length(1000, 20_000_000),
        cone: length(1000, 20_000_000),
      }),
    }),
  },
  ['body'],
);
