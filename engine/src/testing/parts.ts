import fc from 'fast-check';

/** A part of a document as it is written. */
export type Part = Readonly<Record<string, unknown>>;

export const maybe = <T>(values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(values, { nil: undefined });

/** What is undefined is not in the document at all. */
export const document = <T extends Part>(parts: fc.Arbitrary<T>): fc.Arbitrary<Part> =>
  parts.map((part) => Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)));

/** Any of the fields, each there or not. */
export const some = (fields: Readonly<Record<string, fc.Arbitrary<unknown>>>): fc.Arbitrary<Part> =>
  fc.record(fields, { requiredKeys: [] });

export const percents = (least: number, most: number): fc.Arbitrary<number | string> =>
  fc
    .tuple(fc.integer({ min: least * 10, max: most * 10 }), fc.boolean())
    .map(([tenths, asText]) => (asText ? `${String(tenths / 10)} %` : tenths / 10));

/** Each one in three, so that most bodies are as most people write them. */
export const seldom = <T>(values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ arbitrary: fc.constant(undefined), weight: 2 }, { arbitrary: values, weight: 1 });

export const hundredths = (least: number, most: number) =>
  fc.integer({ min: least * 100, max: most * 100 }).map((count) => count / 100);
