/** Printed hundredths: most numbers of a drawing are such, below a metre, and met again in the next frame of a drag. */
const printed: { readonly positive: string[]; readonly negative: string[] } = { positive: [], negative: [] };
const MOST_PRINTED = 100_000;

/** A number with at most four decimals (a ten-thousandth of a millimetre), never `-0`, never an exponent. */
export function short(value: number): string {
  const hundredths = Math.round(value * 100);
  const size = Math.abs(hundredths);
  // Printing is half of the work of writing a drawing.
  if (hundredths / 100 !== value || size > MOST_PRINTED) return String(Number(value.toFixed(4)) + 0);
  return ((hundredths < 0 ? printed.negative : printed.positive)[size] ??= String(hundredths / 100 + 0));
}

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Whether XML 1.0 can write the character at all, escaped or not; half of a surrogate pair it can't. */
function isWritable(letter: string): boolean {
  const code = letter.codePointAt(0) ?? 0;
  if (code < 0x20) return code === 0x09 || code === 0x0a || code === 0x0d;
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}

/** Text as XML content or attribute; a character that XML has no way to write becomes U+FFFD, in sight. */
export const escaped = (text: string): string =>
  Array.from(text)
    .map((letter) => (isWritable(letter) ? (escapes[letter] ?? letter) : '\ufffd'))
    .join('');

/** A factor with eight decimals: a scale multiplies whole metres. */
export const factor = (value: number): string => String(Number(value.toFixed(8)));
