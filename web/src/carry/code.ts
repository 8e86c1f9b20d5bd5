import { codePicture, type Drawing } from '@ribbonwright/engine';

/** Most bytes that a code holds (ISO/IEC 18004, version 40, lowest correction). */
const MOST_BYTES = 2953;
/** The more that may be damaged and is still read, the larger the code: a long text has the least. */
const WELL_PROTECTED = 1000;
/**
 * The version that our own reader looks for in the wrong places (https://github.com/cozmo/jsQR/issues/251). Many a
 * skirt is as long as that: it gets the next larger code.
 */
const MISREAD = 23;

/** A QR code (ISO/IEC 18004) as a drawing; null where the text is empty or too long for one. */
export async function codeFor(
  text: string,
  words: { readonly title: string; readonly description: string },
): Promise<Drawing | null> {
  const bytes = new TextEncoder().encode(text).length;
  if (bytes === 0 || bytes > MOST_BYTES) return null;
  const { create } = await import('qrcode');
  const errorCorrectionLevel = bytes > WELL_PROTECTED ? 'L' : 'M';
  const first = create(text, { errorCorrectionLevel });
  const { modules } =
    first.version === MISREAD ? create(text, { errorCorrectionLevel, version: MISREAD + 1 }) : first;
  return codePicture(modules.size, (row, column) => modules.get(row, column) === 1, words);
}
