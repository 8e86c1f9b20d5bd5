import fc from 'fast-check';
import { presetColours } from '../fields/index.ts';
import { planSkirt, type SkirtPlan } from '../plan/index.ts';
import { parseRequest, type SkirtRequest } from '../request/index.ts';
import { anyLength, lengthBetween } from './lengths.ts';

type Part = Readonly<Record<string, unknown>>;

/** A request as it stands in a document; what is left out has its default. */
export interface RawRequest extends Part {
  readonly body?: Part;
  readonly cut?: Part;
  readonly waist?: Part;
  readonly extras?: Part;
  readonly ribbons?: Part;
  readonly cloth?: Part;
  readonly supplies?: Part;
  readonly sewing?: Part;
}

/** Stands in for what a test does not say of the body. */
const SOMEBODY = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };

/** Parses a request; measurements that are left out are those of a middling body. Throws on a parse error. */
export function requestOf(raw: RawRequest = {}): SkirtRequest {
  const parsed = parseRequest({ ...raw, body: { ...SOMEBODY, ...raw.body } });
  if (!parsed.ok) throw new Error(JSON.stringify({ errors: parsed.errors, raw }));
  return parsed.request;
}

/** Parses and plans. Throws on a parse error. */
export const planOf = (raw: RawRequest = {}): SkirtPlan => planSkirt(requestOf(raw));

const maybe = <T>(values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(values, { nil: undefined });

/** What is undefined is not in the document at all. */
const document = <T extends Part>(parts: fc.Arbitrary<T>): fc.Arbitrary<Part> =>
  parts.map((part) => Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)));

/** Any of the fields, each there or not. */
const some = (fields: Readonly<Record<string, fc.Arbitrary<unknown>>>): fc.Arbitrary<Part> =>
  fc.record(fields, { requiredKeys: [] });

const percents = (least: number, most: number): fc.Arbitrary<number | string> =>
  fc
    .tuple(fc.integer({ min: least * 10, max: most * 10 }), fc.boolean())
    .map(([tenths, asText]) => (asText ? `${String(tenths / 10)} %` : tenths / 10));

const pace = fc.constantFrom('easy', 'usual', 'brisk');
const wears = fc.constantFrom('standing', 'seated', 'expecting');
/** Each one in three, so that most bodies are as most people write them. */
const seldom = <T>(values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ arbitrary: fc.constant(undefined), weight: 2 }, { arbitrary: values, weight: 1 });

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

const hundredths = (least: number, most: number) =>
  fc.integer({ min: least * 100, max: most * 100 }).map((count) => count / 100);

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

const hexColour = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`);
export const anyColour: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(...Object.keys(presetColours)),
  hexColour,
  fc.record({ name: fc.constantFrom('sea', 'rust', 'berry'), hex: hexColour }),
);

const aRow = some({ colour: anyColour, width: lengthBetween(4, 60) });
const bands = fc.array(
  fc.oneof(
    { arbitrary: aRow, weight: 4 },
    fc.record({ touching: fc.array(aRow, { minLength: 2, maxLength: 4 }) }),
  ),
  { maxLength: 8 },
);

/** Any composition; gaps are given where they are called for. */
export const anyRibbons: fc.Arbitrary<Part> = fc
  .tuple(
    fc.oneof(fc.constant(undefined), fc.integer({ min: 0, max: 14 }), bands),
    fc.constantFrom('even', 'growing', 'shrinking', 'by hand', undefined),
    fc.array(lengthBetween(0, 120), { minLength: 13, maxLength: 13 }),
    some({
      colours: fc.array(anyColour, { minLength: 1, maxLength: 5 }),
      width: lengthBetween(4, 60),
      lowest: lengthBetween(0, 200),
      highest: lengthBetween(100, 900),
      growth: fc.integer({ min: 100, max: 200 }).map((hundredths) => hundredths / 100),
      overhang: lengthBetween(0, 40),
      where: fc.constantFrom('front and back', 'front', 'back', 'round'),
      hold: fc.constantFrom('pins', 'glue', 'spray'),
      ends: fc.constantFrom('sealant', 'flame', 'none'),
      washed: fc.boolean(),
      easesUnseen: percents(0, 4),
      easesWithCare: percents(4, 12),
    }),
  )
  .map(([rows, spacing, gaps, options]) => {
    const count = rows === undefined ? 6 : typeof rows === 'number' ? rows : rows.length;
    return {
      ...options,
      ...(rows === undefined ? {} : { rows }),
      ...(spacing === undefined ? {} : { spacing }),
      ...(spacing === 'by hand' ? { gaps: gaps.slice(0, Math.max(0, count - 1)) } : {}),
    };
  });

const price = fc.integer({ min: 0, max: 5000 }).map((cents) => (cents / 100).toFixed(2));
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

const anySupplies: fc.Arbitrary<Part> = some({
  currency: fc.constantFrom('CAD', 'USD', 'EUR', 'JPY'),
  ribbon: some({ step: lengthBetween(10, 1000), least: lengthBetween(10, 1000) }),
  elastic: some({ step: lengthBetween(10, 1000), least: lengthBetween(10, 1000) }),
  thread: some({
    straight: fc.integer({ min: 1, max: 6 }),
    waste: percents(0, 30),
    tail: lengthBetween(0, 200),
    colour: fc.constantFrom('darker', 'outer', 'own'),
  }),
  notions: some({ needles: price, chalk: price, pins: price }),
}).map((supplies) => (supplies['currency'] === 'JPY' ? { ...supplies, notions: {} } : supplies));

const anySewing: fc.Arbitrary<Part> = some({
  skill: fc.constantFrom('beginner', 'practised', 'experienced'),
  overlocker: fc.boolean(),
  applique: fc.boolean(),
});

const rest = some({
  language: fc.constantFrom('en', 'fr'),
  units: fc.constantFrom('in', 'cm', 'mm', 'm', 'yd', 'ft'),
  measure: fc.constantFrom('inches', 'metric'),
  mark: fc.constantFrom('1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'),
  waist: anyWaist,
  ribbons: anyRibbons,
  cloth: anyCloth,
  supplies: anySupplies,
  sewing: anySewing,
  paper: fc.constantFrom('letter', 'a4'),
  extras: anyExtras,
});

/** Any request that parses: every cut, every option, each there or not, lengths in any units. */
export const anyRequest: fc.Arbitrary<RawRequest> = fc
  .tuple(anyBody, maybe(anyCut), rest, seldom(seldom(anyContrast)))
  .map(([body, cut, others, contrast]) => ({
    ...others,
    ...(contrast === undefined ? {} : { contrast }),
    body,
    ...(cut === undefined ? {} : { cut }),
  }));
