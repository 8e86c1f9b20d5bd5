import {
  parseLength,
  writeLength,
  type Change,
  type MeasureSystem,
  type RequestError,
  type RequestErrorCode,
  type Speaker,
} from '@ribbonwright/engine';
import type { Desk } from './desk.svelte.ts';

/** Takes what was typed: what is wrong with it in words, or null when it stands in the document. */
export type Commit = (typed: string, gesture: string) => string | null;

type Path = Change['path'];

/** What was typed as a document has it, or why it can't be read. */
export type Written =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly fault: string };

/** A length as it is typed here: without a unit it is in the measure that is shown. */
export function writtenLength(typed: string, measure: MeasureSystem, speaker: Speaker): Written {
  const parsed = parseLength(typed, measure === 'inches' ? 'in' : 'cm');
  if (parsed.ok) return { ok: true, text: writeLength(parsed.value, measure) };
  return { ok: false, fault: faultOf(`length.${parsed.fault}`, speaker) };
}

const faultOf = (code: RequestErrorCode, speaker: Speaker): string =>
  speaker.fault({ path: '', code, read: '', params: {} });

const firstFault = (errors: readonly RequestError[], speaker: Speaker): string | null => {
  const [first] = errors;
  return first ? speaker.fault(first) : null;
};

/** Puts a value at a path of the document on the table. */
export const put = (desk: Desk, path: Path, value: unknown, gesture: string | null = null): string | null =>
  firstFault(desk.skirt.change([{ path, value }], gesture), desk.speaker);

interface Wish {
  /** Whether nothing typed means the usual figure. */
  readonly optional?: boolean;
}

export const lengthEntry =
  (desk: Desk, path: Path, { optional = false }: Wish = {}): Commit =>
  (typed, gesture) => {
    if (optional && typed.trim() === '') return put(desk, path, undefined, gesture);
    const written = writtenLength(typed, desk.measure, desk.speaker);
    return written.ok ? put(desk, path, written.text, gesture) : written.fault;
  };

/** A plain number; comma and point are both decimal marks. */
export const numberEntry =
  (desk: Desk, path: Path, { optional = false }: Wish = {}): Commit =>
  (typed, gesture) => {
    const text = typed.trim().replace(',', '.');
    if (optional && text === '') return put(desk, path, undefined, gesture);
    return put(desk, path, /^\d+(\.\d+)?$/.test(text) ? Number(text) : typed, gesture);
  };

/** Several plain numbers with spaces between them. */
export const numbersEntry =
  (desk: Desk, path: Path): Commit =>
  (typed, gesture) => {
    const words = typed
      .trim()
      .split(/[\s;]+/)
      .filter((each) => each !== '');
    if (words.length === 0) return put(desk, path, undefined, gesture);
    const numbers = words.map((each) => each.replace(',', '.'));
    const read = numbers.every((each) => /^\d+(\.\d+)?$/.test(each));
    return put(desk, path, read ? numbers.map(Number) : typed, gesture);
  };

/** Words, percentages and prices: the document reads them as they are typed. */
export const textEntry =
  (desk: Desk, path: Path, { optional = true }: Wish = {}): Commit =>
  (typed, gesture) =>
    put(desk, path, optional && typed.trim() === '' ? undefined : typed, gesture);

/** A colour by its name in the reader's language, as #rrggbb, or by a name of the maker's own for a colour that is there. */
export function colourWritten(typed: string, hex: string, speaker: Speaker): unknown {
  const name = typed.trim();
  const known = speaker.readColour(name);
  if (known !== null) return known;
  return name === '' || name.startsWith('#') ? name : { name, hex };
}
