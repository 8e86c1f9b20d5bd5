import { z } from 'zod';
import { clothOptions, contrastOf, type ClothOptions } from '../cloth/index.ts';
import type { Fields } from '../fields/index.ts';
import { partly } from './partly.ts';
import { head, requestSchema, type SkirtRequest } from './request.ts';

/** Version of the class document that this engine writes. */
export const CLASS_VERSION = 1;

/** A class is a room of people: more than these are several classes. */
export const MOST_SKIRTS = 200;

const clothName = z.string().min(1).max(80);

/** What stands once for the whole class, and in no skirt of it. */
const ofTheClass = {
  version: true,
  language: true,
  units: true,
  measure: true,
  mark: true,
  paper: true,
} as const;

/** What stands in each skirt, and is never shared. */
const ofOneSkirt = { name: true, wearer: true, body: true } as const;

/**
 * The schema of a class: what its skirts share, each skirt with what differs, and the cloths they are cut from. A skirt
 * may give any part of what is shared anew, or only some fields of it; only its body is written whole, and there.
 */
export function classSchema(fields: Fields) {
  const skirt = requestSchema(fields);
  const { mark, paper, body, name, wearer } = skirt.shape;
  const { shape: parts } = skirt.omit({ ...ofTheClass, ...ofOneSkirt, cloth: true, contrast: true });
  const shared = {
    ...Object.fromEntries(Object.entries(parts).map(([key, part]) => [key, partly(part).optional()])),
    cloth: clothName.optional(),
    // Of other cloths too, those that the class names are called by their names.
    contrast: contrastOf(z.union([clothName, clothOptions(fields)]).optional()).optional(),
  };
  return z.strictObject({
    version: z.literal(CLASS_VERSION).default(CLASS_VERSION),
    name,
    ...head,
    mark,
    paper,
    /** What all skirts have, where they say nothing else. */
    skirt: z.strictObject(shared).prefault({}),
    skirts: z
      .array(z.strictObject({ name, wearer, body, ...shared }))
      .min(1)
      .max(MOST_SKIRTS),
    /** By the names that skirts call them. Where a skirt names none it is cut from the first. */
    cloths: z.record(clothName, clothOptions(fields)).prefault({}),
  });
}

/** The same, but for the parts of its skirts, which are read once they are put together. */
export function classFrame(fields: Fields) {
  const whole = classSchema(fields);
  const unread = (shape: object) =>
    z.strictObject({
      ...Object.fromEntries(Object.keys(shape).map((key) => [key, z.unknown().optional()])),
      cloth: clothName.optional(),
    });
  return whole.extend({
    skirt: unread(whole.shape.skirt.unwrap().shape).prefault({}),
    skirts: z.array(unread(whole.shape.skirts.element.shape)).min(1).max(MOST_SKIRTS),
  });
}

/** One skirt of a class. */
export interface ClassSkirt {
  /** What stands on its pieces: whose it is, or its place in the class; told apart from every other. */
  readonly label: string;
  /** Which of the class's cloths it is cut from. */
  readonly cloth: string;
  /** Which of them each of its other cloths is; null for one that the skirt describes itself. */
  readonly contrast: readonly (string | null)[];
  /** Whole, as if it stood alone. */
  readonly request: SkirtRequest;
}

/** A class whose every default is filled in and whose every length is millimetres. */
export interface ClassRequest extends Pick<
  SkirtRequest,
  'name' | 'language' | 'units' | 'measure' | 'mark' | 'paper'
> {
  readonly version: typeof CLASS_VERSION;
  readonly skirts: readonly ClassSkirt[];
  /** In the order of the document. */
  readonly cloths: readonly ClassCloth[];
}

export interface ClassCloth {
  /** As skirts call it; empty where the class names none. */
  readonly name: string;
  readonly options: ClothOptions;
}

/** A skirt by itself, as a class of one. */
export const classOfOne = (request: SkirtRequest): ClassRequest => ({
  version: CLASS_VERSION,
  name: request.name,
  language: request.language,
  units: request.units,
  measure: request.measure,
  mark: request.mark,
  paper: request.paper,
  skirts: [{ label: '', cloth: '', contrast: request.contrast.map(() => null), request }],
  cloths: [{ name: '', options: request.cloth }],
});
