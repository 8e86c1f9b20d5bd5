import { z } from 'zod';

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
  | `length.${string}`
  | 'lengthRange'
  | 'percent'
  | 'percentRange'
  | 'colour'
  | 'currency'
  | 'price'
  | 'gaps';

const LONGEST_READ = 60;

/** A value as it stood in the document, short enough for one line. */
export function asRead(value: unknown): string {
  if (value === undefined) return '';
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > LONGEST_READ ? `${text.slice(0, LONGEST_READ)}…` : text;
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

/** Turns what the schema found into our own errors. */
export function errorsOf(
  issues: readonly Issue[],
  raw: unknown,
  keysAt: (path: readonly PropertyKey[]) => string[],
): RequestError[] {
  return issues.flatMap((issue) => errorOf(issue, issue.path, raw, keysAt));
}

function errorOf(
  issue: Issue,
  path: readonly PropertyKey[],
  raw: unknown,
  keysAt: (path: readonly PropertyKey[]) => string[],
): RequestError[] {
  const value = valueAt(raw, path);
  const error = (code: RequestErrorCode, params: RequestError['params'] = {}): RequestError[] => [
    { path: pathText(path), code, read: asRead(value), params },
  ];
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined ? error('missing') : error('wrongType', { expected: issue.expected });
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        path: pathText([...path, key]),
        code: 'unknownKey',
        read: asRead(valueAt(raw, [...path, key])),
        params: { key, known: keysAt(path).join(', ') },
      }));
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
      return unionError(issue, path, raw, keysAt) ?? error('wrongShape');
    case 'custom':
      return error(...customFault(issue));
    default:
      return error('wrongShape');
  }
}

/** Of a union's branches the one that got furthest is the one that was meant. */
function unionError(
  issue: Issue & { code: 'invalid_union' },
  path: readonly PropertyKey[],
  raw: unknown,
  keysAt: (path: readonly PropertyKey[]) => string[],
): RequestError[] | null {
  if ('options' in issue && Array.isArray(issue.options)) {
    const values = issue.options
      .filter((option) => option !== null && option !== undefined)
      .map(String)
      .join(', ');
    return [{ path: pathText(path), code: 'notOneOf', read: asRead(valueAt(raw, path)), params: { values } }];
  }
  const depth = (branch: readonly Issue[]): number => Math.max(0, ...branch.map((each) => each.path.length));
  const isType = (branch: readonly Issue[]): boolean =>
    branch.every((each) => each.code === 'invalid_type' && each.path.length === 0);
  const meant = [...issue.errors]
    .filter((branch) => branch.length > 0 && !isType(branch))
    .sort((a, b) => depth(b) - depth(a))[0];
  return meant ? meant.flatMap((each) => errorOf(each, [...path, ...each.path], raw, keysAt)) : null;
}

function customFault(issue: Issue & { code: 'custom' }): [RequestErrorCode, RequestError['params']] {
  const { fault, reason, ...rest } = (issue.params ?? {}) as Record<string, string | number>;
  if (fault === 'length') return [`length.${String(reason)}`, {}];
  return [String(fault) as RequestErrorCode, rest];
}
