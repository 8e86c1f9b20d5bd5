import {
  parseLength,
  parseRequest,
  type MeasureSystem,
  type RequestDocument,
  type RequestError,
  type Speaker,
} from '@ribbonwright/engine';
import { writtenLength } from '../../desk/entries.ts';

/** Lengths of a body, in the order in which they are asked for. */
export const asked = ['waist', 'hip', 'waistToHem'] as const;
export const welcome = ['waistToFloor', 'height', 'calf'] as const;
export type Measure = (typeof asked)[number] | (typeof welcome)[number];
export type BodyField = Measure | 'age';

/** What is typed in each field; a field that nobody touched is not there. */
export type Typed = Readonly<Partial<Record<BodyField, string>>>;
export type Faults = Readonly<Partial<Record<BodyField, string>>>;

export interface ReadBody {
  /** As a request writes it, every length with its unit. */
  readonly body: RequestDocument;
  /** What is wrong, in words, by field. Empty where the body can be drafted for. */
  readonly faults: Faults;
}

/** What was typed, read as a request's body. Without a unit a length is in the measure that is shown. */
export function readBody(typed: Typed, measure: MeasureSystem, speaker: Speaker): ReadBody {
  const body: Record<string, unknown> = {};
  const faults: Partial<Record<BodyField, string>> = {};
  for (const field of [...asked, ...welcome]) {
    const text = typed[field]?.trim() ?? '';
    if (text === '') continue;
    const written = writtenLength(text, measure, speaker);
    if (written.ok) body[field] = written.text;
    else faults[field] = written.fault;
  }
  const age = typed.age?.trim().replace(',', '.') ?? '';
  if (age !== '') body['age'] = /^\d+(\.\d+)?$/.test(age) ? Number(age) : age;
  for (const error of bodyErrors(body)) {
    const field = error.path.replace(/^body\./, '') as BodyField;
    faults[field] ??= speaker.fault(error);
  }
  return { body, faults };
}

/** What is wrong with a body, as the request's reader says it. */
export function bodyErrors(body: RequestDocument): readonly RequestError[] {
  const parsed = parseRequest({ body });
  return parsed.ok ? [] : parsed.errors;
}

/** A measurement as it stands in a body, in the measure that is shown; what can't be read as it was written. */
export function shownMeasure(body: RequestDocument, field: string, speaker: Speaker): string {
  const written = body[field];
  if (typeof written !== 'string') return typeof written === 'number' ? String(written) : '';
  const parsed = parseLength(written);
  return parsed.ok ? speaker.length(parsed.value) : written;
}
