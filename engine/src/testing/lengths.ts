import fc from 'fast-check';

/** Ways in which people write one length, each within a millimetre of it. */
const ways: readonly ((mm: number) => string)[] = [
  (mm) => `${mm.toFixed(1)} mm`,
  (mm) => `${(mm / 10).toFixed(1)} cm`,
  (mm) => `${(mm / 10).toFixed(2).replace('.', ',')} centimètres`,
  (mm) => `${(mm / 1000).toFixed(3)} m`,
  (mm) => `${(mm / 25.4).toFixed(2)} in`,
  (mm) => `${inSixteenths(mm / 25.4)} in`,
  (mm) => `${inSixteenths(mm / 25.4)}"`,
  (mm) => `${inSixteenths(mm / 25.4)} po`,
  (mm) => {
    const sixteenths = Math.round((mm / 25.4) * 16);
    const feet = Math.floor(sixteenths / 192);
    return `${String(feet)}' ${inSixteenths((sixteenths - feet * 192) / 16)}"`;
  },
  (mm) => `${(mm / 914.4).toFixed(4)} yd`,
];

function inSixteenths(inches: number): string {
  const sixteenths = Math.round(inches * 16);
  const whole = Math.floor(sixteenths / 16);
  const over = sixteenths % 16;
  return over === 0 ? String(whole) : `${String(whole)} ${String(over)}/16`;
}

/** A length of about `mm` millimetres, as somebody writes it. */
export const anyLength = (mm: number): fc.Arbitrary<string> =>
  fc.constantFrom(...ways).map((write) => write(mm));

/** Most by which a way of writing misses the length it was given: half of 1/16 in. */
const MISS = 0.8;

/** A written length between two bounds in millimetres, never past them. */
export const lengthBetween = (least: number, most: number): fc.Arbitrary<string> =>
  fc
    .integer({ min: Math.ceil((least === 0 ? 0 : least + MISS) * 10), max: Math.floor((most - MISS) * 10) })
    .chain((tenths) => anyLength(tenths / 10));
