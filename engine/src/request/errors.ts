import { z } from 'zod';
import type { LengthFault } from '../units/index.ts';

/** Why a request was refused: data; the words are in the catalogues. */
export interface RequestError {
  /** Path of the field: `body.waist`, `ribbons.rows[2].width`; empty for the document itself. */
  readonly path: string;
  readonly code: RequestErrorCode;
  /** What was read there, as JSON, cut short. */
  readonly read: string;
  readonly params: Readonly<Record<string, string | number>>;
}

export type RequestErrorCode =
  | 'notJson'
  | 'tooLarge'
  | 'notAnObject'
  | 'missing'
  | 'wrongType'
  | 'unknownKey'
  | 'notOneOf'
  | 'outOfRange'
  | 'tooLong'
  | 'wrongShape'
  | 'newerVersion'
  | `length.${LengthFault}`
  | 'lengthRange'
  | 'percent'
  | 'percentRange'
  | 'colour'
  | 'currency'
  | 'price'
  | 'date'
  | 'gaps';

const LONGEST_READ = 60;

/** A value as it stood in the document, short enough for one line. */
export function asRead(value: unknown): string {
  if (value === undefined) return '';
  const text = inJson(value);
  return text.length > LONGEST_READ ? `${text.slice(0, LONGEST_READ)}…` : text;
}

/** What JSON can't say (a function, a ring of objects) or is nested too deep for its writer is named by its kind. */
function inJson(value: unknown): string {
  if (typeof value === 'number') return String(value);
  try {
    const text: unknown = JSON.stringify(value);
    return typeof text === 'string' ? text : typeof value;
  } catch {
    return typeof value;
  }
}

type Key = string | number;
export const pathText = (path: readonly PropertyKey[]): string =>
  path
    .map((key, i) => (typeof key === 'number' ? `[${String(key)}]` : `${i > 0 ? '.' : ''}${String(key)}`))
    .join('');

export function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<Key, unknown>)[key as Key] : undefined,
    raw,
  );
}

type Issue = z.core.$ZodIssue;

type PathOf = (path: readonly PropertyKey[]) => readonly PropertyKey[];

/** What the schema read. */
interface Reading {
  readonly raw: unknown;
  readonly keysAt: (path: readonly PropertyKey[]) => string[];
  /** Where the person wrote what stands at a path of `raw`. */
  readonly writtenAt: PathOf;
}

/** Turns what the schema found into our own errors. */
export function errorsOf(
  issues: readonly Issue[],
  raw: unknown,
  keysAt: (path: readonly PropertyKey[]) => string[],
  writtenAt: PathOf = (path) => path,
): RequestError[] {
  return issues.flatMap((issue) => errorOf(issue, issue.path, { raw, keysAt, writtenAt }));
}

function errorOf(issue: Issue, path: readonly PropertyKey[], reading: Reading): RequestError[] {
  const value = valueAt(reading.raw, path);
  const error = (code: RequestErrorCode, params: RequestError['params'] = {}): RequestError[] => [
    { path: pathText(reading.writtenAt(path)), code, read: asRead(value), params },
  ];
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined ? error('missing') : error('wrongType', { expected: issue.expected });
    case 'unrecognized_keys': {
      const known = reading.keysAt(path);
      return issue.keys.map((key) => unknownKey(key, path, known, reading));
    }
    case 'invalid_value':
      return value === undefined
        ? error('missing')
        : error('notOneOf', { values: issue.values.map(String).join(', ') });
    case 'too_small':
      return error('outOfRange', { bound: 'least', limit: Number(issue.minimum) });
    case 'too_big':
      return error(issue.origin === 'string' ? 'tooLong' : 'outOfRange', {
        bound: 'most',
        limit: Number(issue.maximum),
      });
    case 'invalid_union':
      return unionError(issue, path, reading) ?? error('wrongShape');
    case 'custom':
      return error(...customFault(issue));
    default:
      return error('wrongShape');
  }
}

/** A key that one of the shapes at its place does have is known: then it is what stands in it that doesn't fit. */
function unknownKey(
  key: string,
  path: readonly PropertyKey[],
  known: readonly string[],
  { raw, writtenAt }: Reading,
): RequestError {
  const where = { path: pathText(writtenAt([...path, key])), read: asRead(valueAt(raw, [...path, key])) };
  return known.includes(key)
    ? { ...where, code: 'wrongShape', params: {} }
    : { ...where, code: 'unknownKey', params: { key, known: known.join(', ') } };
}

/** Of a union's branches the one whose keys fit best, and then the one that got furthest, is the one that was meant. */
function unionError(
  issue: Issue & { code: 'invalid_union' },
  path: readonly PropertyKey[],
  reading: Reading,
): RequestError[] | null {
  const { raw } = reading;
  const where = pathText(reading.writtenAt(path));
  if ('options' in issue && Array.isArray(issue.options)) {
    const values = issue.options
      .filter((option) => option !== null && option !== undefined)
      .map(String)
      .join(', ');
    return [{ path: where, code: 'notOneOf', read: asRead(valueAt(raw, path)), params: { values } }];
  }
  if (valueAt(raw, path) === undefined) return [{ path: where, code: 'missing', read: '', params: {} }];
  const depth = (branch: readonly Issue[]): number => Math.max(0, ...branch.map((each) => each.path.length));
  const misfit = (branch: readonly Issue[]): number =>
    branch.reduce((sum, each) => sum + keysThatDoNotFit(each, path, raw), 0);
  const meant = [...issue.errors]
    .filter((branch) => branch.length > 0 && !isOfAnotherType(branch))
    .sort((a, b) => misfit(a) - misfit(b) || depth(b) - depth(a))[0];
  return meant ? meant.flatMap((each) => errorOf(each, [...path, ...each.path], reading)) : null;
}

/** A branch that reads another kind of value altogether: it has nothing to say of this one's parts. */
const isOfAnotherType = (branch: readonly Issue[]): boolean =>
  branch.every(
    (each) =>
      each.path.length === 0 &&
      (each.code === 'invalid_type' ||
        (each.code === 'invalid_union' && each.errors.every((inner) => isOfAnotherType(inner)))),
  );

/** Keys of the value itself that a branch does not know, or misses. */
function keysThatDoNotFit(issue: Issue, path: readonly PropertyKey[], raw: unknown): number {
  if (issue.code === 'unrecognized_keys') return issue.path.length === 0 ? issue.keys.length : 0;
  return issue.path.length === 1 && valueAt(raw, [...path, ...issue.path]) === undefined ? 1 : 0;
}

function customFault(issue: Issue & { code: 'custom' }): [RequestErrorCode, RequestError['params']] {
  const { fault, reason, ...rest } = (issue.params ?? {}) as Record<string, string | number>;
  if (fault === 'length') return [`length.${String(reason) as LengthFault}`, {}];
  return [String(fault) as RequestErrorCode, rest];
}
