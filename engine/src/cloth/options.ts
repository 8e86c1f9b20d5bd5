import { z } from 'zod';
import { colourField, priceField, type Fields } from '../fields/index.ts';
import { clothWeights } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';

/** The ways to lay the panels of one skirt. */
export const layKinds = ['double fold', 'lengthwise fold', 'crosswise fold', 'open'] as const;
export type LayKind = (typeof layKinds)[number];

const boltWidth = { least: mm(200), most: mm(4000) };
const boltLength = { least: mm(50), most: mm(200_000) };
const square = { least: mm(50), most: mm(2000) };

/** Largest change in the wash that is cloth and not an accident. */
const MOST_CHANGE = 40;

/**
 * Change of one direction in the first wash: known, a range, or a square that was measured before and after.
 * Percent by the definition of ISO 5077, shrinkage counted as positive.
 */
const change = (fields: Fields) =>
  z.union([
    fields.percent(0, MOST_CHANGE),
    z.strictObject({ from: fields.percent(0, MOST_CHANGE), to: fields.percent(0, MOST_CHANGE) }),
    z
      .strictObject({ before: fields.length(square), after: fields.length(square) })
      .superRefine(({ before, after }, context) => {
        const least = mm(before * (1 - MOST_CHANGE / 100));
        if (after < least) context.addIssue(outOfRange('after', after, { least, most: square.most }));
      }),
  ]);

/** The change that is reckoned with: a range by its upper end; a square that grew as if it had not, for it can't be counted on to grow again. */
export function reckoned(change: ChangeOptions): number {
  if (typeof change === 'number') return change;
  return 'to' in change ? Math.max(change.from, change.to) : Math.max(0, 1 - change.after / change.before);
}

const outOfRange = (
  key: string,
  input: Mm,
  range: { readonly least: Mm; readonly most: Mm },
): z.core.$ZodSuperRefineIssue => ({
  code: 'custom',
  path: [key],
  input,
  params: { fault: 'lengthRange', ...range },
});

/** Cutting room that is still cutting room, and remnants and spoilt places that one cloth may have. */
const MOST_BETWEEN = mm(50);
const MOST_LENGTHS = 30;
const MOST_FLAWS = 50;
/** A pattern closer than this is a texture; one larger is a panel print. */
const repeat = { least: mm(2), most: mm(1500) };

/** Where a cloth is spoilt: a rectangle from the length's beginning and from one of its edges. */
const flawOptions = (fields: Fields) =>
  z
    .strictObject({
      along: fields.length({ least: mm(0), most: boltLength.most }),
      across: fields.length({ least: mm(0), most: boltWidth.most }),
      length: fields.length({ least: mm(1), most: boltLength.most }),
      width: fields.length({ least: mm(1), most: boltWidth.most }),
    })
    .meta({
      description:
        "A spoilt place: how far along it begins, from the length's beginning; how far across, from the selvage that lies above in the layouts; how long and how wide it is. Measured before the wash, as the length was.",
    });

/** A length of the cloth that is at hand. */
const lengthOptions = (fields: Fields) =>
  z.strictObject({
    name: z.string().max(80).default(''),
    length: fields.length(boltLength),
    /** As wide as the bolt where it is left out. */
    width: fields.length(boltWidth).optional(),
    /** Whether it was washed already: left over from another skirt, it does not change again. */
    washed: z.boolean().default(false),
    flaws: z
      .array(flawOptions(fields))
      .max(MOST_FLAWS)
      .default([])
      .meta({ description: 'Spoilt places: nothing is cut there.' }),
  });

/** What repeats on the cloth: stripes across it, bands along it, both in a check. */
const patternOptions = (fields: Fields) =>
  z
    .strictObject({
      across: fields.length(repeat).optional(),
      along: fields.length(repeat).optional(),
      /** A line (or crossing) of the pattern, from the cloth's beginning and from its edge. */
      at: z
        .strictObject({
          along: fields.length({ least: mm(0), most: repeat.most }).prefault('0 mm'),
          across: fields.length({ least: mm(0), most: boltWidth.most }).prefault('0 mm'),
        })
        .prefault({})
        .meta({
          description:
            "Where a line of the pattern lies: along from the cloth's beginning, across from the selvage that lies above in the layouts.",
        }),
      /** Whether it has to meet at the side seams. */
      match: z
        .boolean()
        .default(true)
        .meta({ description: 'Whether the pattern has to meet at the seams that join panels.' }),
    })
    .meta({
      description:
        'A repeat: across from one stripe to the next over the width, along from one band to the next down the length, both in a check.',
    });

/** Less than this between the selvages is a ribbon, not cloth: it must be wider than any two seams. */
export const NARROWEST = mm(150);

/** The cloth. Quilting cotton off a 44 in bolt that was not washed yet. Common practice, no source. */
export const clothOptions = (fields: Fields) =>
  z
    .strictObject({
      name: z.string().max(80).default(''),
      colour: colourField.prefault('navy'),
      width: fields.usual(boltWidth, { inches: '44 in', metric: '112 cm' }),
      selvage: fields.usual({ least: mm(0), most: mm(80) }, { inches: '1/2 in', metric: '1.2 cm' }),
      weight: z.enum(clothWeights).default('medium'),
      /** Whether it has had its first wash: then it will not change again. */
      washed: z.boolean().default(false),
      change: z
        .strictObject({ lengthwise: change(fields).prefault(5), crosswise: change(fields).prefault(5) })
        .prefault({}),
      oneWay: z.boolean().default(false),
      lay: z.enum(['auto', ...layKinds]).default('auto'),
      /** Shop's cutting step and least length, and the price of one metre or one yard. */
      step: fields.usual({ least: mm(1), most: mm(10_000) }, { inches: '1/8 yd', metric: '0.1 m' }),
      least: fields.usual({ least: mm(0), most: mm(10_000) }, { inches: '1/4 yd', metric: '0.1 m' }),
      price: priceField.optional(),
      /** What there is of it, where that is all there is. */
      have: fields.length(boltLength).optional(),
      /** Room for the scissors between any two pieces. */
      between: fields.usual({ least: mm(0), most: MOST_BETWEEN }, { inches: '0 in', metric: '0 cm' }),
      /** Lengths of it at hand, the oldest first: they are used up before the bolt is cut. */
      lengths: z.array(lengthOptions(fields)).max(MOST_LENGTHS).default([]).meta({
        description:
          'Lengths of it at hand, in the order of their use: the oldest first. They are used before the bolt.',
      }),
      /** Whether more of it may be cut from the bolt. */
      bolt: z
        .boolean()
        .default(true)
        .meta({ description: 'Whether more of it can be had; without, what is at hand is all there is.' }),
      pattern: patternOptions(fields).optional(),
    })
    .superRefine(({ width, selvage, washed, change: { crosswise } }, context) => {
      const least = mm((NARROWEST + 2 * selvage) / (1 - (washed ? 0 : reckoned(crosswise))));
      if (width < least) context.addIssue(outOfRange('width', width, { least, most: boltWidth.most }));
    });

export type ClothOptions = z.infer<ReturnType<typeof clothOptions>>;
export type LengthOptions = z.infer<ReturnType<typeof lengthOptions>>;
export type PatternOptions = z.infer<ReturnType<typeof patternOptions>>;
export type ChangeOptions = z.infer<ReturnType<typeof change>>;
