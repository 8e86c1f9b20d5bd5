import fc from 'fast-check';
import { planSkirt, type SkirtPlan } from '../plan/index.ts';
import { parseRequest, type SkirtRequest } from '../request/index.ts';
import { anyBody } from './bodies.ts';
import { anyCloth, anyContrast, price } from './cloths.ts';
import { anyCut } from './cuts.ts';
import { anyExtras } from './extras.ts';
import { lengthBetween } from './lengths.ts';
import { maybe, percents, seldom, some, type Part } from './parts.ts';
import { anyRibbons } from './ribbons.ts';
import { anyWaist } from './waists.ts';

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
