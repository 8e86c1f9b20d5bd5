import { z } from 'zod';
import { currencyField, priceField, type Fields } from '../fields/index.ts';
import { mm } from '../units/index.ts';

const shopStep = { least: mm(1), most: mm(10_000) };
const spool = { least: mm(1000), most: mm(20_000_000) };

const soldByLength = (fields: Fields) => ({
  step: fields.usual(shopStep, { inches: '1/8 yd', metric: '0.1 m' }),
  least: fields.usual(shopStep, { inches: '1/8 yd', metric: '0.1 m' }),
  /** Of one yard or one metre. */
  price: priceField.optional(),
});

const byLength = (fields: Fields) => z.strictObject(soldByLength(fields)).prefault({});

/** Iron-on interfacing stiffens a band that does not stretch; some makers leave it out. Common practice, no source. */
const interfacing = (fields: Fields) =>
  z.strictObject({ use: z.boolean().default(true), ...soldByLength(fields) }).prefault({});

/** Thread of a skirt of several cloths. */
export const threadColours = ['darker', 'outer', 'own'] as const;

/**
 * Thread for each unit of seam. Stitch 301: 2.5 in four sources. 304: sources say 5.5 and 7.0, the larger is the
 * default so as not to run out. 504: 14, from memory. All are settings.
 */
const thread = (fields: Fields) =>
  z
    .strictObject({
      straight: z.number().min(1).max(30).default(2.5),
      zigzag: z.number().min(1).max(60).default(7),
      overlock: z.number().min(1).max(60).default(14),
      /** Factory figures run from 10 to 20 %. */
      waste: fields.percent(0, 100).prefault(15),
      /** Thread left at each start and each stop. Common practice, no source (10 to 15 cm). */
      tail: fields.usual({ least: mm(0), most: mm(500) }, { inches: '6 in', metric: '15 cm' }),
      spool: fields.usual(spool, { inches: '110 yd', metric: '100 m' }),
      price: priceField.optional(),
      cone: fields.usual(spool, { inches: '1000 yd', metric: '1000 m' }),
      conePrice: priceField.optional(),
      /**
       * Each cloth is sewn in its own colour, and a seam between two in the darker (a darker thread shows less) or in the one
       * that lies outside; `own` is one colour for all, that of the skirt's own cloth. Common practice, no source.
       */
      colour: z.enum(threadColours).default('darker'),
    })
    .prefault({});

/** Small things bought by the piece; a price may stand beside each. */
const notionPrices = {
  needles: priceField.optional(),
  chalk: priceField.optional(),
  pins: priceField.optional(),
  glue: priceField.optional(),
  spray: priceField.optional(),
  sealant: priceField.optional(),
  zip: priceField.optional(),
  /** Of one. */
  buttons: priceField.optional(),
};
export type Notion = keyof typeof notionPrices;

export const suppliesOptions = (fields: Fields) =>
  z.strictObject({
    currency: currencyField.prefault('CAD'),
    ribbon: byLength(fields),
    /** Of each colour and width, to test its colour and a stitch on. Common practice, no source. */
    ribbonSpare: fields.usual({ least: mm(0), most: mm(2000) }, { inches: '4 in', metric: '10 cm' }),
    elastic: byLength(fields),
    cord: byLength(fields),
    /** Stretch cloth of a band. */
    knit: byLength(fields),
    interfacing: interfacing(fields),
    thread: thread(fields),
    notions: z.strictObject(notionPrices).prefault({}),
  });

export type SuppliesOptions = z.infer<ReturnType<typeof suppliesOptions>>;
