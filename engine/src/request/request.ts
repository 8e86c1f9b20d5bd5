import { z } from 'zod';
import { bodyOptions } from '../body/index.ts';
import { clothOptions, contrastOptions } from '../cloth/index.ts';
import type { Fields } from '../fields/index.ts';
import { ribbonOptions } from '../ribbon/index.ts';
import { sewingOptions } from '../sewing/index.ts';
import { cutOptions, extrasOptions, waistOptions } from '../skirt/index.ts';
import { suppliesOptions } from '../supplies/index.ts';
import { inches, lengthUnits, mm, type MeasureSystem, type Mm } from '../units/index.ts';

/** Version of the request document that this engine writes. */
export const REQUEST_VERSION = 1;

/** Languages that a document may ask for; each is a catalogue in the `words` room. */
export const languages = ['en', 'fr'] as const;
export type Language = (typeof languages)[number];

export const paperSizes = ['letter', 'a4'] as const;
export type PaperSize = (typeof paperSizes)[number];

/** The finest marks that a maker may chalk to, by the names they have in a document. */
const markNames = {
  '1/16 in': inches(1 / 16),
  '1/8 in': inches(1 / 8),
  '1/4 in': inches(1 / 4),
  '1 mm': mm(1),
  '2 mm': mm(2),
  '5 mm': mm(5),
} as const;
type MarkName = keyof typeof markNames;
const usualMarkName = { inches: '1/8 in', metric: '2 mm' } as const satisfies Record<MeasureSystem, MarkName>;
const markField = (usual: MarkName) =>
  z
    .enum(['1/16 in', '1/8 in', '1/4 in', '1 mm', '2 mm', '5 mm'])
    .default(usual)
    .transform((name) => markNames[name]);

/** Marks that may be chosen, as a document writes them. */
export const markChoices = Object.keys(markNames) as readonly MarkName[];

/** A mark as a document writes it. */
export const writtenMark = (mark: Mm): MarkName =>
  markChoices.find((name) => Math.abs(markNames[name] - mark) < 1e-9) ?? usualMarkName.inches;

/** The finest mark of a request that names none. */
export const usualMark = (measure: MeasureSystem): Mm => markNames[usualMarkName[measure]];

/** What the whole document is read by, before its fields are. */
export const head = {
  language: z.enum(languages).default('en'),
  units: z.enum(lengthUnits).optional(),
  measure: z.enum(['inches', 'metric']).optional(),
};

/** The schema of one skirt's request. Everything but the body has a default that a maker would choose. */
export const requestSchema = (fields: Fields) => {
  const metric = fields.system === 'metric';
  return z.strictObject({
    version: z.literal(REQUEST_VERSION).default(REQUEST_VERSION),
    name: z.string().max(120).default(''),
    /** Whom it is for. */
    wearer: z.string().max(120).default(''),
    /** A free place for what the maker was taught; printed only where she says so. */
    teachings: z.strictObject({ text: z.string().max(4000), print: z.boolean().default(false) }).optional(),
    ...head,
    mark: markField(usualMarkName[fields.system]),
    body: bodyOptions(fields),
    cut: cutOptions(fields).prefault({}),
    waist: waistOptions(fields).prefault({}),
    extras: extrasOptions(fields).prefault({}),
    ribbons: ribbonOptions(fields).prefault({}),
    cloth: clothOptions(fields).prefault({}),
    /** Other cloths of the skirt, and which pieces are cut from each. */
    contrast: contrastOptions(fields),
    supplies: suppliesOptions(fields).prefault({}),
    sewing: sewingOptions().prefault({}),
    paper: z.enum(paperSizes).default(metric ? 'a4' : 'letter'),
  });
};

type Parsed = z.infer<ReturnType<typeof requestSchema>>;

/** A request whose every default is filled in and whose every length is millimetres. */
export type SkirtRequest = Omit<Parsed, 'measure'> & { readonly measure: 'inches' | 'metric' };
