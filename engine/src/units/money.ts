/** Money in whole minor units (cents) of a currency. ISO 4217 code; never a fraction of a cent. */
export interface Money {
  readonly minor: number;
  readonly currency: string;
}

/** Minor digits by ISO 4217, as `Intl` holds them: 2 for CAD, 0 for JPY. Throws on an unknown currency code. */
export function minorDigits(currency: string): number {
  const known = digitsOf.get(currency);
  if (known !== undefined) return known;
  const { maximumFractionDigits } = new Intl.NumberFormat('en', {
    style: 'currency',
    currency,
  }).resolvedOptions();
  const digits = maximumFractionDigits ?? 2;
  digitsOf.set(currency, digits);
  return digits;
}
/** A formatter takes longer to make than a whole skirt to plan. */
const digitsOf = new Map<string, number>();

/** Whether `Intl` knows the three-letter code. */
export const isCurrency = (code: string): boolean =>
  /^[A-Z]{3}$/.test(code) && (currencies ??= new Set(Intl.supportedValuesOf('currency'))).has(code);
let currencies: ReadonlySet<string> | null = null;

export type ParsedMoney =
  | { readonly ok: true; readonly value: Money }
  | { readonly ok: false; readonly fault: 'notMoney' | 'negativeMoney' | 'tooManyDigits' };

/** Reads `12.50`, `12,50` or `12` as an amount of `currency`. */
export function parseMoney(text: string | number, currency: string): ParsedMoney {
  const plain = String(text).trim().replace(',', '.');
  if (/^[-−]/.test(plain)) return { ok: false, fault: 'negativeMoney' };
  const match = /^(\d{1,7})(?:\.(\d+))?$/.exec(plain);
  if (!match) return { ok: false, fault: 'notMoney' };
  const digits = minorDigits(currency);
  const part = match[2] ?? '';
  if (part.length > digits) return { ok: false, fault: 'tooManyDigits' };
  return { ok: true, value: { minor: Number(`${match[1] ?? ''}${part.padEnd(digits, '0')}`), currency } };
}

/** Price of `amount` units at a unit price, to the nearest minor unit. */
export const times = (price: Money, amount: number): Money => ({
  minor: Math.round(price.minor * amount),
  currency: price.currency,
});

/** Prints money as the language does: `$12.50`, `12,50 $`. */
export function showMoney(money: Money, locale: string): string {
  const major = money.minor / 10 ** minorDigits(money.currency);
  return new Intl.NumberFormat(locale, {
    style: 'currency',
    currency: money.currency,
    currencyDisplay: 'narrowSymbol',
  }).format(major);
}
