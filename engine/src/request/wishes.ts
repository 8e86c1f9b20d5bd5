import type { CutKind, CutOptions, ExtrasOptions, WaistKind, WaistOptions } from '../skirt/index.ts';
import { requestJsonSchema } from './schema.ts';

type KeysOf<Options> = Options extends unknown ? Exclude<keyof Options & string, 'kind'> : never;
type ExtraOf<Name extends keyof ExtrasOptions> = NonNullable<ExtrasOptions[Name]>;

/** The rooms of a document whose fields go with what was chosen there, and every field that any choice has. */
export interface WishKeys {
  readonly cut: KeysOf<CutOptions>;
  readonly waist: KeysOf<WaistOptions>;
  readonly pockets: KeysOf<ExtraOf<'pockets'>>;
  readonly slits: KeysOf<ExtraOf<'slits'>>;
  readonly lining: KeysOf<ExtraOf<'lining'>>;
  readonly tucks: KeysOf<ExtraOf<'tucks'>>;
  readonly liningCloth: KeysOf<ExtraOf<'liningCloth'>>;
}
export type WishRoom = keyof WishKeys;

type Literal<T> = T extends string ? (string extends T ? never : T) : never;
type ChoicesOf<Options> = Options extends unknown
  ? { [Key in KeysOf<Options>]: Literal<Exclude<Options[Key & keyof Options], undefined>> }[KeysOf<Options>]
  : never;

/** Every word that can be chosen in one of those fields. */
export type ChoiceValue =
  | ChoicesOf<CutOptions>
  | ChoicesOf<WaistOptions>
  | ChoicesOf<ExtraOf<'pockets'>>
  | ChoicesOf<ExtraOf<'slits'>>
  | ChoicesOf<ExtraOf<'tucks'>>;

/** One field: what it is called in the document, and how it is read. */
export interface Wish {
  readonly key: string;
  readonly reads: 'length' | 'percent' | 'number' | 'numbers' | 'tick' | 'choice' | 'text';
  /** What can be chosen, as the document has it; numbers among them. */
  readonly choices: readonly (string | number)[];
  /** Whether the document has something where nothing is written. */
  readonly hasUsual: boolean;
}

type Json = Readonly<Record<string, unknown>>;
const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null;

/** The fields of a cut, read off its schema, in its order. */
export const cutWishes = (kind: CutKind): readonly Wish[] => wishes('cut', kind);

/** The fields of a waist. */
export const waistWishes = (kind: WaistKind): readonly Wish[] => wishes('waist', kind);

/** The fields of an extra, or of the lining's cloth. */
export const extraWishes = (name: keyof ExtrasOptions): readonly Wish[] => wishes('extras', name);

const read = new Map<string, readonly Wish[]>();

/** Schemas don't change: each list is read once. */
function wishes(room: 'cut' | 'waist' | 'extras', which: string): readonly Wish[] {
  const key = `${room} ${which}`;
  const known = read.get(key) ?? readWishes(room, which);
  read.set(key, known);
  return known;
}

let published: Json | null = null;

function readWishes(room: 'cut' | 'waist' | 'extras', which: string): Wish[] {
  published ??= requestJsonSchema() as Json;
  const schema = at(at(published, 'properties'), room);
  const chosen =
    room === 'extras'
      ? at(at(schema, 'properties'), which)
      : shapes(schema).find((shape) => at(at(shape, 'properties'), 'kind')?.['const'] === which);
  return Object.entries(at(chosen, 'properties') ?? {}).flatMap(([key, field]) =>
    key === 'kind' || !isJson(field) ? [] : [{ key, hasUsual: 'default' in field, ...readAs(field) }],
  );
}

const at = (schema: Json | undefined, key: string): Json | undefined => {
  const found = schema?.[key];
  return isJson(found) ? found : undefined;
};

const shapes = (schema: Json | undefined): Json[] =>
  [schema?.['oneOf'], schema?.['anyOf']].flatMap((list) => (Array.isArray(list) ? list.filter(isJson) : []));

function readAs(field: Json): Pick<Wish, 'reads' | 'choices'> {
  const choices = Array.isArray(field['enum']) ? (field['enum'] as (string | number)[]) : [];
  if (choices.length > 0) return { reads: 'choice', choices };
  if (field['reads'] === 'length') return { reads: 'length', choices };
  if (field['reads'] === 'percent') return { reads: 'percent', choices };
  const type = field['type'];
  if (type === 'boolean') return { reads: 'tick', choices };
  if (type === 'array') return { reads: 'numbers', choices };
  return { reads: type === 'string' ? 'text' : 'number', choices };
}
