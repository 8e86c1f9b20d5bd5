import { parseLength, writeLength, type MeasureSystem, type Mm, type Speaker } from '@ribbonwright/engine';

/** A length as somebody at a counter tells it, or why it can't be read. */
export type Told =
  | { readonly ok: true; readonly length: Mm; readonly shown: string; readonly written: string }
  | { readonly ok: false; readonly fault: string };

/** Reads a length told at a counter: a bare number is yards or metres there. `shown` is as it was told, `written` for a document. */
export function toldLength(typed: string, measure: MeasureSystem, speaker: Speaker): Told {
  const parsed = parseLength(typed, measure === 'inches' ? 'yd' : 'm');
  if (parsed.ok) {
    const { yard, metre } = speaker.words.numbers;
    const isBare = /\p{N}\s*$/u.test(typed);
    return {
      ok: true,
      length: parsed.value,
      shown: isBare ? `${typed.trim()} ${measure === 'inches' ? yard : metre}` : typed.trim(),
      written: writeLength(parsed.value, measure),
    };
  }
  return {
    ok: false,
    fault: speaker.fault({ path: '', code: `length.${parsed.fault}`, read: '', params: {} }),
  };
}
