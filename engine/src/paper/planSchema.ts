import { z } from 'zod';
import { layKinds } from '../cloth/index.ts';

/** Version of the plan document: raised when a field changes its meaning or goes. Fields may be added. */
export const PLAN_VERSION = 1;

const length = z.strictObject({ mm: z.number(), shown: z.string() });
const amount = z.strictObject({ value: z.number(), shown: z.string() });
const ordinate = z.strictObject({ across: length, up: length });

/** What can be made of a length of cloth. */
const fromCloth = z.strictObject({
  have: length,
  longest: length.nullable(),
  /** What the longest takes before the wash, and what is left then. */
  takes: length.nullable(),
  /** How the longest is laid. */
  way: z.enum(layKinds).nullable(),
  left: length.nullable(),
  fullest: z.strictObject({ fullness: amount, hemQuarter: length }).nullable(),
  mostRows: z.int().nullable(),
  count: z.int(),
  notices: z.array(
    z.strictObject({ level: z.enum(['caution', 'problem']), code: z.string(), text: z.string() }),
  ),
});

/** Schema of what `plan --json` prints. */
export const planSchema = z.strictObject({
  format: z.literal('ribbonwright.plan'),
  version: z.literal(PLAN_VERSION),
  name: z.string(),
  wearer: z.string(),
  language: z.string(),
  measure: z.enum(['inches', 'metric']),
  marks: z.strictObject({
    waistQuarter: length,
    hemQuarter: length,
    cutLength: length,
    casingEnd: length,
    hemEnd: length,
  }),
  skirt: z.strictObject({
    cut: z.string(),
    finishedLength: length,
    opening: length,
    hemRound: length,
    hemline: z.enum(['straight', 'curved']),
    sideExcess: length,
    sideAngle: amount,
    casing: length,
    hem: length,
    sideSeam: length,
    gathered: amount,
    curve: z.strictObject({ waist: z.array(ordinate), hem: z.array(ordinate) }).nullable(),
  }),
  /** Panels side by side, from the top down: one for most cuts, one for each tier of a tiered one. */
  rounds: z.array(
    z.strictObject({
      fromHem: length,
      length,
      top: length,
      bottom: length,
      seams: z.int(),
      /** Panels of the round that are cut alike. */
      panels: z.array(
        z.strictObject({
          name: z.string(),
          title: z.string(),
          count: z.int(),
          mirrored: z.int(),
          /** What is chalked, in words; the cut cloth's box. */
          measures: z.array(z.string()),
          width: length,
          depth: length,
        }),
      ),
    }),
  ),
  /** Pieces that are not panels. */
  parts: z.array(
    z.strictObject({
      name: z.string(),
      title: z.string(),
      count: z.int(),
      mirrored: z.boolean(),
      cloth: z.enum(['skirt', 'lining', 'knit']),
      measures: z.array(z.strictObject({ name: z.string(), value: length })),
    }),
  ),
  waist: z.strictObject({
    kind: z.string(),
    build: z.string(),
    topAllowance: length,
    above: length,
    cord: z.strictObject({ width: length, cut: length, freeEnd: length }).nullable(),
    closure: z
      .strictObject({ kind: z.string(), depth: length, overlap: length, buttons: z.int() })
      .nullable(),
    takenUp: z
      .strictObject({
        by: z.string(),
        difference: length,
        darts: z.int(),
        dartWidth: length.nullable(),
        dartLength: length.nullable(),
      })
      .nullable(),
  }),
  extras: z.strictObject({
    pockets: z.strictObject({ count: z.int(), opening: length, below: length }).nullable(),
    slits: z.strictObject({ count: z.int(), where: z.string(), height: length }).nullable(),
    lining: z.strictObject({ length, top: length, round: length }).nullable(),
    tucks: z
      .strictObject({ how: z.string(), count: z.int(), depth: length, below: length, letsDown: length })
      .nullable(),
  }),
  /** How much higher than a level top line the waist lies there; below 0 lower. */
  rises: z.strictObject({ front: length, back: length, left: length, right: length }),
  overlap: z.strictObject({ width: length, facing: length, closes: z.string() }).nullable(),
  stride: z.strictObject({
    checked: z.boolean(),
    hemNeeded: length,
    bare: length.nullable(),
    everyday: length.nullable(),
  }),
  rows: z.array(
    z.strictObject({
      number: z.int(),
      band: z.int(),
      colour: z.string(),
      hex: z.string(),
      width: length,
      fromHem: length,
      fromRawEdge: length,
      lengths: z.array(z.strictObject({ panel: z.string(), number: z.int(), cut: length })),
      curve: z.strictObject({ share: amount, takeUp: length }).nullable(),
      /** The round that it lies on, from the top, from 1; over a seam of tiers, how far below that seam. */
      round: z.int(),
      belowSeam: length.nullable(),
    }),
  ),
  ribbons: z.array(
    z.strictObject({ colour: z.string(), hex: z.string(), width: length, total: length, strips: z.int() }),
  ),
  /** The skirt's own cloth, then its others. */
  cloths: z.array(
    z.strictObject({
      name: z.string(),
      colour: z.string(),
      hex: z.string(),
      pieces: z.string(),
      washed: z.boolean(),
      lay: z.string(),
      clothAfterWash: length,
      clothBeforeWash: length,
      toBuy: length,
    }),
  ),
  lays: z.array(
    z.strictObject({
      kind: z.string(),
      chosen: z.boolean(),
      fits: z.boolean(),
      clothAfterWash: length,
      clothBeforeWash: length,
      toBuy: length,
      left: z.strictObject({ across: length, along: length }),
      printOnItsSide: z.boolean(),
      headToTail: z.boolean(),
      layers: z.int(),
    }),
  ),
  elastic: z.strictObject({ width: length, cut: length }).nullable(),
  thread: z.array(
    z.strictObject({
      colour: z.string(),
      kind: z.enum(['sewing', 'overlock']),
      needle: length,
      under: length,
      total: length,
      spools: z.int(),
      parts: z.array(z.strictObject({ stitch: z.string(), seam: length, needle: length, under: length })),
    }),
  ),
  shopping: z.array(
    z.strictObject({
      what: z.string(),
      colour: z.string().nullable(),
      width: length.nullable(),
      need: length.nullable(),
      buy: z.union([length, amount]),
      price: z.strictObject({ minor: z.int(), currency: z.string(), shown: z.string() }).nullable(),
      advice: z.array(z.string()),
    }),
  ),
  steps: z.array(
    z.strictObject({
      id: z.string(),
      title: z.string(),
      after: z.array(z.string()),
      station: z.string(),
      sentences: z.array(z.string()),
      cautions: z.array(z.string()),
      minutes: z.strictObject({ hands: amount, wait: amount }),
    }),
  ),
  time: z.strictObject({ hands: amount, wait: amount }),
  notices: z.array(
    z.strictObject({
      stage: z.string(),
      /** Which of several cloths it is about. */
      cloth: z.string().nullable(),
      level: z.enum(['caution', 'problem']),
      code: z.string(),
      text: z.string(),
    }),
  ),
  /** How each figure was got, by its path in this document. */
  workings: z.record(z.string(), z.string()),
  fromCloth: fromCloth.nullable(),
  /** The same of each length of the skirt's cloth that is at hand, in their order. */
  fromLengths: z.array(fromCloth.extend({ name: z.string(), width: length })),
});

export type PlanDocument = z.infer<typeof planSchema>;

/** JSON Schema (draft 2020-12) of the plan document. */
export const planJsonSchema = () => ({
  ...z.toJSONSchema(planSchema),
  title: `Ribbonwright plan, version ${String(PLAN_VERSION)}`,
});
