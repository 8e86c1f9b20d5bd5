declare const unit: unique symbol;

/** A length in millimetres. The only length the engine computes with. */
export type Mm = number & { readonly [unit]: 'mm' };

/** An angle in radians. */
export type Radians = number & { readonly [unit]: 'rad' };

/** A duration in minutes. */
export type Minutes = number & { readonly [unit]: 'min' };

/** International inch of 1959: exactly 25.4 mm (NIST Handbook 44, appendix C). */
export const MM_PER_INCH = 25.4;
const MM_PER_CM = 10;
export const MM_PER_METRE = 1000;
export const MM_PER_YARD = 36 * MM_PER_INCH;

export const mm = (value: number): Mm => value as Mm;
export const inches = (value: number): Mm => mm(value * MM_PER_INCH);
export const centimetres = (value: number): Mm => mm(value * MM_PER_CM);
export const metres = (value: number): Mm => mm(value * MM_PER_METRE);
export const yards = (value: number): Mm => mm(value * MM_PER_YARD);
export const radians = (value: number): Radians => value as Radians;
export const minutes = (value: number): Minutes => value as Minutes;

export const add = (...lengths: readonly Mm[]): Mm => mm(lengths.reduce((sum, each) => sum + each, 0));
export const longest = (...lengths: readonly Mm[]): Mm => mm(Math.max(...lengths));
