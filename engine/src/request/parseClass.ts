import { fieldsFor } from '../fields/index.ts';
import {
  classFrame,
  classSchema,
  CLASS_VERSION,
  MOST_SKIRTS,
  type ClassRequest,
  type ClassSkirt,
} from './classRequest.ts';
import { asRead, errorsOf, pathText, valueAt, type RequestError } from './errors.ts';
import {
  isGroup,
  oncePerUnits,
  readHead,
  readJson,
  skirtSchemaFor,
  withUsualWaist,
  type ReadHead,
  type Refused,
} from './read.ts';
import { keysOfSchema } from './schema.ts';

export type ParsedClass = { readonly ok: true; readonly request: ClassRequest } | Refused;

/** Whether a document is a class: it has skirts. A text that is no JSON is none. */
export function isClassText(text: string): boolean {
  const json = readJson(text);
  return json.ok && isGroup(json.raw) && 'skirts' in json.raw;
}

/** Reads a class from JSON text. Hands back its errors, never throws. */
export function parseClassText(text: string): ParsedClass {
  const json = readJson(text);
  return json.ok ? parseClass(json.raw) : json;
}

const schemasFor = oncePerUnits((units, system) => {
  const fields = fieldsFor(units, system);
  return { frame: classFrame(fields), whole: classSchema(fields) };
});

/** Reads a class from parsed JSON: every default filled in, every length in millimetres. Never throws. */
export function parseClass(given: unknown): ParsedClass {
  const read = readHead(given, CLASS_VERSION);
  if (!read.ok) return read;
  const { raw, head } = read;
  const { frame, whole } = schemasFor(head);
  const framed = frame.safeParse(raw);
  const entries = listAt(raw, 'skirts').map((_, i) => readSkirt(raw, i, head));
  const skirts = entries.flatMap((each) => ('errors' in each ? [] : [each]));
  const [first] = skirts;
  const errors = [
    ...(framed.success ? [] : errorsOf(framed.error.issues, raw, (path) => keysOfSchema(whole, path, raw))),
    ...entries.flatMap((each) => ('errors' in each ? each.errors : [])),
  ];
  if (!framed.success || errors.length > 0 || !first)
    return { ok: false, language: head.language, measure: head.system, errors: eachOnce(errors) };
  // What is shared is right even where every skirt writes over it.
  const all = whole.safeParse(raw);
  if (!all.success)
    return {
      ok: false,
      language: head.language,
      measure: head.system,
      errors: errorsOf(all.error.issues, raw, (path) => keysOfSchema(whole, path, raw)),
    };
  const { version, name, language, units, mark, paper } = framed.data;
  const named = Object.entries(framed.data.cloths).map(([name, options]) => ({ name, options }));
  const labels = labelsOf(skirts.map(({ request }) => request.wearer));
  return {
    ok: true,
    request: {
      ...{ version, name, language, units, mark, paper },
      measure: head.system,
      skirts: skirts.map((each, i) => ({ ...each, label: labels[i] ?? '' })),
      // A class that names no cloth is cut from the usual one.
      cloths: named.length > 0 ? named : [{ name: '', options: first.request.cloth }],
    },
  };
}

type ReadSkirt = Omit<ClassSkirt, 'label'> | { readonly errors: readonly RequestError[] };

