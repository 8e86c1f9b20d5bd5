import { MM_PER_INCH, type Mm } from './mm.ts';
import type { MeasureSystem } from './show.ts';

/** Nearer than this two lengths are one: binary fractions, far below anything that is read. */
const SAME = 1e-6;

/**
 * A length as a document writes it, in plain ASCII, for `parseLength` to read: `33 1/8 in`, `84.2 cm`.
 *
 * What lies on a sixteenth of an inch or on a tenth of a millimetre is read back exactly, and so is every chalk
 * mark of the one system written in the other; anything else within 0.01 mm. `value` is 0 or more.
 */
export function writeLength(value: Mm, system: MeasureSystem): string {
  // Binary fractions may leave nothing a hair below nothing, and its sign would be refused.
  if (value < SAME) return system === 'metric' ? '0 cm' : '0 in';
  if (system === 'metric') return `${decimals(value / 10, 5, 3)} cm`;
  const sixteenths = Math.round((value / MM_PER_INCH) * 16);
  return Math.abs(sixteenths * (MM_PER_INCH / 16) - value) < SAME
    ? `${mixed(sixteenths)} in`
    : `${decimals(value, 4, 2)} mm`;
}

/** The fewest decimals that say the number exactly, at most `exact` of them; where none do, `near`. */
function decimals(value: number, exact: number, near: number): string {
  for (let digits = 0; digits <= exact; digits++)
    if (Math.abs(Number(value.toFixed(digits)) - value) < SAME / 10) return value.toFixed(digits);
  return String(Number(value.toFixed(near)));
}

function mixed(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  let over = sixteenths % 16;
  let under = 16;
  if (over === 0) return String(whole);
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  const part = `${String(over)}/${String(under)}`;
  return whole === 0 ? part : `${String(whole)} ${part}`;
}