/** One skirt: what all share, and over it what is its own; errors name the place where it was written. */
function readSkirt(raw: object, at: number, head: ReadHead): ReadSkirt {
  const own = listAt(raw, 'skirts')[at];
  const shared = valueAt(raw, ['skirt']);
  // What is no group of fields is refused where the whole class is read.
  if (!isGroup(own) || (shared !== undefined && !isGroup(shared))) return { errors: [] };
  const { cloth: wished, ...merged } = over(shared ?? {}, own);
  const placeOf = (path: readonly PropertyKey[]): readonly PropertyKey[] =>
    valueAt(own, path) === undefined && valueAt(shared, path) !== undefined
      ? ['skirt', ...path]
      : ['skirts', at, ...path];
  const cloths = clothsIn(raw);
  const [usual = ''] = Object.keys(cloths);
  const cloth = wished ?? usual;
  const others = Array.isArray(merged['contrast']) ? (merged['contrast'] as readonly unknown[]) : null;
  const contrast = (others ?? []).map((each) => nameIn(each));
  const unknown = [
    ...unknownCloth(wished, placeOf(['cloth']), cloths),
    ...contrast.flatMap((name, i) => unknownCloth(name, placeOf(['contrast', i, 'cloth']), cloths)),
  ];
  // What is no name is refused where the whole class is read.
  if (unknown.length > 0 || typeof cloth !== 'string') return { errors: unknown };
  const schema = skirtSchemaFor(head);
  const { mark, paper, language, units } = raw as Readonly<Record<string, unknown>>;
  const document = withUsualWaist({
    // What the class frame knows is refused there, and left out here.
    ...Object.fromEntries(
      Object.entries(merged).filter(([key]) => !ofTheFrame.has(key) && key in schema.shape),
    ),
    ...given({ mark, paper, language, units, contrast: others?.map((each) => described(each, cloths)) }),
    measure: head.system,
    cloth: cloths[cloth] ?? {},
  });
  const parsed = schema.safeParse(document);
  if (parsed.success) return { cloth, contrast, request: { ...parsed.data, measure: head.system } };
  const issues = parsed.error.issues.filter(
    ({ path }) => !ofTheFrame.has(String(path[0])) && path[0] !== 'cloth',
  );
  return { errors: errorsOf(issues, document, (path) => keysOfSchema(schema, path, document), placeOf) };
}

type Cloths = Readonly<Record<string, unknown>>;
function clothsIn(raw: object): Cloths {
  const cloths = valueAt(raw, ['cloths']);
  return isGroup(cloths) ? cloths : {};
}

/** What an other cloth is called, where it is one that the class names. */
function nameIn(contrast: unknown): string | null {
  const cloth = valueAt(contrast, ['cloth']);
  return typeof cloth === 'string' ? cloth : null;
}

/** An other cloth as it would be described by a skirt alone. */
function described(contrast: unknown, cloths: Cloths): unknown {
  const name = nameIn(contrast);
  return name !== null && isGroup(contrast) ? { ...contrast, cloth: cloths[name] } : contrast;
}

function unknownCloth(wished: unknown, path: readonly PropertyKey[], cloths: Cloths): RequestError[] {
  if (typeof wished !== 'string' || Object.hasOwn(cloths, wished)) return [];
  const names = Object.keys(cloths);
  return names.length > 0
    ? [{ path: pathText(path), code: 'notOneOf', read: asRead(wished), params: { values: names.join(', ') } }]
    : [{ path: 'cloths', code: 'missing', read: '', params: {} }];
}

/** Keys that a class has once: what is wrong with them is said there. */
const ofTheFrame: ReadonlySet<string> = new Set(['version', 'language', 'units', 'measure', 'mark', 'paper']);

const given = (values: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

function listAt(raw: object, key: string): readonly unknown[] {
  const value = valueAt(raw, [key]);
  // More than a class may have are refused by their count, and not read one by one.
  return Array.isArray(value) ? value.slice(0, MOST_SKIRTS) : [];
}

type Group = Readonly<Record<string, unknown>>;

/**
 * One group of fields laid over another, group by group; lists are taken whole. A cut or a waist of another kind has
 * other fields, and stands alone.
 */
function over(shared: Group, own: Group): Group {
  if ('kind' in own && own['kind'] !== shared['kind']) return own;
  const keys = [...new Set([...Object.keys(shared), ...Object.keys(own)])];
  return Object.fromEntries(
    keys.map((key) => {
      const [below, above] = [shared[key], own[key]];
      if (above === undefined) return [key, below];
      return [key, isGroup(below) && isGroup(above) ? over(below, above) : above];
    }),
  );
}

/** Whose pieces they are: her name, with a number where two have the same; without a name the place in the class. */
function labelsOf(wearers: readonly string[]): string[] {
  const named = wearers.map((wearer, i) => wearer.trim() || String(i + 1));
  return named.map((name, i) => {
    const same = named.filter((each) => each === name).length;
    const before = named.slice(0, i).filter((each) => each === name).length;
    return same > 1 ? `${name} (${String(before + 1)})` : name;
  });
}

/** What many skirts share is wrong once. */
function eachOnce(errors: readonly RequestError[]): RequestError[] {
  const seen = new Map(errors.map((error) => [JSON.stringify(error), error]));
  return [...seen.values()];
}
